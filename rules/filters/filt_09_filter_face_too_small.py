"""Air passes the face of a filter too fast.

Pressure drop and whistling rise with the velocity over the face, and at high velocity dust is driven through the
medium. About 300 fpm is the usual most for 1 in pleated filters and filter grilles, 500 fpm for deep media and
coarse screens. A filter is about 1/2 in smaller each way than its nominal size.

The usual cause is a filter of the size of the duct. Make the filter grille larger, use two, or fit a deeper one.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.filters import Filter
from checker.design.hoods import Hood
from checker.quantities.filters import face_area, face_velocity, filter_flow, movers_served, stock_size
from checker.rule import Finding, Meets, Num, Rule


def cleans_room_or_outdoor_air(case: Case, filter_: Filter) -> bool:
    """It is the grease filter of a hood."""
    return not any(isinstance(mover, Hood) for mover in movers_served(case, filter_))


@quantity("velocity")
def greatest_velocity(case: Case, filter_: Filter) -> float:
    """The face velocity that a filter of this depth and MERV bears."""
    merv = case.maybe(filter_, "merv")
    size = case.maybe(filter_, "size")
    deep = size is not None and size.depth is not None and size.depth >= case.limit("filter-thin-depth")
    coarse = merv is not None and merv < case.limit("coarse-filter")
    if deep or coarse:
        return float(case.limit("filter-face-velocity-deep"))
    return float(case.limit("filter-face-velocity-thin"))


def check(_filter: Filter, velocity: float, most: float, flow: float, area: float) -> Meets | Finding:
    """Compare the velocity over the face with what such a filter bears."""
    if velocity <= most * (1.0 + 1e-9):
        return Meets()
    needed = flow / most
    stock = stock_size(needed)
    such = f", such as {stock} in nominal" if stock else ", in two filters or more"
    return Finding(
        f"{{filter_flow}} through {_filter.name} ({{face_area}} of face) is {{face_velocity}}, over {{greatest_velocity}}",
        at="size",
        help=f"give it a face of {{needed}} or more{such}",
        numbers={"needed": Num(needed, "small_area")},
    )


RULE = Rule(
    code="FILT-09", name="filter-face-too-small", severity="caution", since="0.1",
    over=each.filter, when=cleans_room_or_outdoor_air, needs=(face_velocity, greatest_velocity, filter_flow, face_area),
    cites=("filter-face-velocity-thin",), check=check, nothing="no filter is named", answers=("G09",),
)  # fmt: skip
