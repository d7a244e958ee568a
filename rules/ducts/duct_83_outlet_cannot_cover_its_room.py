"""A wall outlet of this size and airflow cannot throw its air as far as it has to.

Air that slows down too early drops out of the stream near the outlet and leaves the far half of the room unstirred;
air that is still fast at the opposite wall turns down it and blows over the floor as a draft.

The file states the distance but no throw, so that of a usual wall register of its free area is reckoned, with blades
straight and spread: a verdict is given only where neither fits. A maker's figure, stated as `throw`, goes before it.
Choose a smaller or larger face, another airflow, or a second outlet.
"""

from checker.case import given
from checker.design.ducts import Outlet
from checker.quantities.delivered_air import Thrown, generic_throw, thrown_outlets
from checker.quantities.duct_flow import outlet_flow
from checker.rule import Finding, Meets, Num, Rule


def check(outlet: Outlet, found: Thrown, distance: float, _flow: float, window: list[float]) -> Meets | Finding:
    """Compare both throws with the window."""
    low, high = window[0] * distance, window[1] * distance
    numbers = {
        "outlet": Num(outlet.name),
        "low": Num(low, "length"),
        "high": Num(high, "length"),
        "straight": Num(found.straight, "length"),
        "spread": Num(found.spread, "length"),
    }
    if found.straight < low * (1.0 - 1e-9):
        return Finding(
            "at {outlet_flow} a usual register of the size of {outlet} throws {straight} at best, toward a wall "
            "{distance_to_wall} away",
            at="size", help="choose a smaller face or another outlet that throws {low} to {high}, and state its throw",
            numbers=numbers,
        )  # fmt: skip
    if found.spread > high * (1.0 + 1e-9):
        return Finding(
            "at {outlet_flow} a usual register of the size of {outlet} throws {spread} or more, toward a wall "
            "{distance_to_wall} away",
            at="size", help="choose a larger face or a second outlet that throws {low} to {high}, and state its throw",
            numbers=numbers,
        )  # fmt: skip
    return Meets(numbers)


RULE = Rule(
    code="DUCT-83", name="outlet-cannot-cover-its-room", severity="note", since="0.1",
    over=thrown_outlets, needs=(generic_throw, given("distance_to_wall"), outlet_flow), limits=("throw-window",),
    check=check, nothing="no wall outlet states its distance to the opposite wall without its throw",
)  # fmt: skip
