"""A refrigerant line hidden in framing lies within reach of nails and screws.

Drywall and cabinet screws reach more than an inch into a stud. A screw through the line lets the charge out inside the
wall, and some refrigerants burn.

Keep the line away from the face of the framing by the distance that the edition asks for, or cover it with steel
plates that reach 2 in beyond. Only certified technicians open or mend the lines.
"""

from checker.case import Case, quantity
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines
from checker.quantities.refrigerant_routes import in_framing, nail_gap
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


@quantity("length")
def from_face(case: Case, line: RefrigerantLine) -> float | None:
    """Distance from the face of the framing; None where steel plates protect the line."""
    return nail_gap(case, line, "edge_distance", float(case.limit("concealed-pipe-edge")))


def check(line: RefrigerantLine, gap: float | None, limit: float) -> Meets | Finding:
    """Far enough from the face, or protected."""
    if gap is None or gap >= limit:
        return Meets()
    return Finding(
        f"{line.name} lies {{from_face}} from the face of the framing without shield plates, nearer than {{limit}}",
        at="edge_distance",
        help="move the line {limit} or more from the face, or cover it with 16 gage steel plates",
    )


RULE = Rule(
    code="REFR-08", name="concealed-line-open-to-nails", severity="correction", since="0.1",
    over=drawn_lines, when=due("edge_distance", "nail_plates", when=in_framing),
    needs=(from_face,), limits=("concealed-pipe-edge",), check=check, nothing="no refrigerant line is drawn", answers=("I06",),
)  # fmt: skip
