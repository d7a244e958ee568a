"""A turn directly at a fan's outlet: how the air is led round, and the least loss coefficient of that."""

from checker.design.airway import Airway
from checker.design.fans import Fan
from checker.physics.turn_at_fan import TURNS

KINDS = {"smooth": "two smooth elbows", "mitered": "two mitered elbows"}


def how_turned(duct: Airway | None) -> str:
    """The way the air is turned round, by what the duct is made of."""
    if duct is not None and duct.material in ("flexible", "semi-rigid aluminum"):
        return "flexible duct bent round"
    return KINDS.get((duct.elbow_radius if duct is not None else None) or "", "two segmented elbows")


def turn_coefficient(fan: Fan) -> float:
    """Loss coefficient of the turn; half a turn of 180 degrees is one of 90."""
    return TURNS[how_turned(fan.duct)].loss_coefficient * (1.0 if fan.turn_at_outlet == "180" else 0.5)
