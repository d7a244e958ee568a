"""A hood shares its duct or terminal with another exhaust.

A hood has to have its own way out: through a shared duct it blows grease and steam into the bath, and a fire in
it reaches further than it needs to.

The usual cause is a wall hood or roof cap that seemed large enough for two. Give the hood a duct and a terminal
of its own.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.hoods import Hood
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
    if not named and not stated:
        ends(case, hood)
    return tuple(dict.fromkeys([*named, *sharers(case, hood)]))


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
