"""Cooking exhaust is listed to another standard than the one for its kind.

The listing tells that motor, wiring and filter stand heat and grease over a cooktop: UL 507 for hoods and
downdraft fans, UL 858 or ANSI Z21.1 for a range with its own downdraft, UL 923 for a microwave over the range.

The usual cause is an in-line fan for clean air in a kitchen duct, or the listing of the range copied to the hood.
Show the listing from the product's data sheet, or choose a product that has it.
"""

import re

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.hoods import Hood
from checker.rule import Finding, Meets, Num, Rule


def every_hood(case: Case) -> list[Hood]:
    """Every hood, recirculating ones too."""
    return list(case.design.hoods.values())


def is_told_or_due(case: Case, hood: Hood) -> bool:
    """A sketch need not say its listing yet."""
    project = case.design.project
    drawn = project is not None and project.stage in ("permit", "as-built")
    return drawn or case.speaks_of(hood, "listing")


@quantity()
def fitting_listings(case: Case, hood: Hood) -> tuple[str, ...]:
    """Standards that fit the way the hood hangs. Raises NotApplicable where the edition names none."""
    table = case.limit("hood-listing")
    mount = case.maybe(hood, "mount")
    if mount in table:
        return tuple(table[mount])
    if "other" not in table:
        raise NotApplicable("this edition names a standard for microwaves over a range only")
    if mount is None:
        raise Missing(path_of(hood, "mount"))
    return tuple(table["other"])


@quantity()
def listing(case: Case, hood: Hood) -> str:
    """The listing as stated. A text without a number of a standard tells nothing."""
    stated = str(case.get(hood, "listing"))
    if not re.search(r"\d{2}", stated) and stated.lower() != "none":
        raise Missing(path_of(hood, "listing"))
    return stated


def check(hood: Hood, fitting: tuple[str, ...], listing: str) -> Meets | Finding:
    """Any of the fitting standards, by its number."""
    numbers = {"name": Num(hood.name), "fitting": Num(" or ".join(fitting))}
    digits = re.sub(r"[^a-z0-9.]", "", listing.lower())
    if any(re.sub(r"[^a-z0-9.]", "", each.lower()).removeprefix("ul") in digits for each in fitting):
        return Meets(numbers)
    return Finding(
        "{name} is listed to {listing}; {fitting} is the standard for its kind",
        at="listing", help="show a product that is listed to {fitting}", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-19", name="hood-listing-unfit", severity="correction", since="0.1",
    over=every_hood, when=is_told_or_due, needs=(fitting_listings, listing), cites=("hood-listing",), check=check,
    nothing="the design has no hood", answers=("B15",),
)  # fmt: skip
