"""On the winter design day the equipment delivers less heat than its rooms lose.

What counts is the capacity at the outdoor temperature of the design day, not the figure in the model number: a
heat pump that gives 12,000 Btu/h at 47 degF may give 8,000 at -4. The rooms are taken at the 68 degF that the code
asks heating to hold; units that share rooms are added up, backup heat included.
The code speaks of habitable rooms: a heater of baths and halls alone is not judged here.

Usual causes are a rated capacity taken for the one at design, rooms added to a unit that was chosen for fewer, and
a load that left out ventilation. Choose more capacity at the design temperature, add backup heat, or lower the load.
"""

from checker.case import Case, Missing, either, quantity
from checker.quantities.equipment import HABITABLE, Group, all_heating
from checker.quantities.heat_pump import group_heat, stops_at_design
from checker.quantities.room_uses import room_use
from checker.quantities.unit_loads import group_heating_load, loads_spoken_of
from checker.quantities.ventilating_handlers import winter_indoor, winter_outdoor
from checker.rule import Finding, Meets, Num, Rule


def with_loads(case: Case) -> list[Group]:
    """Every heating group. Raises Missing, once, where the file holds no load at all."""
    groups = all_heating(case)
    if groups and not loads_spoken_of(case, "heating_load"):
        rooms = sorted({f"rooms.{name}.heating_load" for group in groups for name in group.rooms})
        raise Missing(*(rooms or ["papers.loads.heating"]))
    return groups


def is_habitable(case: Case, name: str) -> bool:
    """Whether a room is one to live, sleep, cook or eat in, or is not known to be another."""
    room = case.design.rooms.get(name)
    return room is None or either(lambda: room_use(case, room) in HABITABLE, lambda: True)


def runs_at_design(case: Case, group: Group) -> bool:
    """It heats no habitable room, or its heat pump stops above the winter design temperature: judged by itself."""
    if group.rooms and not any(is_habitable(case, name) for name in group.rooms):
        return False
    return not any(
        either(lambda unit=unit: stops_at_design(case, unit), lambda: False)  # type: ignore[misc]
        for unit in group.units
    )


@quantity("heat_rate", "load x (68 F - outdoor) / (indoor - outdoor)")
def least_heat(case: Case, group: Group) -> float:
    """Heat that holds the rooms at the code's temperature; the load itself where the capacity covers that."""
    load = group_heating_load(case, group)
    if group_heat(case, group) >= load:
        return load
    indoor, outdoor = winter_indoor(case, group), winter_outdoor(case, group)
    held = float(case.limit("required-heating"))
    return load * min(1.0, max(0.0, held - outdoor) / max(held - outdoor, indoor - outdoor, 1e-9))


def check(group: Group, heat: float, load: float, least: float, _held: float) -> Meets | Finding:
    """Compare the heat with the load at the code's temperature."""
    numbers = {"unit": Num(group.name), "short": Num(max(0.0, load - heat), "heat_rate")}
    if heat >= least * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} delivers {group_heat} on the winter design day; the rooms that it serves lose {group_heating_load}, "
        "and {least_heat} even at {limit}",
        at="heating",
        help="show {short} more at the winter design temperature: a larger unit, backup heat, or less load",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-01", name="heating-below-load", severity="correction", since="0.1",
    over=with_loads, when=runs_at_design, needs=(group_heat, group_heating_load, least_heat),
    limits=("required-heating",), check=check, nothing="no equipment is said to heat rooms", answers=("H05", "H28"),
)  # fmt: skip
