"""A condensate drain is joined directly to a drain, waste or vent pipe.

In the dry season the unit's trap dries out, and sewer gas comes up the pipe into the air that the unit blows through the house.
A stoppage in the sewer fills the pan. The mechanical code forbids the direct connection.

End the drain above a trapped floor drain, standpipe or sink with an air gap, or outdoors.
"""

from checker.case import Case, given, quantity
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import SANITARY, drains
from checker.rule import Finding, Meets, Rule

DIRECT = {"sewer": "a sewer pipe", "plumbing vent": "a plumbing vent"}


@quantity()
def has_air_gap(case: Case, drain: CondensateDrain) -> bool:
    """Whether its end stands clear of the receptor; asked only where it ends at the sanitary drains."""
    end = case.get(drain, "to")
    if end in DIRECT:
        return bool(case.maybe(drain, "air_gap")) and end == "sewer"
    return bool(case.get(drain, "air_gap")) if end in SANITARY else True


def check(drain: CondensateDrain, end: str, clear: bool) -> Meets | Finding:
    """No direct connection."""
    if clear:
        return Meets()
    return Finding(
        f"the condensate of {drain.name} runs directly into {DIRECT[end]}"
        if end in DIRECT
        else f"the condensate of {drain.name} ends at the {end} without an air gap",
        at="to" if end in DIRECT else "air_gap",
        help="end it above a trapped receptor with an air gap, or outdoors",
    )


RULE = Rule(
    code="COND-18", name="condensate-joined-to-sewer", severity="correction", since="0.1",
    over=drains, needs=(given("to", "end"), has_air_gap), cites=("condensate-air-gap",), check=check,
    nothing="no condensate drain is drawn", answers=("J19",),
)  # fmt: skip
