"""The smallest zone alone asks for less than its outdoor unit can give steadily.

When one small bedroom calls, the whole compressor starts. If its least capacity is above what that room loses even
on the design day, it runs in short bursts at every hour of the year when only that room calls, and the surplus
leaks into the heads of the other rooms.

Join the small rooms behind one ducted unit, give the smallest zone a heater of its own, or choose an outdoor unit
that turns down further. One single-zone unit for each large space turns down best.
"""

from functools import partial

from checker.case import Case, NotApplicable, gather, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import all_heating, indoor_units
from checker.quantities.heat_pump import heating_of
from checker.quantities.sizing import least_of
from checker.quantities.unit_loads import group_heating_load, loads_spoken_of
from checker.rule import Finding, Meets, Num, Rule


def of_several_zones(case: Case) -> list[Equipment]:
    """Outdoor units with two or more indoor units whose least capacity is stated or asked for."""
    return [
        unit
        for unit in case.design.equipment.values()
        if len(indoor_units(case, unit)) > 1 and unit.heating is not None
    ]


def has_loads(case: Case, _outdoor: Equipment) -> bool:
    """The file holds no load at all."""
    return loads_spoken_of(case, "heating_load")


@quantity("heat_rate")
def least_heating(case: Case, outdoor: Equipment) -> float:
    """Least heating capacity of the outdoor unit."""
    least = least_of(case, outdoor, heating_of(outdoor))
    return float(case.get(heating_of(outdoor), "least")) if least is None else least


@quantity()
def smallest_zone(case: Case, outdoor: Equipment) -> tuple[float, str]:
    """(load in W, name) of the zone with the smallest heating load."""
    names = {unit.name for unit in indoor_units(case, outdoor)}
    groups = [group for group in all_heating(case) if any(unit.name in names for unit in group.units)]
    loads = gather([partial(group_heating_load, case, group) for group in groups])
    if len(loads) < 2:
        raise NotApplicable("its indoor units share their rooms, one zone for the compressor")
    return min((load, group.name) for load, group in zip(loads, groups, strict=True))


@quantity("heat_rate")
def smallest_load(case: Case, outdoor: Equipment) -> float:
    """Heating load of the smallest zone."""
    return smallest_zone(case, outdoor)[0]


def check(outdoor: Equipment, least: float, load: float, zone: tuple[float, str]) -> Meets | Finding:
    """Compare the least capacity with the smallest zone."""
    numbers = {"unit": Num(outdoor.name), "zone": Num(zone[1])}
    if least <= load * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} runs at {least_heating} or more; the zone of {zone} loses {smallest_load} on the coldest day, so the "
        "compressor starts and stops whenever that zone calls alone",
        at="heating.least",
        help="join {zone} with other rooms behind one unit, or choose an outdoor unit that turns down to {smallest_load}",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-11", name="smallest-zone-below-turn-down", severity="caution", since="0.1",
    over=of_several_zones, when=has_loads, needs=(least_heating, smallest_load, smallest_zone),
    cites=("turn-down-of-outdoor-unit",), check=check,
    nothing="no outdoor unit with a heating capacity of its own serves several indoor units",
    answers=("H20", "H30"),
)  # fmt: skip
