"""An outdoor heater warms the open air, or nothing turns it off when people leave.

Warm air outdoors is gone with the next breeze; radiation warms the people it reaches. From 2024 the energy chapter
allows only radiant heat outside the house, and wants an occupancy sensor or a timer switch to turn it off.

Choose a radiant heater with a timer switch or an occupancy sensor.
"""

from checker.case import Case
from checker.design.outdoor_heat import OutdoorHeat
from checker.quantities.outdoor_heat import Turned, of_kind, outdoor_heater
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Num, Rule


def heaters(case: Case) -> list[OutdoorHeat]:
    """Heaters for people outdoors."""
    return of_kind(case, "outdoor heating")


def check(node: OutdoorHeat, turned: Turned) -> Meets | Finding:
    """How it heats, then what turns it off."""
    numbers = {"name": Num(node.name)}
    if not turned.radiant:
        return Finding(
            "{name} heats outdoors otherwise than by radiation",
            at="radiant", help="choose a radiant heater, or leave it out", numbers=numbers,
        )  # fmt: skip
    if turned.off_alone == "none":
        return Finding(
            "nothing turns {name} off when nobody is there",
            at="off_alone", help="show an occupancy sensor or a timer switch for it", numbers=numbers,
        )  # fmt: skip
    return Meets(numbers)


RULE = Rule(
    code="CTRL-06", name="outdoor-heater-left-on", severity="correction", since="0.1",
    over=heaters, when=due("radiant", "off_alone"), needs=(outdoor_heater,), cites=("outdoor-heater-control",),
    check=check, nothing="nothing heats people outdoors", answers=("Q05",),
)  # fmt: skip
