"""The thermostat of the primary heating or cooling keeps no schedule.

The energy chapter wants the thermostat of the dwelling's primary system to hold different temperatures at different
times of the day, from 2021 also on different days of the week. Where heat pumps run best at a steady temperature the
schedule need not be used; it must be there.

Choose a thermostat that keeps a schedule, and write on the drawing that it does.
"""

from checker.case import Case
from checker.design.controls import ControlPoint
from checker.quantities.thermostats import Schedule, is_due, primary_thermostats, schedule
from checker.rule import Finding, Meets, Num, Rule


def judged(case: Case) -> list[ControlPoint]:
    """Thermostats that may be that of the primary system."""
    return primary_thermostats(case)


def check(point: ControlPoint, kept: Schedule, asked: str) -> Meets | Finding:
    """By hours alone, by days of the week as well, or not at all."""
    numbers = {"name": Num(point.name)}
    if not kept.falls_short:
        return Meets(numbers)
    days = " and different days" if asked == "weekly" else ""
    has = "one schedule for all days" if kept.word == "daily" else "no schedule"
    return Finding(
        f"{{name}} keeps {has}; the thermostat of the primary system must hold other temperatures at different hours{days}",
        at="schedule",
        help=f"choose a thermostat with a {'weekly' if asked == 'weekly' else 'daily'} schedule",
        numbers=numbers,
    )


RULE = Rule(
    code="CTRL-01", name="thermostat-not-programmable", severity="correction", since="0.1",
    over=judged, when=is_due, needs=(schedule,), limits=("thermostat-schedule",), check=check,
    nothing="no thermostat of the primary heating or cooling is shown", answers=("Q02",),
)  # fmt: skip
