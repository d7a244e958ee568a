"""The cooling equipment takes out less sensible heat than its rooms gain in the hottest hour.

Only the sensible part of the capacity lowers the temperature; a quarter or more of the total goes into condensing
moisture. A unit chosen by its total capacity alone can fall short of the load although the nominal figures agree.

State the sensible capacity at the design conditions from the maker's table, choose more of it, or lower the load:
shade west windows first.
"""

from checker.case import Case, Missing, quantity
from checker.quantities.equipment import Group, all_cooling
from checker.quantities.sizing import Extent, sensible_extent
from checker.quantities.unit_loads import group_cooling_sensible, loads_spoken_of
from checker.rule import Finding, Meets, Num, Rule


def has_load(case: Case, group: Group) -> bool:
    """Its rooms have no cooling load, or the file holds no load at all."""
    return loads_spoken_of(case, "cooling_load") and group_cooling_sensible(case, group) > 0.0


@quantity()
def sensible_capacity(case: Case, group: Group) -> Extent:
    """The sensible capacity; asked for where its bounds do not decide."""
    found = sensible_extent(case, group)
    wanted = float(case.limit("sensible-capacity")) * group_cooling_sensible(case, group)
    if found.asked and found.least is not None and found.least < wanted <= found.full:
        raise Missing(*found.asked)
    return found


def check(group: Group, sensible: Extent, load: float, share: float) -> Meets | Finding:
    """Compare with the share of the load that is needed at least."""
    numbers = {
        "unit": Num(group.name),
        "capacity": Num(sensible.full, "heat_rate"),
        "word": Num("a total of" if sensible.asked else "a sensible"),
        "short": Num(max(0.0, load - sensible.full), "heat_rate"),
    }
    if sensible.full >= share * load * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} cools with {word} {capacity}; its rooms gain {group_cooling_sensible} of sensible heat",
        at="cooling",
        help="show {short} more of sensible capacity at the design conditions, or less load",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-08", name="cooling-below-load", severity="caution", since="0.1",
    over=all_cooling, when=has_load, needs=(sensible_capacity, group_cooling_sensible),
    limits=("sensible-capacity",), check=check, nothing="no equipment is said to cool rooms", answers=("H14",),
)  # fmt: skip
