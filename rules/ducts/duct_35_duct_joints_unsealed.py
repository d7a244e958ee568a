"""Joints of ducts are not sealed.

An unsealed system loses 20 to 30 % of its air, and sucks in as much from the attic or crawl space on the return
side. It costs more than any lack of insulation. Joints, seams and connections are fastened and sealed with
mastic, gaskets, welds or listed tape.

Note the sealing on the drawing for each run, boots and the connection at the unit included.
"""

from checker.case import Case, quantity
from checker.design.airway import Airway
from checker.quantities.duct_sets import DuctSet, answered, below, duct_sets, flawed, listed, says_none
from checker.rule import Finding, Meets, Num, Rule

ONE_PIECE = ("pvc", "concrete")


@quantity()
def unsealed(case: Case, of: DuctSet) -> tuple[Airway, ...]:
    """Ducts whose joints are said not to be sealed. Raises Missing where nothing is said."""
    open_joints = [duct for duct in of.ducts if duct.material not in ONE_PIECE]
    bad = flawed(open_joints, lambda duct: says_none(duct.sealed))
    answered(case, open_joints, "sealed", bad)
    return bad


def check(of: DuctSet, bad: tuple[Airway, ...]) -> Meets | Finding:
    """No duct is left unsealed."""
    if not bad:
        return Meets()
    return Finding(
        "joints of {ducts} are not sealed",
        at=below(of, bad[0], "sealed"),
        help="seal joints, seams, boots and the connection at the unit with mastic or listed tape",
        numbers={"ducts": Num(listed(bad))},
    )


RULE = Rule(
    code="DUCT-35", name="duct-joints-unsealed", severity="correction", since="0.1",
    over=duct_sets, needs=(unsealed,), cites=("duct-sealing",), check=check, nothing="no duct is drawn",
    answers=("F10", "F26"),
)  # fmt: skip
