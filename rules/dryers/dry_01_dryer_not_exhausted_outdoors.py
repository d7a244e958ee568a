"""A dryer's exhaust does not end outdoors.

A load of laundry gives off several liters of water and a handful of lint. In an attic, crawl space or garage the
water condenses on the framing and the lint feeds a fire. From a gas dryer carbon monoxide comes along: it must
never exhaust indoors.

The usual cause is a duct that was cut short at the soffit or the rim joist, or an indoor lint box. Lead the duct
all the way to a terminal in the outer wall or the roof, or use a listed condensing dryer.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import burns_gas, is_ductless, outlet
from checker.quantities.surroundings import NOT_OUTDOORS, place_of
from checker.rule import Finding, Meets, Rule


@quantity()
def end(case: Case, dryer: Dryer) -> str:
    """The place where a dryer's exhaust ends, the room itself for a ductless one."""
    if is_ductless(dryer):
        return "none"
    opening = outlet(case, dryer)
    name = opening.name if opening is not None else str(dryer.to)
    return "equipment" if name in case.design.equipment else place_of(case, name)


def needs_exhaust(case: Case, dryer: Dryer) -> bool:
    """The dryer condenses and has no exhaust."""
    return not is_ductless(dryer) or burns_gas(dryer)


def check(dryer: Dryer, place: str) -> Meets | Finding:
    """Only the outdoors is right; a gas dryer cannot go without."""
    if place == "none":
        return Finding(
            "this gas dryer is drawn without an exhaust",
            at="kind", help="lead its exhaust outdoors, or choose an electric condensing dryer",
        )  # fmt: skip
    if place not in NOT_OUTDOORS and place != "equipment":
        return Meets()
    warning = "; until then a gas dryer must not run" if burns_gas(dryer) else ""
    return Finding(
        "this dryer's exhaust ends in: {end}", at="to",
        help=f"lead the duct to a terminal in the outer wall or the roof{warning}",
    )  # fmt: skip


RULE = Rule(
    code="DRY-01", name="dryer-not-exhausted-outdoors", severity="correction", since="0.1",
    over=each.dryer, when=needs_exhaust, needs=(end,), cites=("dryer-exhaust-outdoors",), check=check,
    nothing="the design has no clothes dryer", answers=("E01",),
)  # fmt: skip
