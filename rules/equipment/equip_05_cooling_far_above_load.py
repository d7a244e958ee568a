"""Cooling cannot turn down to what its rooms need, so it cools in short bursts and does not dry humid air.

A coil takes moisture out only after it has run cold for several minutes. A unit whose least capacity is above the
load of the hottest hour never runs that long: where the air is humid the room is cool and clammy, elsewhere its
temperature swings. Baths, laundries and small bedrooms
have little load of their own, so the smallest head on the market can be three to ten times too large.

State the least capacity, choose a unit that turns down further, let one ducted unit serve several small rooms, or
plan the drying apart from the cooling.
"""

from checker.case import CannotJudge, Case, Missing, quantity
from checker.quantities.climate import zone
from checker.quantities.equipment import HEADS, Group, all_cooling
from checker.quantities.sizing import SENSIBLE_AT_LEAST, Extent, cooling_extent
from checker.quantities.unit_loads import group_cooling_sensible, loads_spoken_of
from checker.quantities.ventilation_standard import site_of
from checker.rule import Finding, Meets, Num, Rule

IN_CLIMATE = {
    "A": "short bursts that cool and do not dry", "C": "short bursts that cool and do not dry",
    "B": "short bursts that let the temperature swing", "": "short bursts, which do not dry where the air is humid",
}  # fmt: skip


def with_heads(case: Case) -> list[Group]:
    """Cooling groups of room units and slim-duct units."""
    return [group for group in all_cooling(case) if all(unit.kind in HEADS for unit in group.units)]


def has_load(case: Case, group: Group) -> bool:
    """Its rooms have no cooling load, or the file holds no load at all."""
    return loads_spoken_of(case, "cooling_load") and group_cooling_sensible(case, group) > 0.0


@quantity("heat_rate", "sensible load / the share of the capacity that is surely sensible")
def taken_up(case: Case, group: Group) -> float:
    """Total cooling that the sensible load can take up at most."""
    return group_cooling_sensible(case, group) / SENSIBLE_AT_LEAST


@quantity()
def judged_extent(case: Case, group: Group) -> Extent:
    """The capacities; the least one is asked for where it decides."""
    found, load = cooling_extent(case, group), group_cooling_sensible(case, group)
    ratio = found.full / load
    fair = case.limit("unremarkable-ratio") / SENSIBLE_AT_LEAST
    if found.least is None and fair < ratio <= case.limit("oversize-ratio") / SENSIBLE_AT_LEAST:
        raise Missing(*found.asked)
    return found


@quantity()
def bursts(case: Case, group: Group) -> str:
    """What short bursts of cooling mean in this climate: of drying, only what its moisture letter tells."""
    try:
        letter = "" if case.maybe(site_of(case), "climate_zone") is None else zone(case, group)[1:]
    except (CannotJudge, Missing):
        letter = ""
    return IN_CLIMATE[letter]


def check(
    group: Group, capacity: Extent, load: float, taken: float, bursting: str, extreme: float, _fair: float
) -> Meets | Finding:
    """Compare the least capacity with the load, or the full one where the least is not stated."""
    numbers = {
        "unit": Num(group.name),
        "full": Num(capacity.full, "heat_rate"),
        "least": Num(capacity.least, "heat_rate"),
        "ratio": Num(round(capacity.full / load, 1)),
    }
    drier = "" if bursting == IN_CLIMATE["B"] else ", or show a dehumidifier"
    if capacity.least is not None and capacity.least > taken * (1 + 1e-9):
        return Finding(
            "{unit} cools with {least} or more; its rooms have a sensible load of {group_cooling_sensible} in the "
            "hottest hour: {bursts}",
            at="cooling",
            help=f"choose a unit that turns down to {{taken_up}}, let one unit serve more rooms{drier}",
            numbers=numbers,
        )
    if capacity.least is None and capacity.full > extreme * taken * (1 + 1e-9):
        return Finding(
            "{unit} has {full} of cooling for a sensible load of {group_cooling_sensible}, {ratio} times as much; few "
            "units turn down that far: {bursts}",
            at="cooling",
            help="state the least capacity, choose a smaller unit, or let one unit serve more rooms",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="EQUIP-05", name="cooling-far-above-load", severity="caution", since="0.1",
    over=with_heads, when=has_load, needs=(judged_extent, group_cooling_sensible, taken_up, bursts),
    limits=("oversize-ratio", "unremarkable-ratio"), check=check,
    nothing="no room unit or slim-duct unit is said to cool rooms", answers=("H20", "H32"),
)  # fmt: skip
