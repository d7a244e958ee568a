"""A fan that runs all day is louder than the ventilation standard allows.

People silence a fan that they hear at night, and then the house has no ventilation at all. The standard sets
1.0 sone for whole-dwelling fans and for every fan that runs all day. Recovery units, air handlers, and fans
that hang away from the grille by 4 ft of duct or more need not show their loudness.

Choose a quieter fan, a larger one at a lower speed, or hang it away from the room and state `duct_to_grille`.
"""

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.fans import Fan, Setting
from checker.quantities.ventilation import SLACK
from checker.quantities.whole_house import running
from checker.rule import Finding, Meets, Rule

AWAY = ("in-line", "remote")


def steady_settings(case: Case) -> list[Setting]:
    """Settings that run all day or by a timer."""
    return [part.setting for part in running(case, case.design) if part.setting is not None]


@quantity("sound")
def loudness(case: Case, setting: Setting) -> float:
    """Loudness at the setting. NotApplicable for recovery units and for fans away from their grille."""
    fan = setting.up
    if not isinstance(fan, Fan):
        return float(case.get(setting, "sound"))
    if fan.role == "recovery":
        raise NotApplicable("a recovery unit need not show its loudness")
    away = case.maybe(fan, "duct_to_grille")
    if away is not None and away >= float(case.limit("standard-remote-fan")) * (1 - SLACK):
        raise NotApplicable("the fan hangs away from its grille")
    if case.maybe(setting, "sound") is None and away is None and fan.kind in AWAY:
        raise Missing(path_of(fan, "duct_to_grille"))
    return float(case.get(setting, "sound"))


def check(setting: Setting, loud: float, limit: float) -> Meets | Finding:
    """Loudness against the greatest."""
    if loud <= limit * (1 + SLACK):
        return Meets()
    return Finding(
        f"{setting.up.name} at {setting.name} runs all day at {{loudness}}, above {{limit}}",
        at="sound",
        help="choose a fan of {limit} or less at this airflow, or hang it away from the room",
    )


RULE = Rule(
    code="VENT-21", name="all-day-fan-too-loud", severity="correction", since="0.1",
    over=steady_settings, needs=(loudness,), limits=("standard-sound",), cites=("standard-remote-fan",), check=check,
    nothing="no fan runs all day or by a timer", answers=("A25",),
)  # fmt: skip
