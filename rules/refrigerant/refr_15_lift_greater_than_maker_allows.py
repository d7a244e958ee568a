"""The units stand farther apart in height than their maker allows.

The compressor has to lift liquid one way and oil the other. Beyond the maker's height the liquid boils on its way or
the oil stays below, and the compressor fails early. The code defers to the maker's instructions.

Place the outdoor unit at a height nearer to the indoor one. Makers often allow less with the indoor unit above than
below: `rise` is positive where it is above.
"""

from checker.case import Case, given, quantity
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines, greatest_height
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


@quantity("length")
def height(case: Case, line: RefrigerantLine) -> float:
    """Height between the units, whichever is above."""
    return abs(float(case.get(line, "rise")))


def check(line: RefrigerantLine, rise: float, found: float, greatest: float) -> Meets | Finding:
    """Compare the height with the maker's greatest one."""
    if found <= greatest:
        return Meets()
    where = "above" if rise > 0.0 else "below"
    return Finding(
        f"the indoor unit of {line.name} stands {{height}} {where} the outdoor one; its maker allows {{greatest_height}}",
        at="rise",
        help="bring the units within {greatest_height} of height, or choose equipment made for more",
    )


RULE = Rule(
    code="REFR-15", name="lift-greater-than-maker-allows", severity="correction", since="0.1",
    over=drawn_lines, when=due("by_maker"), needs=(given("rise"), height, greatest_height),
    cites=("lines-by-maker",), check=check, nothing="no refrigerant line is drawn", answers=("I20",),
)  # fmt: skip
