"""The outdoor-air duct on an air handler has no motorized damper.

Whenever the blower heats or cools, an open duct on its return side draws in outdoor air, day and night, in
the coldest and the dampest hour: often several times the rate that the house needs. When the blower rests,
cold air falls in by itself.

Show a motorized damper that a timer opens for ventilation and shuts once the hour has had its share.
"""

from checker.case import Case, given
from checker.design.equipment import Equipment, OutdoorAirDuct
from checker.quantities.ventilating_handlers import with_outdoor_air
from checker.rule import Finding, Meets, Rule


def outdoor_air_ducts(case: Case) -> list[OutdoorAirDuct]:
    """Outdoor-air ducts of air handlers."""
    return [unit.outdoor_air for unit in with_outdoor_air(case) if unit.outdoor_air is not None]


def check(duct: OutdoorAirDuct, damper: str) -> Meets | Finding:
    """The damper must be motorized."""
    if damper == "motorized":
        return Meets()
    unit: Equipment = duct.up
    kind = "no damper" if damper == "none" else f"a {damper} damper"
    return Finding(
        f"the outdoor-air duct of {unit.name} has {kind}: it draws air in whenever the blower runs",
        at="damper",
        help="show a motorized damper that a ventilation timer opens and shuts",
    )


RULE = Rule(
    code="VENT-24", name="outdoor-air-duct-without-motor-damper", severity="caution", since="0.1",
    over=outdoor_air_ducts, needs=(given("damper"),), cites=("outdoor-air-duct",), check=check,
    nothing="no air handler has an outdoor-air duct", answers=("A33",),
)  # fmt: skip
