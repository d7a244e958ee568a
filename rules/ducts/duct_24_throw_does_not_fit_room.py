"""The throw of an outlet does not fit the distance it has to cover.

A supply outlet stirs its room when its throw reaches about three quarters of the way to the opposite wall or to
the end of its zone. Shorter, and the air drops near the outlet; longer, and it comes back along the floor as a
draft.

Choose the outlet, or its blades, for this airflow and distance from the maker's table.
"""

from checker.case import Case, given
from checker.design.ducts import Outlet
from checker.quantities.delivered_air import throw_at_design
from checker.quantities.duct_scope import outlets
from checker.rule import Finding, Meets, Num, Rule


def throwing(case: Case) -> list[Outlet]:
    """Outlets whose throw the file states."""
    tbd = case.design.tbd
    return [outlet for outlet in outlets(case) if outlet.throw is not None or f"{outlet.path}.throw" in tbd]


def check(outlet: Outlet, throw: float, distance: float, window: list[float]) -> Meets | Finding:
    """Compare the ratio with the window."""
    low, high = window[0] * distance, window[1] * distance
    numbers = {"outlet": Num(outlet.name), "low": Num(low, "length"), "high": Num(high, "length")}
    if low * (1.0 - 1e-9) <= throw <= high * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        "outlet {outlet} throws {throw_at_design} toward a wall {distance_to_wall} away",
        at="throw",
        help="choose an outlet or blade setting that throws {low} to {high} at its airflow",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-24", name="throw-does-not-fit-room", severity="note", since="0.1",
    over=throwing, needs=(throw_at_design, given("distance_to_wall")), limits=("throw-window",), check=check,
    answers=("F57",), nothing="no outlet states its throw",
)  # fmt: skip
