"""The suction line has less insulation than the code asks for.

The suction line is cold in summer: where its insulation is thin or missing, water runs off it into walls and
ceilings, and the unit loses capacity. In a heat pump the same line is hot in winter and loses heat outdoors.

Usual cause: a line set bought with thin foam, or bare pipe near the units. Choose line sets by the R-value that the
edition asks for (R-4 to 2018, R-3 since), and close the insulation at every joint. Heat pumps need it on both lines;
the maker's instructions say so. Lines are opened and charged by certified technicians only.
"""

from checker.case import given
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import new_lines
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


def check(line: RefrigerantLine, insulation: float, limit: float) -> Meets | Finding:
    """Compare the insulation with what the edition asks for."""
    if insulation >= limit:
        return Meets()
    return Finding(
        f"the suction line of {line.name} has {{insulation}}, less than {{limit}}"
        if insulation > 0.0
        else f"the suction line of {line.name} is bare, where it needs {{limit}}",
        at="insulation",
        help="insulate the suction line and its fittings with {limit} or more",
    )


RULE = Rule(
    code="REFR-01", name="suction-insulation-too-thin", severity="correction", since="0.1",
    over=new_lines, when=due("insulation"), needs=(given("insulation"),),
    limits=("suction-line-insulation",), check=check, nothing="no refrigerant line is drawn", answers=("I01",),
)  # fmt: skip
