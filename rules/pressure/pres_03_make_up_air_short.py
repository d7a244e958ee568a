"""Make-up air is less than the exhaust that it is for.

Required make-up air is about equal to the exhaust at its highest speed. What is missing comes through cracks, and where
something burns with room air, down its vent.

The usual cause is a make-up fan or opening chosen for the hood's middle speed, or for a smaller hood. Raise the make-up
air, or choose a smaller hood. A tenth less is the usual reading of about equal.
"""

from checker.case import Case
from checker.quantities.make_up_air import (
    SLACK,
    Exhauster,
    greatest_exhaust,
    make_up_flow,
    way_of,
    with_make_up_air,
)
from checker.quantities.make_up_record import record_of
from checker.rule import Finding, Meets, Num, Rule


def has_a_flow(case: Case, device: Exhauster) -> bool:
    """It comes by an opening or duct of known size, which is judged by what it passes."""
    record = record_of(case, device)
    return way_of(case, device) != "opening" or (record is not None and case.maybe(record, "airflow") is not None)


def check(device: Exhauster, exhaust: float, make_up: float, share: float) -> Meets | Finding:
    """Compare make-up air with the share of the exhaust that counts as about equal."""
    numbers = {"part": Num(make_up / exhaust, "share"), "short": Num(exhaust - make_up, "airflow")}
    if make_up >= share * exhaust * (1 - SLACK):
        return Meets(numbers)
    return Finding(
        f"{device.name} takes out {{greatest_exhaust}} and its make-up air brings in {{make_up_flow}}: {{part}}, less "
        "than {limit}",
        at="make_up_air.airflow" if device.make_up_air is not None else "",
        help="raise the make-up air by {short}, or choose a smaller exhaust",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-03", name="make-up-air-short", severity="correction", since="0.1",
    over=with_make_up_air, when=has_a_flow, needs=(greatest_exhaust, make_up_flow), limits=("make-up-air-share",), check=check,
    nothing="no exhaust with required make-up air is shown", answers=("C03",),
)  # fmt: skip
