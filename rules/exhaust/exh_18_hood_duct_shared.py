"""A hood shares its duct or terminal with another exhaust.

A hood has to have its own way out: through a shared duct it blows grease and steam into the bath, and a fire in
it reaches further than it needs to.

The usual cause is a wall hood or roof cap that seemed large enough for two. Give the hood a duct and a terminal
of its own.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.fans import Fan
from checker.design.hoods import Dryer, Hood
from checker.quantities.exhaust_duct import exhaust_line
from checker.quantities.exhaust_end import ducted_hoods, ends, sharers
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def others(case: Case, hood: Hood) -> tuple[str, ...]:
    """Other exhausts on the hood's duct or terminal."""
    named: list[str] = []
    stated = False
    try:
        for section in exhaust_line(case, hood).sections:
            named += case.maybe(section, "shared_with")
            stated = stated or path_of(section, "shared_with") in case.design.stated_none
    except Missing:
        pass
    named += named_from_there(case, hood)
    if not named and not stated:
        ends(case, hood)
    return tuple(dict.fromkeys([*named, *sharers(case, hood)]))


def named_from_there(case: Case, hood: Hood) -> list[str]:
    """Fans, other hoods and dryers whose own duct is said to be shared with the hood."""
    found: list[str] = []
    others: list[Fan | Hood | Dryer] = [
        *case.design.fans.values(), *case.design.hoods.values(), *case.design.dryers.values(),
    ]  # fmt: skip
    for other in others:
        airway = other.duct
        if other.path != hood.path and airway is not None and hood.name in case.maybe(airway, "shared_with"):
            found.append(other.name)
    return found


def check(hood: Hood, others: tuple[str, ...]) -> Meets | Finding:
    """Nothing else may be on it."""
    numbers = {"name": Num(hood.name), "others": Num(", ".join(others))}
    if not others:
        return Meets(numbers)
    return Finding(
        "{name} shares its way out with {others}",
        help="give the hood a duct and a terminal of its own", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-18", name="hood-duct-shared", severity="correction", since="0.1",
    over=ducted_hoods, needs=(others,), cites=("hood-discharge",), check=check,
    nothing="the design has no ducted hood", answers=("B12",),
)  # fmt: skip
