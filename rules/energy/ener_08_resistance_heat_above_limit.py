"""A house in a cold zone has more electric resistance heat than the code lets it have without a heat pump.

In climate zones 4 to 8 the 2024 edition allows 2 kW of resistance heat in all; a house with more has a heat pump
that heats its largest space, bedrooms left out. A baseboard in the bath is no matter; a house of baseboards is.

Let a heat pump heat the largest living space, and keep resistance for small rooms and backup.
"""

from checker import each
from checker.case import Case, Missing, quantity
from checker.design import Design
from checker.quantities.climate import zone_number
from checker.quantities.distribution import spaces
from checker.quantities.energy import resistance_power, resistance_units
from checker.quantities.equipment import all_heating, heated_rooms, is_heat_pump
from checker.quantities.room_uses import room_use
from checker.rule import Finding, Meets, Rule

LIVED_IN = ("living", "dining", "kitchen", "office", "other", "basement")


def cold_with_resistance(case: Case) -> list[Design]:
    """The design, where it has electric resistance heat."""
    return each.design(case) if resistance_units(case) else []


def is_cold(case: Case, design: Design) -> bool:
    """The climate zone is 0 to 3."""
    return zone_number(case, design) >= float(case.limit("resistance-heat-zones"))


@quantity()
def pump_in_largest_space(case: Case, design: Design) -> bool:
    """Whether a heat pump heats the largest space that is no bedroom; not asked where the resistance heat is small."""
    if resistance_power(case, design) <= case.limit("resistance-heat"):
        return True
    reached = {
        name
        for group in all_heating(case)
        if any(is_heat_pump(case, unit) for unit in group.units)
        for name in group.rooms
    }
    joined = spaces(case, design)
    rooms = [room for room in heated_rooms(case) if room_use(case, room) in LIVED_IN]
    open_rooms = {frozenset(joined[room.name]) for room in rooms}
    if not rooms:
        raise Missing("rooms")
    warm = [space for space in open_rooms if space & reached]
    if len(warm) in (0, len(open_rooms)):
        return bool(warm)
    absent = [f"rooms.{room.name}.floor_area" for room in rooms if room.floor_area is None]
    if absent:
        raise Missing(*absent)
    area = {space: sum(room.floor_area or 0.0 for room in rooms if room.name in space) for space in open_rooms}
    return max(open_rooms, key=lambda space: area[space]) in warm


def check(_design: Design, power: float, pump: bool, most: float) -> Meets | Finding:
    """Too much resistance heat without that heat pump is the finding."""
    if pump or power <= most * (1 + 1e-9):
        return Meets()
    return Finding(
        "{resistance_power} of electric resistance heat are installed, more than {limit}, and no heat pump heats the "
        "largest space",
        at="equipment",
        help="let a heat pump heat the largest living space, or install no more than {limit} of resistance heat",
    )


RULE = Rule(
    code="ENER-08", name="resistance-heat-above-limit", severity="correction", since="0.1",
    over=cold_with_resistance, when=is_cold, needs=(resistance_power, pump_in_largest_space),
    limits=("resistance-heat",), check=check, nothing="the design has no electric resistance heat", answers=("H27",),
)  # fmt: skip
