"""The manuals of a refrigeration system do not stay with the house.

Without them nobody knows the charge per foot, the least room or how the detector is tested, and the next repair is a
guess. From 2024 the code wants them attached to the indoor unit or left with the owner.

Add a line to the drawing notes: installation, owner's and service manuals stay at the indoor unit.
"""

from checker.case import Case, quantity
from checker.quantities.refrigerant import System, of_system, systems
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


@quantity()
def papers_left(case: Case, system: System) -> bool:
    """Whether the manuals stay."""
    return bool(of_system(case, system, "papers_left"))


def check(system: System, found: bool) -> Meets | Finding:
    """The manuals must stay."""
    if found:
        return Meets()
    return Finding(
        f"the manuals of {system.name} stay neither at the indoor unit nor with the owner",
        at="papers_left",
        help="note that installation, owner's and service manuals stay at the indoor unit",
    )


RULE = Rule(
    code="REFR-22", name="refrigeration-papers-not-left", severity="note", since="0.1",
    over=systems, when=due("papers_left", on_site=True), needs=(papers_left,), cites=("refrigeration-papers",), check=check,
    nothing="no refrigerant line is drawn", answers=("I22", "Q10"),
)  # fmt: skip
