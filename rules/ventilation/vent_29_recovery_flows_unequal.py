"""The two flows of a recovery unit differ.

A core can hand over only what both streams carry: the recovery falls with the smaller flow over the larger,
and the difference comes in cold through the cracks, or pushes room air out through them. Frost forms where
the exhaust is the larger.

Set both flows equal at each speed. Where the unit is meant to offset another exhaust that runs all day, say
so in the house's strategy: the sums of the house then count, and another rule looks at them.
"""

from checker import each
from checker.case import Case, NotApplicable
from checker.design.fans import Fan, Setting
from checker.quantities.movers import exhaust_flow, is_continuous, supply_flow
from checker.quantities.ventilation import SLACK
from checker.rule import Finding, Meets, Num, Rule

BALANCED = ("balanced", "balanced with recovery")


def of_recovery(setting: Setting) -> bool:
    """Settings of recovery units, and of fans that do not say what they do."""
    return isinstance(setting.up, Fan) and setting.up.role in (None, "recovery")


def stands_alone(case: Case, setting: Setting) -> bool:
    """The sums of the house are judged in its stead."""
    if case.get(setting.up, "role") != "recovery":
        raise NotApplicable("it is no recovery unit")
    house = case.design.house
    return house is None or house.strategy not in BALANCED or not is_continuous(case, setting)


def check(setting: Setting, supply: float, exhaust: float, tolerance: float) -> Meets | Finding:
    """The difference against a share of the larger flow."""
    larger = max(supply, exhaust)
    if abs(supply - exhaust) <= tolerance * larger * (1 + SLACK):
        return Meets()
    return Finding(
        f"{setting.up.name} at {setting.name} brings in {{supply_flow}} and takes out {{exhaust_flow}}: it recovers "
        "only {kept} of what it could",
        help="set both flows to the same figure at this speed",
        numbers={"kept": Num(min(supply, exhaust) / larger, "share")},
    )


RULE = Rule(
    code="VENT-29", name="recovery-flows-unequal", severity="caution", since="0.1",
    over=each.where(each.fan_setting, of_recovery), when=stands_alone, needs=(supply_flow, exhaust_flow),
    limits=("recovery-balance",), check=check, nothing="the design has no recovery unit with settings",
)  # fmt: skip
