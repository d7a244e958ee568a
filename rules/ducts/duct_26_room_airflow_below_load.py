"""A room's airflow carries less heat than its load at the supply temperature of the system.

Air carries heat in proportion to its flow and to how much warmer or colder than the room it is. A bedroom with
a load of 3000 Btu/h and supply air 50 degrees warmer than the room needs about 56 cfm; with less it never gets
warm on the design day, whatever the equipment can do.

Raise the airflow of the room, or lower its load. A hotter or colder supply must be one that the equipment really
delivers on the design day.
"""

from checker.case import CannotJudge, Case, Missing, quantity
from checker.physics.air import sensible_heat_factor
from checker.quantities.duct_balance import Served, room_airflow, served_rooms
from checker.quantities.moist_air import pressure
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def needed_airflow(case: Case, served: Served) -> tuple[float, str, float]:
    """(airflow that the greater need asks for, which load it is, that load), m3/s and W."""
    system, room = served.system, served.room
    factor = sensible_heat_factor(pressure(case, case.design))
    needs = []
    for load_key, air_key, indoor_key, word in (
        ("heating_load", "greatest_supply_temperature", "winter_temperature", "heating"),
        ("cooling_load", "supply_temperature", "summer_temperature", "cooling"),
    ):
        load, air = case.maybe(room, load_key), case.maybe(system, air_key)
        if load is None or air is None:
            continue
        indoor = case.design.house.indoor if case.design.house is not None else None
        if indoor is None:
            raise Missing(f"house.indoor.{indoor_key}")
        difference = air - case.get(indoor, indoor_key)
        useful = difference if word == "heating" else -difference
        if useful <= 0.0:
            raise CannotJudge(f"the supply air of {system.name} is no help for {word} at its stated temperature")
        needs.append((load / (factor * useful), word, load))
    if not needs:
        raise Missing(f"{system.path}.greatest_supply_temperature")
    return max(needs)


def check(served: Served, airflow: float, needed: tuple[float, str, float], tolerance: float) -> Meets | Finding:
    """Compare the room's airflow with what its load asks for."""
    least, word, load = needed
    numbers = {
        "room": Num(served.name),
        "needed": Num(least, "airflow"),
        "load": Num(load, "heat_rate"),
        "kind": Num(word),
    }
    if airflow >= (1.0 - tolerance) * least * (1.0 - 1e-9):
        return Meets(numbers)
    return Finding(
        "{room} gets {room_airflow}; its {kind} load of {load} asks for {needed} at this supply temperature",
        help="raise the airflow of {room} to {needed}",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-26", name="room-airflow-below-load", severity="caution", since="0.1",
    over=served_rooms, needs=(room_airflow, needed_airflow), limits=("room-airflow-slack",),
    cites=("duct-design-method",), check=check,
    nothing="no room with a load is served by one duct system of stated supply temperature alone",
)  # fmt: skip
