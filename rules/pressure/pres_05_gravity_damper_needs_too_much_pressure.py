"""A gravity damper of passive make-up air opens only at a higher pressure than allowed.

A gravity damper is opened by the very suction that make-up air is meant to prevent. The code therefore allows it only
where it passes the design flow at 0.01 in w.c. (3 Pa) or less; ordinary backdraft dampers need several times that.

Ask the maker at which pressure the damper passes the design flow and write it beside the damper, or show a powered
damper that opens with the exhaust.
"""

from checker.case import Case
from checker.quantities.make_up_air import SLACK, Exhauster, damper_of, with_record
from checker.quantities.make_up_entry import damper_rating
from checker.rule import Finding, Meets, Rule


def has_gravity_damper(case: Case, device: Exhauster) -> bool:
    """Its make-up air has no gravity damper."""
    return damper_of(case, device) == "gravity"


def check(device: Exhauster, rating: float, limit: float) -> Meets | Finding:
    """The damper is rated at the allowed pressure or below."""
    if rating <= limit * (1 + SLACK):
        return Meets()
    return Finding(
        f"the gravity damper in the make-up air of {device.name} passes its flow at {{damper_rating}}, more than {{limit}}",
        at="make_up_air.damper_rated_at",
        help="show a damper rated for the design flow at {limit} or less, or a powered damper that opens with the exhaust",
    )


RULE = Rule(
    code="PRES-05", name="gravity-damper-needs-too-much-pressure", severity="correction", since="0.1",
    over=with_record, when=has_gravity_damper, needs=(damper_rating,), limits=("make-up-air-passive-damper",),
    check=check, nothing="no required passive make-up air is shown", answers=("C05",),
)  # fmt: skip
