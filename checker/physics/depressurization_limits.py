"""How far a house may be drawn below outdoors before its combustion appliances spill, by appliance class."""

from __future__ import annotations

from typing import Annotated

from checker.record import Record


class DepressurizationLimit(Record):
    """How far below outdoors, in Pa, a combustion appliance of a class still drafts; and on what basis."""

    appliance_class: str
    limit: Annotated[float, "house_pressure"]
    covers: str
    basis: str


_BASIS = "BPI and RESNET combustion safety test procedures, worst-case limits (quoted second-hand)"

DEPRESSURIZATION_LIMITS: tuple[DepressurizationLimit, ...] = (
    DepressurizationLimit(
        "orphaned water heater",
        2.0,
        "natural-draft water heater left alone on a vent sized for more, or on an outside chimney",
        _BASIS,
    ),
    DepressurizationLimit(
        "natural draft, common vent",
        3.0,
        "natural-draft boiler or furnace on one vent with a water heater",
        _BASIS,
    ),
    DepressurizationLimit(
        "natural draft, own vent",
        5.0,
        "natural-draft boiler, furnace or water heater on its own vent",
        _BASIS,
    ),
    DepressurizationLimit(
        "vent damper, common vent",
        5.0,
        "natural-draft boiler or furnace with a vent damper on one vent with a water heater",
        _BASIS,
    ),
    DepressurizationLimit(
        "mechanically assisted, common vent",
        5.0,
        "mechanically assisted boiler or furnace on one vent with a water heater",
        _BASIS,
    ),
    DepressurizationLimit(
        "mechanically assisted, own vent",
        15.0,
        "mechanically assisted boiler or furnace, or fan-assisted water heater, alone",
        _BASIS,
    ),
    DepressurizationLimit(
        "sealed",
        50.0,
        "direct vent or sealed combustion, chimney-top inducer, flame-retention oil burner",
        _BASIS,
    ),
)


def limit_of(appliance_class: str) -> DepressurizationLimit:
    """Limit of an appliance class; ValueError for a class that is not listed."""
    for limit in DEPRESSURIZATION_LIMITS:
        if limit.appliance_class == appliance_class:
            return limit
    raise ValueError(f"no depressurization limit is held for {appliance_class!r}")
