"""The hole where a refrigerant line passes the outer wall is not sealed.

Behind a wall unit such a hole leaks as much air as a small window left ajar, lets mice and wasps in, and carries damp
air into the wall. The code wants every utility penetration of the air barrier sealed so that the pipe can still move.

Show a sleeve that slopes outward, with sealant or a gasket around pipe, drain and cable on both sides.
"""

from checker.case import given
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


def check(line: RefrigerantLine, penetration: str) -> Meets | Finding:
    """The penetration must be sealed, with or without a sleeve."""
    if penetration in ("sealed", "sleeved and sealed"):
        return Meets()
    how = "in a sleeve that is not sealed" if penetration == "sleeved" else "in an open hole"
    return Finding(
        f"{line.name} passes the outer wall {how}",
        at="penetration",
        help="show the penetration sleeved, and sealed with something that lets the pipe move",
    )


RULE = Rule(
    code="REFR-20", name="line-penetration-unsealed", severity="correction", since="0.1",
    over=drawn_lines, when=due("penetration"), needs=(given("penetration"),), cites=("utility-penetrations",), check=check,
    nothing="no refrigerant line is drawn", answers=("I02",),
)  # fmt: skip
