"""Heat that a house loses at winter design: through its shell, by its outdoor air, by unheated spaces beside it.

Source throughout: ASHRAE Handbook - Fundamentals 2021, chapter 17. Units: W, W/(m2 K), W/(m K), m2, m, K, m3/s.
No sun and no heat of people counts at winter design.
"""

from __future__ import annotations

from checker.physics.arguments import require_finite, require_not_negative, require_positive
from checker.physics.validity import OutOfRange

LEAST_DIFFERENCE, MOST_DIFFERENCE = 5.0, 60.0


def require_winter(indoor: float, outdoor: float) -> None:
    """OutOfRange unless indoors, K, is 5 to 60 K above outdoors, K: the range in which houses are reckoned so."""
    require_positive(indoor=indoor, outdoor=outdoor)
    if not LEAST_DIFFERENCE <= indoor - outdoor <= MOST_DIFFERENCE:
        raise OutOfRange("heating load", f"{indoor - outdoor:.0f} K between indoors and outdoors is outside 5 to 60 K")


def transmission_loss(u: float, area: float, indoor: float, beyond: float) -> float:
    """Heat in W through a surface: U A (indoor - beyond); negative where it is warmer beyond."""
    require_not_negative(u=u, area=area)
    require_finite(indoor=indoor, beyond=beyond)
    return u * area * (indoor - beyond)


def edge_loss(factor: float, perimeter: float, indoor: float, outdoor: float) -> float:
    """Heat in W through the edge of a slab on grade: F P (indoor - outdoor), `factor` W/(m K)."""
    require_not_negative(factor=factor, perimeter=perimeter)
    require_finite(indoor=indoor, outdoor=outdoor)
    return factor * perimeter * (indoor - outdoor)


def buffer_temperature(
    to_rooms: float, indoor: float, to_outdoors: float, outdoor: float, air_to_outdoors: float = 0.0
) -> float:
    """Temperature in K of an unheated space between rooms and outdoors, by its heat balance.

    `to_rooms`, `to_outdoors` conductances W/K, `air_to_outdoors` heat capacity flow of outdoor air W/K.
    ValueError where nothing conducts.
    """
    require_not_negative(to_rooms=to_rooms, to_outdoors=to_outdoors, air_to_outdoors=air_to_outdoors)
    require_finite(indoor=indoor, outdoor=outdoor)
    outward = to_outdoors + air_to_outdoors
    require_positive(conductance=to_rooms + outward)
    return (to_rooms * indoor + outward * outdoor) / (to_rooms + outward)
