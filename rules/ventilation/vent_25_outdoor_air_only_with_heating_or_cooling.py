"""Outdoor air comes in only while the air handler heats or cools.

In spring and autumn the blower rests for days, and the house gets no fresh air; in the coldest week it runs
all the time and draws in far too much. Neither has anything to do with how many people are at home.

Give the blower a timer that sees to its share of each hour and shuts the outdoor-air damper once the hour has
had it (a fan cycler), or ventilate by a fan of its own.
"""

from checker.case import Case, given
from checker.design.equipment import OutdoorAirDuct
from checker.quantities.ventilating_handlers import with_outdoor_air
from checker.rule import Finding, Meets, Rule


def outdoor_air_ducts(case: Case) -> list[OutdoorAirDuct]:
    """Outdoor-air ducts of air handlers."""
    return [unit.outdoor_air for unit in with_outdoor_air(case) if unit.outdoor_air is not None]


def check(duct: OutdoorAirDuct, control: str) -> Meets | Finding:
    """The blower must run for ventilation by itself."""
    if control != "with heating and cooling only":
        return Meets()
    return Finding(
        f"outdoor air comes in by {duct.up.name} only while it heats or cools, so in mild weather not at all",
        at="control",
        help="add a timer that runs the blower for its share of each hour, or a ventilation fan of its own",
    )


RULE = Rule(
    code="VENT-25", name="outdoor-air-only-with-heating-or-cooling", severity="caution", since="0.1",
    over=outdoor_air_ducts, needs=(given("control"),), cites=("outdoor-air-duct",), check=check,
    nothing="no air handler has an outdoor-air duct", answers=("A33",),
)  # fmt: skip
