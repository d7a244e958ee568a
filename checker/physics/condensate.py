"""Condensate: how much, how deep a trap, how wide a drain. Units: W, Pa, m, m3/s, kg/kg, m3/kg."""

from collections.abc import Sequence

from checker.physics.arguments import require_not_negative, require_positive
from checker.physics.validity import OutOfRange

WATER = 1000.0  # kg/m3
GRAVITY = 9.80665
HEAT_OF_CONDENSATION = 2.45e6  # J/kg near a coil's temperature
INCH = 0.0254
WATER_PER_INPUT = 1.1 * 0.45359237 / 105_505_585.0  # kg/J: 1.1 lb per therm, from memory
_METHOD = "condensate drain size"


def flow_of_coil(latent: float) -> float:
    """Water in m3/s that a coil of `latent` capacity in W takes out; none from a coil that stays dry.

    Source: heat of condensation, ASHRAE Handbook - Fundamentals 2021, chapter 1 "Psychrometrics".
    """
    return max(0.0, latent) / HEAT_OF_CONDENSATION / WATER


def flow_of_condensing_appliance(heat_input: float) -> float:
    """Most water in m3/s from a condensing gas appliance of `heat_input` W: 1.1 lb per therm (from memory)."""
    require_not_negative(heat_input=heat_input)
    return heat_input * WATER_PER_INPUT / WATER


def water_column(pressure: float) -> float:
    """Height in m of a column of water that balances `pressure` Pa."""
    require_not_negative(pressure=pressure)
    return pressure / (WATER * GRAVITY)


def trap_seal(suction: float) -> float:
    """Water seal in m of a trap at a pan under `suction` Pa: half the column and an inch (from memory)."""
    return 0.5 * water_column(suction) + INCH


def trap_drop(suction: float) -> float:
    """Height in m from the pan's outlet down to the trap's outlet: the column and an inch (from memory)."""
    return water_column(suction) + INCH


def drain_size(capacity: float, rows: Sequence[tuple[float, float]]) -> float:
    """Diameter in m for cooling of `capacity` W from rows of (greatest capacity W, diameter m), rising.

    OutOfRange beyond the last row. Source of the rows: IMC Table 307.2.2.
    """
    require_positive(capacity=capacity)
    for greatest, diameter in rows:
        if capacity <= greatest * (1.0 + 1e-9):
            return diameter
    raise OutOfRange(_METHOD, f"{capacity:g} W is beyond the last row of the table")
