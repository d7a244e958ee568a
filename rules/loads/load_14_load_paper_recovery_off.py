"""The load calculation credits heat recovery that the fans do not have, or more than they have.

A recovery unit cuts the load of the outdoor air to a quarter. When it is dropped from the project to save money, the
loads go up, and the equipment with them. The figure belongs to the unit that is drawn, at its winter rating.

Put the recovery of the unit into the calculation, none where there is no such unit.
"""

from checker.case import given
from checker.design.controls import LoadsPaper
from checker.quantities.load_paper import design_recovery, stating
from checker.rule import Finding, Meets, Rule


def check(_paper: LoadsPaper, stated: float, own: float, tolerance: float) -> Meets | Finding:
    """A credit above the unit's figure is the finding; a lower one is on the safe side."""
    if stated <= own + tolerance * (1 + 1e-9):
        return Meets()
    return Finding(
        "the load calculation credits {recovery} of heat recovery; the fans of the design recover {design_recovery}",
        at="recovery", help="work the loads out with {design_recovery}, or draw the recovery unit that they rest on",
    )


RULE = Rule(
    code="LOAD-14", name="load-paper-recovery-off", severity="caution", since="0.1",
    over=stating("recovery"), needs=(given("recovery"), design_recovery), limits=("paper-recovery-tolerance",),
    check=check, answers=("H29",), nothing="the load calculation states no heat recovery",
)  # fmt: skip
