"""In the thin air of the site a heat pump no longer carries the load.

Makers' tables hold at sea level. At 7000 ft the fans move a quarter less air by mass, and the coils give and take
less heat: less than a quarter, how much less the maker says. A unit that just fits at the sea is then too small.

State the maker's factor as `by_maker: {altitude_factor: 94 %}`, or 100 % where the capacity already holds for this
place, and choose the size that still carries the load; or add backup heat.
"""

from checker.case import Case, quantity
from checker.physics.sizing import ALTITUDE_START
from checker.quantities.equipment import Group, all_heating, burns, is_heat_pump
from checker.quantities.sizing import elevation
from checker.quantities.thin_air import heat_in_thin_air
from checker.quantities.unit_loads import group_heating_load, loads_spoken_of
from checker.rule import Finding, Meets, Num, Rule


def heat_pumps(case: Case) -> list[Group]:
    """Heating groups with a heat pump and nothing that burns."""
    return [
        group
        for group in all_heating(case)
        if any(is_heat_pump(case, unit) for unit in group.units)
        and not any(burns(unit) for unit in group.units)
    ]


def is_high(case: Case, _group: Group) -> bool:
    """The site lies below 2000 ft, its elevation is not stated, or the file holds no load at all."""
    return elevation(case) > ALTITUDE_START and loads_spoken_of(case, "heating_load")


@quantity("length")
def height(case: Case, _group: Group) -> float:
    """Elevation of the site."""
    return elevation(case)


def check(group: Group, heat: float, load: float, _height: float) -> Meets | Finding:
    """Compare the heat here with the load."""
    numbers = {"unit": Num(group.name), "short": Num(max(0.0, load - heat), "heat_rate")}
    if heat >= load * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "at {height} {unit} gives {heat_in_thin_air} on the winter design day; the rooms that it serves lose "
        "{group_heating_load}",
        at="heating",
        help="show {short} more at this elevation: a larger unit or backup heat",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-39", name="altitude-leaves-heat-pump-short", severity="caution", since="0.1",
    over=heat_pumps, when=is_high, needs=(heat_in_thin_air, group_heating_load, height),
    cites=("heat-pump-altitude",), check=check, nothing="no heat pump is said to heat rooms",
)  # fmt: skip
