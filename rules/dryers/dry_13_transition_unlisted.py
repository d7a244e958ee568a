"""The transition duct behind a dryer is not listed to UL 2158A.

Plastic and thin foil connectors melt or tear when lint burns behind the dryer. Those that are listed to the
standard have been tried with flame.

The usual cause is general-purpose flexible duct from the shelf. Show a product that is listed to UL 2158A.
"""

from checker import each
from checker.case import given
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import transition_speaks_of
from checker.rule import Finding, Meets, Rule

STANDARD = "2158a"


def check(_dryer: Dryer, listing: str) -> Meets | Finding:
    """The listing must name the standard."""
    if STANDARD in listing.lower().replace(" ", ""):
        return Meets()
    return Finding(
        "this dryer's transition duct is given as `{listing}`, not as listed to UL 2158A", at="transition.listing",
        help="use a transition duct that is listed to UL 2158A",
    )  # fmt: skip


RULE = Rule(
    code="DRY-13", name="transition-unlisted", severity="correction", since="0.1",
    over=each.dryer, when=transition_speaks_of("listing"), needs=(given("transition.listing"),),
    cites=("dryer-transition-listing",), check=check, nothing="the design has no clothes dryer", answers=("E06",),
)  # fmt: skip
