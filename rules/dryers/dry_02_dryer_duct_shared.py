"""A dryer shares its exhaust duct or its terminal with another exhaust.

Lint from the dryer fills the other duct and its fan, and when only one of the two runs it blows into the other
room. Two dryers on one duct choke each other.

The usual cause is a bath fan beside the laundry that is teed into the dryer's duct. Give each its own duct and
terminal.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.fans import Fan
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import duct, is_vented, outlet, the_duct
from checker.quantities.opening_kinds import uses
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def sharers(case: Case, dryer: Dryer) -> list[str]:
    """Names of the others that use the dryer's duct or terminal. Raises Missing where neither shows it."""
    airway = duct(case, dryer)
    if airway is not None and airway.shared_with:
        return list(airway.shared_with)
    opening = outlet(case, dryer)
    if opening is None and dryer.to is not None and not says_of_sharing(case, dryer):
        return []
    if opening is None:
        return [str(other) for other in case.get(the_duct(case, dryer, "shared_with"), "shared_with")]
    used = uses(case, case.design)[opening.name]
    others = {
        use.device.name
        for use in used
        if use.device is not dryer and use.kind != "make-up air intake"
        and not (isinstance(use.device, Fan) and use.device.role == "booster")
    }
    return sorted(others)


def says_of_sharing(case: Case, dryer: Dryer) -> bool:
    """Whether the file says anything of sharing, be it to be decided; else what is not drawn is not there."""
    airway = duct(case, dryer)
    return airway is not None and case.speaks_of(airway, "shared_with")


def check(_dryer: Dryer, others: list[str]) -> Meets | Finding:
    """Nobody else may use the duct."""
    if not others:
        return Meets()
    return Finding(
        "{other} uses the exhaust duct or terminal of this dryer", at="to",
        help="give {other} a duct and terminal of its own", numbers={"other": Num(others[0])},
    )  # fmt: skip


RULE = Rule(
    code="DRY-02", name="dryer-duct-shared", severity="correction", since="0.1",
    over=each.dryer, when=is_vented, needs=(sharers,), cites=("dryer-duct-independent",), check=check,
    nothing="the design has no clothes dryer", answers=("E01",),
)  # fmt: skip
