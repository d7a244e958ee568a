"""An exhaust duct is longer or smaller than the maker of its fan or hood allows.

Where the maker states how long and how small the duct may be, that is what the airflow was tested with, and the
installation has to keep to it.

The usual cause is a fan that was chosen before its way out was known. Shorten or widen the duct, or choose a fan
whose instructions allow this one.
"""

from math import pi

from checker.case import CannotJudge, Case, path_of, quantity
from checker.design.fields import Diameter, Length
from checker.quantities.exhaust_duct import elbow_count, exhaust_line, straight_length
from checker.quantities.exhaust_end import exhausts
from checker.quantities.local_exhaust import Exhauster
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class MakersLimits(Record):
    """Length and smallest diameter of the duct beside the maker's limits, m; None where it states none."""

    length: Length | None
    longest: Length | None
    diameter: Diameter | None
    smallest: Diameter | None


def limited(case: Case) -> list[Exhauster]:
    """Devices whose maker limits the duct."""
    return [
        each
        for each in exhausts(case)
        if each.by_maker is not None and (each.by_maker.greatest_length or each.by_maker.least_duct)
    ]


@quantity()
def makers_limits(case: Case, device: Exhauster) -> MakersLimits:
    """The duct beside the limits; elbows count where they can decide, at the code table's 15 ft."""
    maker = device.by_maker
    assert maker is not None
    longest, smallest = case.maybe(maker, "greatest_length"), case.maybe(maker, "least_duct")
    length = diameter = None
    if smallest is not None:
        sizes = [case.get(section, "size") for section in exhaust_line(case, device).sections]
        diameter = min(2.0 * (size.area / pi) ** 0.5 for size in sizes)
    if longest is not None:
        length = straight_length(case, device)
        declared = getattr(exhaust_line(case, device).sections[0], "declared_equivalent_length", None)
        if declared is not None:
            length += declared
        elif length <= longest < length + elbow_count(case, device) * case.limit("exhaust-duct-elbow"):
            raise CannotJudge(
                "whether the duct keeps to the maker's length turns on what the maker counts for an elbow; "
                f"see {path_of(maker, 'greatest_length')}"
            )
    return MakersLimits(length, longest, diameter, smallest)


def check(device: Exhauster, limits: MakersLimits) -> Meets | Finding:
    """Length first, then size."""
    numbers = {"name": Num(device.name)}
    for key, value, dimension in (
        ("length", limits.length, "length"), ("longest", limits.longest, "length"),
        ("size", limits.diameter, "diameter"), ("smallest", limits.smallest, "diameter"),
    ):  # fmt: skip
        if value is not None:
            numbers[key] = Num(value, dimension)
    if limits.length is not None and limits.longest is not None and limits.length > limits.longest * (1 + 1e-9):
        return Finding(
            "the duct of {name} is {length} long, more than the {longest} of its maker",
            help="shorten it to {longest}, elbows counted as the maker counts them", numbers=numbers,
        )  # fmt: skip
    if limits.diameter is not None and limits.smallest is not None and limits.diameter < limits.smallest * (1 - 1e-9):
        return Finding(
            "the duct of {name} is {size}, smaller than the {smallest} of its maker",
            help="use {smallest} duct or larger, all the way to the terminal", numbers=numbers,
        )  # fmt: skip
    return Meets(numbers)


RULE = Rule(
    code="EXH-13", name="exhaust-duct-outside-makers-limits", severity="correction", since="0.1",
    over=limited, needs=(makers_limits,), cites=("exhaust-duct-by-maker",), check=check,
    nothing="no maker's limit for an exhaust duct is stated", answers=("B11",),
)  # fmt: skip
