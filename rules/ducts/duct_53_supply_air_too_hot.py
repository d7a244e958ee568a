"""Equipment sends air into its ducts that is hotter than ducts may carry.

Ducts, their insulation and the framing they touch are tested for air of ordinary heating. The code has equipment
limit its discharge to 250 degF; usual furnaces stay below 150, heat pumps below 120.

The figure is nearly always a slip: look it up in the maker's data, or choose equipment with a limit control.
"""

from checker.case import Case, given, path_of
from checker.design.ducts import DuctSystem
from checker.rule import Finding, Meets, Rule


def told_systems(case: Case) -> list[DuctSystem]:
    """Systems whose hottest air is stated or to be decided."""
    return [
        system
        for system in case.design.ducts.values()
        if system.greatest_supply_temperature is not None
        or path_of(system, "greatest_supply_temperature") in case.design.tbd
    ]


def check(system: DuctSystem, hottest: float, most: float) -> Meets | Finding:
    """Compare the hottest air with the limit."""
    if hottest <= most:
        return Meets()
    return Finding(
        f"{system.name} carries air of up to {{greatest_supply_temperature}}, hotter than {{limit}}",
        at="greatest_supply_temperature",
        help="choose equipment that limits its discharge air to {limit}",
    )


RULE = Rule(
    code="DUCT-53", name="supply-air-too-hot", severity="correction", since="0.1",
    over=told_systems, needs=(given("greatest_supply_temperature"),), limits=("discharge-temperature",), check=check,
    nothing="no duct system states its hottest air", answers=("F02",),
)  # fmt: skip
