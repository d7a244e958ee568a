"""At this elevation a burner gives less than its rated output, and then too little.

Thin air carries less oxygen. A gas burner is set to a smaller input above 2000 ft, by the maker's factor or by the
rule of thumb of 4 % for each 1000 ft above the sea. A furnace chosen by its sea-level output can be a fifth short in
a mountain town.

Take the output at this elevation from the maker, and choose the size that still carries the load. A qualified gas
fitter sets the burner for altitude.
"""

from checker.case import Case, quantity
from checker.physics.sizing import ALTITUDE_START
from checker.quantities.equipment import Group, all_heating, burns
from checker.quantities.heat_pump import heat_at_design
from checker.quantities.sizing import altitude_share, elevation
from checker.quantities.unit_loads import group_heating_load, loads_spoken_of
from checker.rule import Finding, Meets, Num, Rule


def gas_burners(case: Case) -> list[Group]:
    """Furnaces and boilers that heat their rooms alone and whose output at design is not stated."""
    return [
        group
        for group in all_heating(case)
        if len(group.units) == 1
        and burns(group.units[0])
        and group.units[0].fuel not in ("electric", "wood", "pellet")
        and (group.units[0].heating is None or group.units[0].heating.at_design is None)
    ]


def is_high(case: Case, group: Group) -> bool:
    """The site lies below 2000 ft, its elevation is not stated, or the file holds no load at all."""
    return elevation(case) > ALTITUDE_START and loads_spoken_of(case, "heating_load")


@quantity("heat_rate", "rated output x altitude factor")
def output_here(case: Case, group: Group) -> float:
    """Output at this elevation."""
    return heat_at_design(case, group.units[0]) * altitude_share(case, group.units[0])


@quantity("length")
def height(case: Case, _group: Group) -> float:
    """Elevation of the site."""
    return elevation(case)


def check(group: Group, heat: float, load: float, _height: float) -> Meets | Finding:
    """Compare the output here with the load."""
    numbers = {"unit": Num(group.name), "short": Num(max(0.0, load - heat), "heat_rate")}
    if heat >= load * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "at {height} {unit} gives about {output_here}; the rooms that it serves lose {group_heating_load}",
        at="heating",
        help="show the maker's output at this elevation, and choose a size that carries the load there",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-20", name="altitude-leaves-too-little", severity="caution", since="0.1",
    over=gas_burners, when=is_high, needs=(output_here, group_heating_load, height), cites=("altitude-correction",),
    check=check, nothing="no furnace or boiler is chosen by its rated output alone",
)  # fmt: skip
