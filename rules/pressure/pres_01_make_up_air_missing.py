"""An exhaust that moves a lot of air has no make-up air.

A strong hood takes out more air than a house lets in through its cracks. The rest comes down chimneys and flues:
a water heater or furnace that vents by buoyancy then spills its gases, carbon monoxide among them, into the house.

The 2015 edition asks for make-up air for every kitchen hood above the threshold. Later editions ask for it for each
exhaust system above it, but only where something that is neither direct-vent nor mechanically drafted burns inside the
air barrier. A fan that only cools the house with windows open does not count.

Show the make-up air: how much, by what opening or fan, its damper and the room it enters. A smaller hood, or
sealed appliances, make it needless. A licensed contractor judges the draft of what burns in the house.
"""

from checker.case import Case
from checker.quantities.make_up_air import (
    SLACK,
    Exhauster,
    exhausters,
    greatest_exhaust,
    needs_make_up_air,
    reason_for_make_up_air,
    way_of,
)
from checker.quantities.make_up_fans import idle_supply_fan
from checker.rule import Finding, Meets, Rule


def is_asked_for(case: Case, device: Exhauster) -> bool:
    """The code in force asks for make-up air only where something inside burns with room air and drafts by itself."""
    large = greatest_exhaust(case, device) > case.limit("make-up-air-exhaust") * (1 + SLACK)
    return not large or needs_make_up_air(case, device)


def check(device: Exhauster, exhaust: float, way: str, reason: str, idle: str, threshold: float) -> Meets | Finding:
    """Make-up air is shown where the exhaust is above the threshold."""
    if exhaust <= threshold * (1 + SLACK) or way != "none":
        return Meets()
    if idle:
        return Finding(
            f"{device.name} can take out {{greatest_exhaust}}, above {{limit}}, {reason}, and no make-up air that starts with "
            f"it is shown: nothing ties {idle} to it",
            at="make_up_air",
            help=f"show an interlock that starts {idle} with {device.name} (`runs_with` under its setting), or choose an exhaust "
            "of {limit} or less",
        )
    return Finding(
        f"{device.name} can take out {{greatest_exhaust}}, above {{limit}}, {reason}, and no make-up air is shown",
        at="make_up_air",
        help="show make-up air of about {greatest_exhaust}: its opening or fan, automatic damper and the room it enters, "
        "or choose an exhaust of {limit} or less",
    )


RULE = Rule(
    code="PRES-01", name="make-up-air-missing", severity="correction", since="0.1",
    over=exhausters, when=is_asked_for, needs=(greatest_exhaust, way_of, reason_for_make_up_air, idle_supply_fan),
    limits=("make-up-air-exhaust",), cites=("make-up-air-scope",), check=check,
    nothing="no hood or exhaust fan takes air outdoors", answers=("C01", "C02", "C08"),
)  # fmt: skip
