"""The overflow drain is thinner than 3/4 in or falls less than 1/8 in per foot.

It stays dry for years and has to work at once. A thin or flat pipe, with an insect nest in it, does not.

Draw it like the main drain: 3/4 in nominal, 1/8 in per foot or more.
"""

from checker.case import Case, quantity
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import catches_by, drains
from checker.quantities.parts import first_wrong, known
from checker.rule import Finding, Meets, Num, Rule

DRAIN = "overflow_drain"
KEYS = {"size": "secondary-drain-size", "slope": "secondary-drain-slope"}


@quantity()
def wrong_part(case: Case, drain: CondensateDrain) -> str:
    """Which of size and fall is too little, "" where neither is; a wrong one does not wait for the other."""

    def is_wrong(field: str) -> bool:
        least = float(case.codebook.compared(KEYS[field]))
        return known(case, drain.overflow_drain, f"{drain.path}.{DRAIN}", field) < least

    return first_wrong([("size", lambda: is_wrong("size")), ("slope", lambda: is_wrong("slope"))])


def check(drain: CondensateDrain, wrong: str, _size: float, _slope: float) -> Meets | Finding:
    """Size and fall."""
    if not wrong:
        return Meets()
    is_size = wrong == "size"
    return Finding(
        f"the overflow drain of {drain.name} "
        + ("is {found}, less than {secondary_drain_size}" if is_size else "falls {found}, less than {secondary_drain_slope}"),
        at=f"{DRAIN}.{wrong}",
        help="lead it in a pipe of {secondary_drain_size} or more" if is_size else "give it a fall of 1/8 in/ft or more",
        numbers={"found": Num(getattr(drain.overflow_drain, wrong), "length" if is_size else "slope")},
    )


RULE = Rule(
    code="COND-11", name="overflow-drain-too-small-or-flat", severity="correction", since="0.1",
    over=drains, when=catches_by("pan with drain", "overflow drain"), needs=(wrong_part,),
    limits=("secondary-drain-size", "secondary-drain-slope"), check=check,
    nothing="no condensate drain is drawn", answers=("J10",),
)  # fmt: skip
