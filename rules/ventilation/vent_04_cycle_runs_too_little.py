"""A fan that ventilates the house in turns runs too little, or rests too long between them.

The code lets whole-house ventilation cycle only if it runs at least a quarter of every four hours. Its table
of factors ends there, and it may not be carried further: no fan, however strong, makes up for longer rests,
since moisture and odours build up meanwhile.

Lengthen the time that the fan runs, shorten the cycle, or let it run slowly all day. `cycle` is the length of
one on-off cycle in hours; `20 min/h` says as much.
"""

from checker.case import Case, quantity
from checker.design.fans import Setting
from checker.quantities.ventilation import SLACK
from checker.quantities.whole_house import cycle_hours, run_share, whole_house
from checker.rule import Finding, Meets, Rule


def cycled(case: Case) -> list[Setting]:
    """Settings that ventilate the house part of the time."""
    return [
        part.setting
        for part in whole_house(case, case.design)
        if part.setting is not None and run_share(case, part) < 1.0
    ]


@quantity("share", "share of its time; of the worst four hours where the cycle is longer than they are")
def least_share(case: Case, setting: Setting) -> float:
    """Share that the fan is sure to run in a segment of four hours."""
    share = float(case.get(setting, "on_time"))
    segment = float(case.limit("run-segment")) / 3600.0
    if share < float(case.limit("least-run-share")) * (1 - SLACK):
        return share
    cycle = cycle_hours(case, setting)
    if cycle <= segment * (1 + SLACK):
        return share
    return max(0.0, segment - cycle * (1.0 - share)) / segment


def check(setting: Setting, share: float, limit: float) -> Meets | Finding:
    """The share against the least one."""
    if share >= limit * (1 - SLACK):
        return Meets()
    return Finding(
        f"{setting.up.name} at {setting.name} is sure to run {{least_share}} of four hours, below {{limit}}",
        at="on_time",
        help="let it run at least {limit} of every four hours, or all day at a lower speed",
    )


RULE = Rule(
    code="VENT-04", name="cycle-runs-too-little", severity="correction", since="0.1",
    over=cycled, needs=(least_share,), limits=("least-run-share",), cites=("run-segment",), check=check,
    nothing="no whole-house fan cycles", answers=("A04",),
)  # fmt: skip
