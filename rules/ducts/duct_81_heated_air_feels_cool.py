"""Heated air reaches an outlet so cool that it feels like a draft.

A heat pump warms its air far less than a furnace, and a long or bare duct takes part of that. Air below about 90 degF
still heats the room, but on skin it feels cool where it blows on a bed, a sofa or somebody who steps out of the shower.

The air is reckoned on the winter design day from the output and the airflow of the unit, less what the runs lose;
electric backup is left out as long as the compressor runs, for it rests most of the time.
Insulate the duct, bring it inside, let the unit run at a lower airflow within its maker's range, or set the outlets so
that they blow along a wall or floor and not on people.
"""

from checker.design.ducts import DuctSystem
from checker.quantities.delivered_air import Arriving, coolest_heated_air, heating_systems
from checker.quantities.duct_exit_temperature import heated_air_at_unit
from checker.rule import Finding, Meets, Num, Rule


def check(system: DuctSystem, coolest: Arriving, _at_unit: float, limit: float) -> Meets | Finding:
    """Compare the coolest with the least that feels warm."""
    numbers = {"system": Num(system.name), "air": Num(coolest.temperature, "temperature")}
    if coolest.temperature >= limit * (1 - 1e-9):
        return Meets(numbers)
    if coolest.outlet is None:
        return Finding(
            "on the winter design day {system} sends out air of {air}, below {limit}: it heats, but feels cool on people",
            help="lower its airflow within the maker's range, or set the outlets so that they do not blow on people",
            numbers=numbers,
        )
    numbers |= {"outlet": Num(coolest.outlet.name), "room": Num(coolest.outlet.room)}
    return Finding(
        "on the winter design day air leaves {system} at {heated_air_at_unit} and reaches outlet {outlet} in {room} at "
        "{air}, below {limit}: it feels cool on people",
        at=f"outlets.{coolest.outlet.name}",
        help="insulate or shorten its duct, or set the outlet so that it does not blow on people",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-81", name="heated-air-feels-cool", severity="note", since="0.1",
    over=heating_systems, needs=(coolest_heated_air, heated_air_at_unit), limits=("warm-air-least",), check=check,
    nothing="no duct system of equipment that heats says how much",
)  # fmt: skip
