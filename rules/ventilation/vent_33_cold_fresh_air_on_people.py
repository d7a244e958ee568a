"""On a winter design day cold outdoor air is let into a room where people sit or sleep.

Air that enters much colder than the room falls to the floor and is felt as a draft, even at a low flow.
People then close the grille or stop the fan, and the ventilation is gone.

Mix the outdoor air with room air before it is let in, warm it by a heater, recover heat, or let it into a
closet or hall from which it seeps on. A heater needs a sensor that shuts it off when the fan stops, and an
electrician sizes its circuit.
"""

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.fans import Fan
from checker.physics.air import sensible_heat_factor
from checker.physics.mixing import mixed_temperature
from checker.quantities.distribution import behind, deliveries, direct
from checker.quantities.moist_air import pressure
from checker.quantities.room_uses import room_use
from checker.quantities.ventilating_handlers import winter_indoor, winter_outdoor
from checker.quantities.whole_house import running, supply_of
from checker.rule import Finding, Meets, Num, Rule

WITH_PEOPLE = ("bedroom", "living", "dining", "kitchen", "office", "bathroom")


def supply_fans(case: Case) -> list[Fan]:
    """Supply fans without recovery that run all day or by a timer."""
    parts = running(case, case.design)
    return [part.device for part in parts if isinstance(part.device, Fan) and part.device.role == "supply"]


@quantity()
def rooms_with_people(case: Case, fan: Fan) -> list[str]:
    """Rooms with people that the fan lets air into itself. NotApplicable where there is none."""
    rooms = sorted({each.room for each in direct(case, fan)})
    if not rooms and any(behind(case, name) is not None for name in fan.to):
        raise NotApplicable("an air handler mixes its air before it reaches people")
    if not rooms and only_supply(case, fan):
        rooms = sorted({each.room for each in deliveries(case, case.design)})
    if not rooms:
        raise Missing(path_of(fan, "to"))
    found = [name for name in rooms if room_use(case, case.design.rooms[name]) in WITH_PEOPLE]
    if not found:
        raise NotApplicable("it lets its air in where nobody sits or sleeps")
    return found


def only_supply(case: Case, fan: Fan) -> bool:
    """Whether all outdoor air that fans bring in comes by this one."""
    return all(part.device is fan for part in running(case, case.design) if part.supplies)


@quantity("airflow")
def outdoor_air(case: Case, fan: Fan) -> float:
    """Outdoor air that the fan brings in."""
    flow = sum(supply_of(case, part) for part in running(case, case.design) if part.device is fan)
    if flow <= 0:
        raise CannotJudge("the fan brings in no air")
    return flow


def heat_carried(case: Case, fan: Fan) -> float:
    """Heat that the fan's air takes for each kelvin, W/K, in the air of the site."""
    return sensible_heat_factor(pressure(case, case.design)) * outdoor_air(case, fan)


@quantity("temperature", "outdoor air, mixed with room air or warmed where the design says so")
def delivered(case: Case, fan: Fan) -> float:
    """Temperature at which the air is let in on the winter design day."""
    cold, room = winter_outdoor(case, fan), winter_indoor(case, fan)
    way = case.maybe(fan.tempering, "by") if fan.tempering is not None else None
    if way == "recovery":
        raise NotApplicable("a recovery core warms it")
    if way == "mixing":
        return mixed_temperature([(outdoor_air(case, fan), cold), (float(case.get(fan.tempering, "mixed_with")), room)])
    if way == "heater":
        return cold + float(case.get(fan.tempering, "power")) / heat_carried(case, fan)
    return cold


@quantity("power", "air's heat factor at the site x airflow x (least temperature - outdoors)")
def warming(case: Case, fan: Fan) -> float:
    """Heat that brings the air to the least temperature at which it is not felt as a draft."""
    lift = float(case.limit("delivered-air-temperature")) - winter_outdoor(case, fan)
    return heat_carried(case, fan) * max(0.0, lift)


def check(
    fan: Fan, rooms: list[str], temperature: float, flow: float, cold: float, room: float, _warming: float, limit: float,
) -> Meets | Finding:
    """The temperature against the least that is not felt as a draft."""
    if temperature >= limit - 1e-6:
        return Meets()
    numbers = {"rooms": Num(", ".join(rooms[:3]))}
    mix = ""
    if room > limit:
        numbers["mixed_with"] = Num(flow * (limit - cold) / (room - limit), "airflow")
        mix = "mix it with {mixed_with} of room air, "
    return Finding(
        f"at {{winter_outdoor}} outdoors {fan.name} lets {{outdoor_air}} into {{rooms}} at {{delivered}}, below {{limit}}",
        at="to",
        help=mix + "warm it by {warming}, or let it into a closet or hall from which it seeps on",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-33", name="cold-fresh-air-on-people", severity="caution", since="0.1",
    over=supply_fans, needs=(rooms_with_people, delivered, outdoor_air, winter_outdoor, winter_indoor, warming),
    limits=("delivered-air-temperature",), check=check, nothing="no supply fan without recovery runs all day",
)  # fmt: skip
