"""A plumbing vent ends close to a window that opens or a door.

Sewer gas smells, and in a closed room it can harm. It leaves the vent whenever water runs.

The usual cause is a roof window or a dormer added beside the vent stack. Raise the vent above the top of the
opening or move it; the plumber decides how.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import Neighbor, neighbors, numbers_of, settled
from checker.quantities.opening_kinds import of_kind, stated
from checker.rule import Finding, Meets, Rule

WAYS_IN = frozenset({"window", "door"})


@quantity()
def windows_nearby(case: Case, vent: Opening) -> list[Neighbor]:
    """Windows that open and doors around a plumbing vent."""
    return neighbors(case, vent, WAYS_IN, lambda other: stated(case, other, "operable") is not False)


def plumbing_vents(case: Case) -> list[Opening]:
    """Plumbing vents."""
    return of_kind(case, frozenset({"plumbing vent"}))


def near_a_window(case: Case, vent: Opening) -> bool:
    """No window or door is shown."""
    return bool(of_kind(case, WAYS_IN)) or any(word in WAYS_IN for word in vent.clear_of)


def check(_vent: Opening, around: list[Neighbor], least: float, above: float) -> Meets | Finding:
    """Hold every window and door against the distance, or against the height that frees the vent."""
    verdict = settled(around, least, drop=above)
    numbers = numbers_of(verdict, least)
    if not verdict.offends:
        return Meets(numbers)
    return Finding(
        f"{{near}} is {{apart}} from this plumbing vent, nearer than {{plumbing_vent_to_window}}, and "
        f"{verdict.is_not} {{plumbing_vent_above_window}} below it{verdict.also}",
        help="move the vent {short} farther away, or end it {plumbing_vent_above_window} above the opening",
        numbers=numbers,
    )


RULE = Rule(
    code="OPEN-21", name="plumbing-vent-near-window", severity="caution", since="0.1",
    over=plumbing_vents, when=near_a_window, needs=(windows_nearby,),
    limits=("plumbing-vent-to-window", "plumbing-vent-above-window"), check=check,
    nothing="the design shows no plumbing vent",
)  # fmt: skip
