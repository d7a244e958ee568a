"""The duct sheet promises more than the design gives.

The sheet's available static pressure must be what the blower offers at the design airflow less filter, coil,
registers and grilles, and its length that of the longest supply and return run with all fittings. A sheet that
forgets the filter or measures only the straight pipe makes every duct a size too small.

Take the figures again from this design: the blower at this airflow, the filter as bought, the longest run as
drawn.
"""

from checker.case import Case
from checker.design.ducts import DuctSystem
from checker.quantities.duct_scope import systems
from checker.quantities.duct_sheet import Difference, declared_sheet, sheet_differences
from checker.rule import Finding, Meets, Num, Rule

WORDS = {
    "declared_available_static": "an available static pressure of",
    "declared_total_effective_length": "a total effective length of",
}


def with_figures(case: Case) -> list[DuctSystem]:
    """Systems with runs whose sheet declares a static pressure or a length."""
    found = []
    for system in systems(case):
        sheet = declared_sheet(case, system)
        if system.runs and (sheet.available is not None or sheet.length is not None):
            found.append(system)
    return found


def check(system: DuctSystem, differences: list[Difference]) -> Meets | Finding:
    """Report the first figure that promises too much."""
    numbers = {"system": Num(system.name)}
    if not differences:
        return Meets(numbers)
    one = differences[0]
    numbers |= {"declared": Num(one.declared, one.dimension), "own": Num(one.own, one.dimension)}
    static = one.field == "declared_available_static"
    against = "more than the {own} that the design gives at most" if static else "less than the {own} as drawn, at least"
    return Finding(
        f"the duct sheet of {{system}} declares {WORDS[one.field]} {{declared}}, {against}",
        at=one.field if getattr(system, one.field) is not None else "",
        help="fill the sheet in with {own}, and size the ducts again",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-07", name="duct-sheet-promises-more", severity="caution", since="0.1",
    over=with_figures, needs=(sheet_differences,), cites=("available-static",), check=check, answers=("F42", "F43"),
    nothing="no duct sheet figures are declared for a system with runs",
)  # fmt: skip
