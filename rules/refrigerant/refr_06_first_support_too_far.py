"""The refrigerant line is not fastened near the outdoor unit.

The compressor shakes the pipe. Without a firm support close by, it rubs on siding or sleeve until a joint cracks and
the charge leaks out.

Show a clamp on a permanent support within 6 ft of the unit, as the code asks since 2021, with room for the pipe to move.
"""

from checker.case import given
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


def check(line: RefrigerantLine, distance: float, limit: float) -> Meets | Finding:
    """Compare the distance of the first support with the greatest one."""
    if distance <= limit:
        return Meets()
    return Finding(
        f"{line.name} is first fastened {{first_support}} from the outdoor unit, farther than {{limit}}",
        at="first_support",
        help="fasten the lines to a permanent support within {limit} of the outdoor unit",
    )


RULE = Rule(
    code="REFR-06", name="first-support-too-far", severity="correction", since="0.1",
    over=drawn_lines, when=due("first_support", on_site=True), needs=(given("first_support"),),
    limits=("line-first-support",), check=check, nothing="no refrigerant line is drawn", answers=("I04",),
)  # fmt: skip
