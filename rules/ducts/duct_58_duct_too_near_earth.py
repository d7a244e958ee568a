"""A duct in the crawl space is too near the earth.

Damp soil rusts metal, wets insulation and invites animals to nest on the warm duct. The code keeps ducts 4 in from
the earth unless they are built as underground ducts.

Hang the duct from the joists, or dig the ground away under it.
"""

from checker.case import Case, Missing, given, path_of
from checker.design.airway import Airway
from checker.quantities.duct_exposure import GROUND
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_scope import ducts
from checker.quantities.room_uses import room_use
from checker.rule import Finding, Meets, Num, Rule


def near_the_ground(case: Case) -> list[Airway]:
    """Ducts in a crawl space, and those whose distance to the earth is stated; not those built into the ground."""
    found = []
    for duct in ducts(case):
        stated = duct.earth_clearance is not None or path_of(duct, "earth_clearance") in case.design.tbd
        if not GROUND & set(duct.location) and (stated or any(is_crawl_space(case, place) for place in duct.location)):
            found.append(duct)
    return found


def is_crawl_space(case: Case, place: str) -> bool:
    """Whether a place or room is a crawl space."""
    room = case.design.rooms.get(place)
    try:
        return (place if room is None else room_use(case, room)) == "crawl space"
    except Missing:
        return False


def check(duct: Airway, clearance: float, least: float) -> Meets | Finding:
    """Compare the distance with the least."""
    if clearance >= least:
        return Meets()
    return Finding(
        "{duct} is {earth_clearance} from the earth, nearer than {limit}",
        at="earth_clearance",
        help="hang it from the joists so that {limit} or more stay clear under it",
        numbers={"duct": Num(duct_label(duct))},
    )


RULE = Rule(
    code="DUCT-58", name="duct-too-near-earth", severity="correction", since="0.1",
    over=near_the_ground, needs=(given("earth_clearance"),), limits=("duct-earth-clearance",), check=check,
    nothing="no duct runs in a crawl space", answers=("F14",),
)  # fmt: skip
