"""A refrigerant line has a diameter that the equipment's maker does not list.

A thin suction line costs capacity; a wide one leaves oil lying in it. A wrong liquid line changes the charge and can let
the liquid boil. The valves of the unit fit one size, and adapters are allowed only where the maker says so.

Usual cause: an old line set is kept for a new unit. Take the sizes from the instructions, outside diameters of the
copper, not of the insulation.
"""

from checker.case import Case, quantity
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines
from checker.rule import Finding, Meets, Num, Rule

SIDES = ("liquid", "suction")


def maker_lists_sizes(case: Case, line: RefrigerantLine) -> bool:
    """The sizes that its maker allows are not stated."""
    return line.by_maker is not None and any(getattr(line.by_maker, side) for side in SIDES)


@quantity()
def sizes(case: Case, line: RefrigerantLine) -> dict[str, float]:
    """Outside diameters of those lines whose sizes the maker lists, m."""
    asked = [side for side in SIDES if getattr(line.by_maker, side)]
    return dict(zip(asked, case.all(line, *asked), strict=True))


def check(line: RefrigerantLine, found: dict[str, float], tolerance: float) -> Meets | Finding:
    """Each size must be one of the maker's."""
    for side, size in found.items():
        allowed: list[float] = getattr(line.by_maker, side)
        if all(abs(size - each) > tolerance for each in allowed):
            nearest = min(allowed, key=lambda each: abs(each - size))
            return Finding(
                f"the {side} line of {line.name} is {{size}}, where its maker wants {{allowed}}",
                at=side,
                help=f"use a {side} line of {{allowed}}, or the reducer that the maker provides",
                numbers={"size": Num(size, "diameter"), "allowed": Num(nearest, "diameter")},
            )
    return Meets()


RULE = Rule(
    code="REFR-16", name="line-size-not-makers", severity="correction", since="0.1",
    over=drawn_lines, when=maker_lists_sizes, needs=(sizes,), cites=("lines-by-maker",),
    limits=("line-size-tolerance",), check=check, nothing="no refrigerant line is drawn", answers=("I20",),
)  # fmt: skip
