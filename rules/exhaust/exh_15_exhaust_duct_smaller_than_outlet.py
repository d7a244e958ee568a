"""An exhaust duct is smaller than the outlet of its fan or hood.

Necking a duct down right at the fan costs pressure where the air is fastest, makes noise, and takes away much of
the airflow that was paid for: a 6 in collar squeezed to 4 in has less than half the area.

The usual cause is a 4 in duct that is already in the wall. Carry the size of the collar through to the terminal.
"""

from math import pi

from checker.case import Case, path_of, quantity
from checker.design.fans import Fan
from checker.design.fields import Share
from checker.quantities.exhaust_duct import exhaust_line
from checker.quantities.exhaust_end import exhausts
from checker.quantities.local_exhaust import Exhauster
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import show_size


class Necks(Record):
    """The smallest duct as text and its share of the collar's area."""

    size: str
    share: Share
    is_round: bool


def field_of(device: Exhauster) -> str:
    """The field that holds the collar's diameter."""
    return "outlet_size" if isinstance(device, Fan) else "duct_connection"


def with_collar(case: Case) -> list[Exhauster]:
    """Devices whose collar is stated, or left to be decided."""
    return [
        each
        for each in exhausts(case)
        if getattr(each, field_of(each)) is not None or path_of(each, field_of(each)) in case.design.tbd
    ]


@quantity("diameter")
def collar(case: Case, device: Exhauster) -> float:
    """Diameter of the outlet collar."""
    return float(case.get(device, field_of(device)))


@quantity()
def necks(case: Case, device: Exhauster) -> Necks:
    """The smallest section of the duct beside the collar."""
    sizes = [case.get(section, "size") for section in exhaust_line(case, device).sections]
    smallest = min(sizes, key=lambda size: float(size.area))
    area = pi * collar(case, device) ** 2 / 4.0
    return Necks(show_size(smallest), smallest.area / area, smallest.shape == "round")


def check(device: Exhauster, collar: float, necks: Necks, not_round: float) -> Meets | Finding:
    """By area; a duct that is not round may have a little less, as makers' own transitions have."""
    least = 1.0 if necks.is_round else not_round
    numbers = {"name": Num(device.name), "size": Num(necks.size), "share": Num(min(necks.share, 1.0), "share")}
    if necks.share >= least - 1e-6:
        return Meets(numbers)
    return Finding(
        "the duct of {name} is {size}, {share} of the area of its {collar} outlet",
        help="carry {collar} duct from the outlet to the terminal", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-15", name="exhaust-duct-smaller-than-outlet", severity="caution", since="0.1",
    over=with_collar, needs=(collar, necks), limits=("flat-duct-at-collar",),
    cites=("duct-not-below-collar",), check=check,
    nothing="no outlet size of an exhaust fan or hood is stated", answers=("B32",),
)  # fmt: skip
