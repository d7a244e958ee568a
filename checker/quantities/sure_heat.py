"""Heat against load on the winter design day, and what of a shortage is sure.

A load may rest on coefficients that are recalled, a capacity on straight lines between the points of a maker's table. What
is sure leaves out the first, and takes the greater point for the second.
"""

from functools import partial

from checker.case import Case, Missing, either, gather, quantity
from checker.design.equipment import Equipment
from checker.design.rooms import Room
from checker.physics.heat_pump import values_beside
from checker.quantities.computed_loads import computed_heating, computed_room_heating
from checker.quantities.equipment import HABITABLE, Group, all_heating, burns, is_heat_pump, outdoor_of
from checker.quantities.heat_pump import (
    compressor_capacity,
    group_heat,
    heat_at_design,
    heating_told,
    helped_by_fuel,
    points_of,
    stops_at_design,
)
from checker.quantities.room_uses import room_use
from checker.quantities.stated_loads import stated_block_heating, stated_room_heating
from checker.quantities.unit_loads import group_heating_load, load_of_group, loads_spoken_of
from checker.quantities.ventilating_handlers import winter_indoor, winter_outdoor

SLACK = 1e-9


def with_loads(case: Case) -> list[Group]:
    """Every heating group. Raises Missing, once, where the file holds no load at all."""
    groups = all_heating(case)
    if groups and not loads_spoken_of(case, "heating_load"):
        rooms = sorted({f"rooms.{name}.heating_load" for group in groups for name in group.rooms})
        raise Missing(*(rooms or ["papers.loads.heating"]))
    return groups


def heats_habitable(case: Case, group: Group) -> bool:
    """Whether a group heats a room to live, sleep, cook or eat in, or one that is not known to be another."""
    rooms = [case.design.rooms.get(name) for name in group.rooms]

    def is_habitable(room: Room | None) -> bool:
        return room is None or either(lambda: room_use(case, room) in HABITABLE, lambda: True)

    return not rooms or any(is_habitable(room) for room in rooms)


def stops_somewhere(case: Case, group: Group) -> bool:
    """Whether a heat pump of a group is off at the winter design temperature."""
    return any(either(partial(stops_at_design, case, unit), lambda: False) for unit in group.units)


@quantity("share", "(68 F - outdoor) / (indoor - outdoor)")
def held_share(case: Case, group: Group) -> float:
    """Share of the load that is left at the temperature that the code asks heating to hold."""
    indoor, outdoor = winter_indoor(case, group), winter_outdoor(case, group)
    held = float(case.limit("required-heating"))
    return min(1.0, max(0.0, held - outdoor) / max(held - outdoor, indoor - outdoor, 1e-9))


@quantity("heat_rate", "load x (68 F - outdoor) / (indoor - outdoor)")
def least_heat(case: Case, group: Group) -> float:
    """Heat that holds the rooms at the code's temperature; the load itself where the capacity covers that."""
    load = group_heating_load(case, group)
    return load if group_heat(case, group) >= load else load * held_share(case, group)


@quantity("heat_rate", "worked out without what rests on coefficients from memory, else as stated")
def sure_room_load(case: Case, room: Room) -> float:
    """Heating load of a room as far as published figures or the design's own statement bear it out."""
    if case.design.envelope is None:
        return stated_room_heating(case, room)
    return either(lambda: max(0.0, computed_room_heating(case, room).surely), lambda: stated_room_heating(case, room))


@quantity("heat_rate", "worked out without what rests on coefficients from memory, else as stated")
def sure_block_load(case: Case, design: object) -> float:
    """The same for the house."""
    if case.design.envelope is None:
        return stated_block_heating(case, design)
    return either(lambda: computed_heating(case, design).surely, lambda: stated_block_heating(case, design))


@quantity("heat_rate", "of the whole house, else the sum over the rooms that are served")
def sure_load(case: Case, group: Group) -> float:
    """Heating load of the rooms of a group without what rests on coefficients from memory."""
    return load_of_group(case, group, "heating_load", sure_block_load, sure_room_load)


def greatest_compressor(case: Case, unit: Equipment) -> float:
    """Capacity of a heat pump at winter design; between the points of a table that of the greater one."""
    read = compressor_capacity(case, unit)
    heating, outdoor = heating_told(case, unit), outdoor_of(case, unit)
    if read <= 0.0 or case.maybe(heating, "at_design") is not None:
        return read
    if unit.heating is not None and heating.points:
        return max(read, *values_beside(points_of(case, heating), winter_outdoor(case, unit)))
    if outdoor is None or outdoor.heating is None or not outdoor.heating.points:
        return read
    if heating is outdoor.heating:
        return greatest_compressor(case, outdoor)
    return read * greatest_compressor(case, outdoor) / compressor_capacity(case, outdoor)


def greatest_of_unit(case: Case, unit: Equipment) -> float:
    """The most heat that a unit may deliver at winter design."""
    read = heat_at_design(case, unit)
    if not is_heat_pump(case, unit) or burns(unit):
        return read
    greatest = greatest_compressor(case, unit)
    if helped_by_fuel(case, unit):
        return max(read, greatest)  # the flame takes the place of the compressor
    return max(read, read - compressor_capacity(case, unit) + greatest)


@quantity("heat_rate", "sum over the units; of a maker's table the greater of the points beside the design temperature")
def greatest_heat(case: Case, group: Group) -> float:
    """The most heat that a group may deliver at the winter design temperature."""
    return sum(gather([partial(greatest_of_unit, case, unit) for unit in group.units]))


@quantity("heat_rate", "sure load x (68 F - outdoor) / (indoor - outdoor)")
def surely_asked(case: Case, group: Group) -> float:
    """Heat that is surely needed to hold the code's temperature; the sure load itself where the capacity covers that."""
    load, most = gather([partial(sure_load, case, group), partial(greatest_heat, case, group)])
    return load if most >= load else load * held_share(case, group)


@quantity()
def is_open(case: Case, group: Group) -> bool:
    """Whether the heat is short by the figures at hand, while it need not be by those that are sure."""
    heat, least, most, sure = gather(
        [partial(each, case, group) for each in (group_heat, least_heat, greatest_heat, surely_asked)]
    )
    return heat < least * (1 - SLACK) and most >= sure * (1 - SLACK)
