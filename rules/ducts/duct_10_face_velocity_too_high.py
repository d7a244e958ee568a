"""Air passes the face of a grille or register faster than the usual greatest velocity.

The trade's table stops at 700 fpm over the face of a supply outlet, 500 fpm over a return grille, and 300 fpm
over a grille with a filter in it, which is about 2 cfm for each square inch. Above that the grille whistles, and
a filter takes far more pressure than its label says.

Choose a larger face, or share the air between two.
"""

from checker.case import Case, quantity
from checker.design.ducts import Outlet
from checker.quantities.duct_flow import outlet_flow
from checker.quantities.duct_graph import is_return_outlet
from checker.quantities.duct_velocity import face_velocity, sized_outlets
from checker.rule import Finding, Meets, Num, Rule


@quantity("velocity", source="by what the outlet is")
def allowed(case: Case, outlet: Outlet) -> float:
    """Greatest face velocity for the kind of outlet."""
    if outlet.kind == "filter grille" or outlet.filter is not None:
        return float(case.limit("filter-grille-velocity"))
    return float(case.limit("return-face-velocity" if is_return_outlet(outlet) else "supply-face-velocity"))


def check(outlet: Outlet, speed: float, limit: float, airflow: float) -> Meets | Finding:
    """Compare with the limit."""
    numbers = {"outlet": Num(outlet.name), "kind": Num(outlet.kind or "outlet"), "area": Num(airflow / limit, "small_area")}
    if speed <= limit * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        "air passes the face of {kind} {outlet} at {face_velocity}, more than {allowed}",
        at="size",
        help="choose a face of {area} or more for {outlet_flow}",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-10", name="face-velocity-too-high", severity="caution", since="0.1",
    over=sized_outlets, needs=(face_velocity, allowed, outlet_flow), cites=("return-face-velocity",), check=check,
    answers=("F48",), nothing="no outlet states its face size",
)  # fmt: skip
