"""An outlet in a bedroom or living room is loud for the air it passes.

The noise of a grille follows the velocity through its free area. The usual aim for bedrooms and living rooms is
a noise criterion (NC) of 30; at NC 35 and above people notice the air and close the register. The estimate is
good to about 5, so only outlets that are above 30 for certain are named, and a damper in the neck adds 5 to 10.

Choose a larger outlet, or one with more free area; the maker's own sound figures go before this estimate.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.ducts import Outlet
from checker.quantities.duct_graph import is_return_outlet
from checker.quantities.duct_velocity import face_velocity, free_velocity, least_noise, quiet_outlets
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def noise_not_named_already(case: Case, outlet: Outlet) -> float:
    """Least NC of an outlet whose face velocity is within its own limit."""
    if outlet.size is not None:
        key = "return-face-velocity" if is_return_outlet(outlet) else "supply-face-velocity"
        if face_velocity(case, outlet) > case.limit(key):
            raise NotApplicable("its face velocity is too high already")
    return least_noise(case, outlet)


def check(outlet: Outlet, through: float, noise: float, limit: float) -> Meets | Finding:
    """Compare the lower end of the noise band with the limit."""
    numbers = {"outlet": Num(outlet.name), "room": Num(outlet.room), "nc": Num(f"{noise:.0f}")}
    if noise < limit:
        return Meets(numbers)
    return Finding(
        "outlet {outlet} in {room} passes air at {free_velocity} through its free area, about NC {nc} or louder",
        at="size" if outlet.size is not None else "free_area",
        help="choose an outlet with more free area, or give the room a second one",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-11", name="outlet-too-loud", severity="note", since="0.1",
    over=quiet_outlets, needs=(free_velocity, noise_not_named_already), limits=("outlet-noise",), check=check,
    answers=("F57",), nothing="no outlet in a bedroom or living room states its size",
)  # fmt: skip
