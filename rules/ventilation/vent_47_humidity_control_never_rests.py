"""A fan that runs by humidity cannot be set above the humidity of the house, so that it never stops.

A humidity control is to run a bath fan after a shower and then rest. When its highest setting lies below the
humidity that the house has all season, the fan runs on without end, draws in humid outdoor air in summer, and
cannot dry the rooms that far.

The setting is compared with the indoor humidity that the file states for summer, else 50 %, and for winter where
stated. Choose a control with a higher setting, or one that looks for a rise in humidity.
"""

from checker.case import Case, given, quantity
from checker.design.fans import Fan
from checker.design.hoods import Hood
from checker.quantities.moist_air import indoor_summer
from checker.rule import Finding, Meets, Num, Rule


def run_by_humidity(case: Case) -> list[Fan | Hood]:
    """Fans and hoods that a humidity control switches."""
    devices: list[Fan | Hood] = [*case.design.fans.values(), *case.design.hoods.values()]
    return [each for each in devices if each.control is not None and each.control.by == "humidity"]


def has_setting(case: Case, node: Fan | Hood) -> bool:
    """The highest setting of the control is not stated."""
    return case.maybe(node.control, "humidity_high") is not None


@quantity("relative_humidity", "the higher of summer and, where stated, winter")
def house_humidity(case: Case, node: Fan | Hood) -> float:
    """Indoor humidity that the design assumes."""
    indoor = None if case.design.house is None else case.design.house.indoor
    winter = None if indoor is None else case.maybe(indoor, "winter_humidity")
    return max(indoor_summer(case, node).relative_humidity, float(winter or 0.0))


def check(node: Fan | Hood, highest: float, humidity: float) -> Meets | Finding:
    """The highest setting must not lie below the humidity of the house."""
    if highest >= humidity * (1 - 1e-9):
        return Meets()
    return Finding(
        "{device} runs by a humidity control that can be set to {humidity_high} at most; the house is at {house_humidity}",
        at="control.humidity_high",
        help="choose a control that can be set above {house_humidity}",
        numbers={"device": Num(node.name)},
    )


RULE = Rule(
    code="VENT-47", name="humidity-control-never-rests", severity="note", since="0.1",
    over=run_by_humidity, when=has_setting, needs=(given("control.humidity_high"), house_humidity),
    cites=("humidity-control-setting",), check=check, nothing="no fan is switched by humidity",
)  # fmt: skip
