"""Refrigerant lines: pressure lost in a riser, the subcooling it takes, liquid velocity, mildly flammable charges.

Units: K, Pa, m, kg, m3, W. Refrigerants by designation in capitals without hyphen, such as `R32`.
Liquid properties: the table beside this module, from a reference equation of state; linear between its rows.
"""

from math import pi

from checker.physics.arguments import require_finite, require_positive
from checker.physics.refrigerant_table import COLDEST, SATURATED_LIQUID, STEP, VAPOR_ENTHALPY
from checker.physics.validity import OutOfRange
from checker.record import Record

GRAVITY = 9.80665
TUBE_WALL = 0.81e-3
"""Wall of 3/8 and 1/2 in copper tube for refrigerant, m: 0.032 in, ASTM B280, from memory."""
_METHOD = "refrigerant lines"


class Liquid(Record):
    """Saturated liquid: density kg/m3, slope of its pressure Pa/K, enthalpy J/kg."""

    density: float
    slope: float
    enthalpy: float


def liquid(refrigerant: str, temperature: float) -> Liquid:
    """Saturated liquid at `temperature` K, 293.15 to 328.15 K.

    OutOfRange for another temperature or a refrigerant that the table lacks.
    """
    require_finite(temperature=temperature)
    rows = SATURATED_LIQUID.get(refrigerant)
    if rows is None:
        raise OutOfRange(_METHOD, f"no properties are tabled for {refrigerant}")
    place = (temperature - COLDEST) / STEP
    if not 0.0 <= place <= len(rows) - 1:
        raise OutOfRange(_METHOD, f"liquid at {temperature:g} K is outside 293.15 to 328.15 K")
    low = min(int(place), len(rows) - 2)
    share = place - low
    values = (a + share * (b - a) for a, b in zip(rows[low], rows[low + 1], strict=True))
    return Liquid(*values)


def lift_pressure(refrigerant: str, rise: float, temperature: float) -> float:
    """Pressure in Pa that a column of liquid loses over a rise in m; negative where it falls.

    Errors as `liquid`. Source: hydrostatics, ASHRAE Handbook - Refrigeration, chapter "Halocarbon Refrigeration
    Systems".
    """
    require_finite(rise=rise)
    return liquid(refrigerant, temperature).density * GRAVITY * rise


def subcooling_for_lift(refrigerant: str, rise: float, temperature: float) -> float:
    """Subcooling in K without which the liquid boils before the top of a rise in m; 0 where it falls.

    Friction is not counted. Errors and source as `lift_pressure`.
    """
    return max(0.0, lift_pressure(refrigerant, rise, temperature) / liquid(refrigerant, temperature).slope)


def mass_flow(refrigerant: str, capacity: float, temperature: float) -> float:
    """Refrigerant in kg/s for a cooling `capacity` in W, liquid at `temperature` K, saturated vapor at 280.35 K.

    Errors as `liquid`. Source: energy balance of the evaporator.
    """
    require_positive(capacity=capacity)
    enthalpy = liquid(refrigerant, temperature).enthalpy
    return capacity / (VAPOR_ENTHALPY[refrigerant] - enthalpy)


def liquid_velocity(refrigerant: str, capacity: float, temperature: float, inside: float) -> float:
    """Velocity in m/s of the liquid in a line of `inside` diameter in m. Errors and source as `mass_flow`."""
    require_positive(inside_diameter=inside)
    flow = mass_flow(refrigerant, capacity, temperature)
    return flow / liquid(refrigerant, temperature).density / (pi * inside**2 / 4.0)


def unrestricted_charge(flammable_at: float) -> float:
    """Charge in kg below which no room is too small: 6 m3 times the lower flammable limit in kg/m3.

    Source: UL/IEC 60335-2-40, annex GG (m1 of group A2L).
    """
    require_positive(lower_flammable_limit=flammable_at)
    return 6.0 * flammable_at


def least_room_area(charge: float, flammable_at: float, height: float) -> float:
    """Floor area in m2 of an unventilated room that a leak of `charge` kg needs, with the unit at `height` m.

    `flammable_at` lower flammable limit in kg/m3. Source: UL/IEC 60335-2-40, annex GG.
    """
    require_positive(charge=charge, lower_flammable_limit=flammable_at, height=height)
    return (charge / (2.5 * flammable_at**1.25 * height)) ** 2  # type: ignore[no-any-return]


def area_by_mixing(charge: float, flammable_at: float, height: float, share: float) -> float:
    """Floor area in m2 in which a leak spread evenly up to `height` m stays below a `share` of the limit.

    Units as `least_room_area`. Source: UL/IEC 60335-2-40, annex GG; its share of 0.75 from memory.
    """
    require_positive(charge=charge, lower_flammable_limit=flammable_at, height=height, share=share)
    return charge / (share * flammable_at * height)
