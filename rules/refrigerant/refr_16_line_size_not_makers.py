"""A refrigerant line has a diameter that the equipment's maker does not list.

A thin suction line costs capacity; a wide one leaves oil lying in it. A wrong liquid line changes the charge and can let
the liquid boil. The valves of the unit fit one size, and adapters are allowed only where the maker says so.

Usual cause: an old line set is kept for a new unit. Take the sizes from the instructions, outside diameters of the
copper, not of the insulation.
"""


from checker.case import Case, quantity
from checker.design.fields import Diameter
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

SIDES = ("liquid", "suction")


class Misfit(Record):
    """A line whose size is none of the maker's: which, its size and the nearest allowed one, m."""

    side: str
    size: Diameter
    allowed: Diameter


def maker_lists_sizes(case: Case, line: RefrigerantLine) -> bool:
    """The sizes that its maker allows are not stated."""
    return line.by_maker is not None and any(getattr(line.by_maker, side) for side in SIDES)


@quantity()
def misfit(case: Case, line: RefrigerantLine) -> Misfit | None:
    """The first line whose size is none of the maker's, None where all are."""
    asked = [side for side in SIDES if getattr(line.by_maker, side)]
    tolerance = float(case.limit("line-size-tolerance"))
    for side, size in zip(asked, case.all(line, *asked), strict=True):
        allowed = min(getattr(line.by_maker, side), key=lambda each: abs(each - size))
        if abs(size - allowed) > tolerance * (1.0 + 1e-9):
            return Misfit(side, size, allowed)
    return None


def check(line: RefrigerantLine, found: Misfit | None) -> Meets | Finding:
    """Each size must be one of the maker's."""
    if found is None:
        return Meets()
    return Finding(
        f"the {found.side} line of {line.name} is {{size}}, where its maker wants {{allowed}}",
        at=found.side,
        help=f"use a {found.side} line of {{allowed}}, or the reducer that the maker provides",
        numbers={"size": Num(found.size, "length"), "allowed": Num(found.allowed, "length")},
    )


RULE = Rule(
    code="REFR-16", name="line-size-not-makers", severity="correction", since="0.1",
    over=drawn_lines, when=maker_lists_sizes, needs=(misfit,),
    cites=("lines-by-maker", "line-size-tolerance"), check=check, nothing="no refrigerant line is drawn", answers=("I20",),
)  # fmt: skip
