"""The suction line has less insulation than the code asks for.

The suction line is cold in summer: where its insulation is thin or missing, water runs off it into walls and
ceilings, and the unit loses capacity. In a heat pump the same line is hot in winter and loses heat outdoors.

Usual cause: a line set bought with thin foam, or bare pipe near the units. Choose line sets by the R-value that the
edition asks for (R-4 to 2018, R-3 since), and close the insulation at every joint. Heat pumps need it on both lines;
the maker's instructions say so. Lines are opened and charged by certified technicians only.
"""

from checker.case import Case, given, quantity
from checker.design.refrigerant import RefrigerantLine
from checker.physics.condensation import FOAM_CONDUCTIVITY, pipe_thickness
from checker.quantities.refrigerant import new_lines
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Num, Rule

ABOUT = ", about {foam} of closed-cell foam around a pipe of that size"


@quantity("diameter", "closed-cell foam whose resistance at its outer surface is the limit's", "heat flow of a cylinder")
def foam_that_does(case: Case, line: RefrigerantLine) -> float | None:
    """Thickness of foam around a pipe of this size; None where the size is not stated."""
    outside = case.maybe(line, "suction")
    if not outside:
        return None
    return pipe_thickness(float(case.limit("suction-line-insulation")), FOAM_CONDUCTIVITY, float(outside) / 2.0)


def check(line: RefrigerantLine, insulation: float, foam: float | None, limit: float) -> Meets | Finding:
    """Compare the insulation with what the edition asks for."""
    if insulation >= limit:
        return Meets()
    return Finding(
        f"the suction line of {line.name} has {{insulation}}, less than {{limit}}"
        if insulation > 0.0
        else f"the suction line of {line.name} is bare, where it needs {{limit}}",
        at="insulation",
        help="insulate the suction line and its fittings with {limit} or more" + ("" if foam is None else ABOUT),
        numbers={} if foam is None else {"foam": Num(foam, "diameter")},
    )


RULE = Rule(
    code="REFR-01", name="suction-insulation-too-thin", severity="correction", since="0.1",
    over=new_lines, when=due("insulation"), needs=(given("insulation"), foam_that_does),
    limits=("suction-line-insulation",), check=check, nothing="no refrigerant line is drawn", answers=("I01",),
)  # fmt: skip
