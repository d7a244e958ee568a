"""What it costs to turn the air right round (180 degrees) at the outlet of a fan.

Units: m3/s, m, Pa, kg/m3. The coefficients hold for air that arrives evenly; straight out of a fan it does
not, so the true loss is higher: every figure here is a lower bound.
"""

from __future__ import annotations

from math import pi

from checker.physics.air import STANDARD_DENSITY
from checker.physics.arguments import require_positive
from checker.record import Record


class Turn(Record):
    """A way to turn the air round: its loss coefficient on the duct's velocity pressure, and the source."""

    loss_coefficient: float
    source: str


TURNS: dict[str, Turn] = {
    "smooth u-bend": Turn(
        1.40 * 0.22,
        "ASHRAE duct fittings, smooth elbow r/D 1.0 times the 180 degree angle factor (from memory)",
    ),
    "two smooth elbows": Turn(2.0 * 0.22, "ASHRAE duct fittings, smooth elbow r/D 1.0, twice (from memory)"),
    "two segmented elbows": Turn(
        2.0 * 0.33, "ASHRAE duct fittings, five-piece elbow r/D 1.0, twice (from memory)"
    ),
    "two mitered elbows": Turn(2.0 * 1.2, "ASHRAE duct fittings, round mitered elbow, twice (from memory)"),
    "flexible duct bent round": Turn(
        2.0 * 1.0, "flexible duct bend of 90 degrees, 0.8 to 1.0, twice (common practice)"
    ),
}


def turn_loss(
    airflow: float, diameter: float, loss_coefficient: float, density: float = STANDARD_DENSITY
) -> float:
    """Pressure in Pa lost in a turn of this loss coefficient at `airflow` m3/s in a duct of `diameter` m.

    ValueError for impossible input. Source: C x velocity pressure, ASHRAE Handbook - Fundamentals 2021,
    chapter 21; coefficients in `TURNS`.
    """
    require_positive(diameter=diameter, airflow=airflow, loss_coefficient=loss_coefficient, density=density)
    velocity = 4.0 * airflow / (pi * diameter * diameter)
    return loss_coefficient * 0.5 * density * velocity * velocity


def share_of_static(loss: float, fan_static: float) -> float:
    """Share, -, of a fan's available static pressure in Pa that a loss in Pa uses; above 1 it cannot be met.

    ValueError for impossible input. Source: arithmetic.
    """
    require_positive(loss=loss, fan_static=fan_static)
    return loss / fan_static


def diameter_for_share(
    airflow: float,
    loss_coefficient: float,
    fan_static: float,
    share: float,
    density: float = STANDARD_DENSITY,
) -> float:
    """Duct diameter in m at which a turn uses just this share of a fan's static pressure in Pa.

    The loss falls with the fourth power of the diameter, which is why a duct a size or two larger takes a
    turn easily at a small airflow. ValueError for impossible input. Source: `turn_loss` solved for diameter.
    """
    require_positive(fan_static=fan_static, share=share)
    loss_at_one_metre = turn_loss(airflow, 1.0, loss_coefficient, density)
    return float((loss_at_one_metre / (fan_static * share)) ** 0.25)
