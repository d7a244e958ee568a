"""A drain that carries water in winter runs through the cold without protection from frost.

Recovery units and condensing furnaces drip all winter. Where their drain runs outdoors, in a vented attic, in a garage or in an
outside wall, it freezes; the water then backs up into the unit. Drains of cooling coils are dry in winter.

Keep the drain inside the warm space to its end, or show heat trace and insulation.
"""

from checker.case import Case, NotApplicable, given, quantity
from checker.design.condensate import CondensateDrain
from checker.design.fans import Fan
from checker.quantities.cold_climate import is_cold
from checker.quantities.condensate import drains, sources
from checker.quantities.condensing import is_condensing
from checker.quantities.room_uses import room_use
from checker.rule import Finding, Meets, Num, Rule

COLD = ("outdoors", "garage", "exterior wall", "roof", "floor over unconditioned")


def drips_in_winter(case: Case, drain: CondensateDrain) -> bool:
    """It carries water in the cooling season only."""
    return any(isinstance(each, Fan) or is_condensing(case, each) for each in sources(case, drain))


@quantity()
def cold_place(case: Case, drain: CondensateDrain) -> str:
    """The cold place that it passes. Raises NotApplicable where it stays in the warm or the climate is mild."""
    house = case.design.house
    warm = {"conditioned", "unvented"}
    for place in case.get(drain, "location"):
        room = case.design.rooms.get(place)
        if room is not None:
            place = "" if room.conditioned else room_use(case, room)
        kind = None if house is None else {"attic": house.attic, "crawl space": house.crawl_space}.get(place)
        if (place in COLD or (place in ("attic", "crawl space") and kind not in warm)) and is_cold(case, drain):
            return str(place)
    raise NotApplicable("it stays in the warm, or the climate is mild")


def check(drain: CondensateDrain, place: str, protected: bool) -> Meets | Finding:
    """Protected from frost."""
    if protected:
        return Meets()
    return Finding(
        f"the drain of {drain.name} carries water in winter and passes the {{place}} without frost protection",
        at="freeze_protection",
        help="keep the drain inside the warm space, or show heat trace and insulation",
        numbers={"place": Num(place)},
    )


RULE = Rule(
    code="COND-19", name="winter-drain-can-freeze", severity="caution", since="0.1",
    over=drains, when=drips_in_winter, needs=(cold_place, given("freeze_protection")), cites=("condensate-frost",),
    check=check,
    nothing="no condensate drain is drawn", answers=("J20",),
)  # fmt: skip
