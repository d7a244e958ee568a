"""The friction rate on the duct sheet does not follow from its own available static and length.

The sheet is one line of arithmetic: friction rate = available static pressure x 100 ft / total effective length.
When the three figures do not fit together, one of them was changed and the others were not, or was read off a
slide rule at the wrong mark. Every duct size on the sheet then rests on a wrong number.

Fill the line in again from the blower's table and the measured runs.
"""

from checker.case import Case, Missing, quantity
from checker.design.ducts import DuctSystem
from checker.quantities.duct_scope import systems
from checker.quantities.duct_sheet import Sheet, declared_sheet
from checker.rule import Finding, Meets, Num, Rule


def with_sheet(case: Case) -> list[DuctSystem]:
    """Systems with a declared available static pressure and total effective length, or two other figures."""
    return [each for each in systems(case) if sum(value is not None for value in declared_sheet(case, each)) > 1]


@quantity()
def whole_sheet(case: Case, system: DuctSystem) -> Sheet:
    """All three figures."""
    sheet = declared_sheet(case, system)
    keys = ("declared_friction_rate", "declared_total_effective_length", "declared_available_static")
    absent = [f"{system.path}.{key}" for key, value in zip(keys, sheet, strict=True) if not value]
    if absent:
        raise Missing(*absent)
    return sheet


def check(system: DuctSystem, sheet: Sheet, tolerance: float) -> Meets | Finding:
    """Divide and compare."""
    assert sheet.friction_rate is not None
    assert sheet.length is not None
    assert sheet.available is not None
    own = sheet.available / sheet.length
    numbers = {
        "system": Num(system.name),
        "declared": Num(sheet.friction_rate, "friction_rate"),
        "own": Num(own, "friction_rate"),
        "available": Num(sheet.available, "pressure"),
        "length": Num(sheet.length, "length"),
    }
    if abs(sheet.friction_rate - own) <= tolerance * own * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        "the duct sheet of {system} says {declared}, but its {available} over {length} make {own}",
        at="declared_friction_rate" if system.declared_friction_rate is not None else "",
        help="size the ducts at {own}, or correct the static pressure or the length",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-06", name="duct-sheet-does-not-add-up", severity="caution", since="0.1",
    over=with_sheet, needs=(whole_sheet,), limits=("sheet-tolerance",), check=check, answers=("F43",),
    nothing="no duct sheet figures are declared",
)  # fmt: skip
