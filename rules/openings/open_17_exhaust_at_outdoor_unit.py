"""An exhaust terminal is close to an outdoor unit.

Lint from a dryer and grease from a hood settle on the coil of a heat pump or air conditioner, which then works
harder and fails earlier; moist exhaust freezes on it in winter.

The usual cause is that both belong to the same corner of the house. Move one of them, or turn the terminal so
that it blows away from the unit.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import Neighbor, neighbors, numbers_of, settled, spoken_of
from checker.quantities.opening_kinds import EXHAUSTS, of_kind
from checker.rule import Finding, Meets, Rule

UNITS = frozenset({"outdoor unit"})


@quantity()
def outdoor_units(case: Case, exhaust: Opening) -> list[Neighbor]:
    """The outdoor units around an exhaust."""
    return neighbors(case, exhaust, UNITS)


def exhausts(case: Case) -> list[Opening]:
    """Every exhaust terminal, those of dryers included."""
    return of_kind(case, EXHAUSTS)


def a_unit_is_shown(case: Case, exhaust: Opening) -> bool:
    """No outdoor unit is shown among the openings."""
    return spoken_of(case, exhaust, UNITS)


def check(_exhaust: Opening, around: list[Neighbor], least: float) -> Meets | Finding:
    """Hold the outdoor units against the usual distance."""
    verdict = settled(around, least)
    numbers = numbers_of(verdict, least)
    if not verdict.offends:
        return Meets(numbers)
    return Finding(
        f"{{near}} is {{apart}} from this exhaust, nearer than the usual {{limit}}{verdict.also}",
        help="move the terminal {short} farther away, or turn it so that it blows away from the unit",
        numbers=numbers,
    )


RULE = Rule(
    code="OPEN-17", name="exhaust-at-outdoor-unit", severity="note", since="0.1",
    over=exhausts, when=a_unit_is_shown, needs=(outdoor_units,), limits=("exhaust-to-outdoor-unit",),
    check=check, nothing="the design shows no exhaust opening",
)  # fmt: skip
