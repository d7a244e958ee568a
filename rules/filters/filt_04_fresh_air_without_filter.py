"""A fan that brings in outdoor air all day has no filter.

What a supply fan brings in ends in the duct, in the rooms and in lungs: pollen, soot, insects, dust of the road.
A filter in the box of the fan or behind the intake keeps the duct clean and costs little pressure if it is large.

The usual cause is a plain in-line fan with two lengths of duct. Add a filter box where people can reach it, and
count its pressure drop when choosing the fan.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.fans import Fan
from checker.quantities.filters import filters_serving, unassigned
from checker.quantities.make_up_fans import is_make_up_fan
from checker.rule import Finding, Meets, Rule


def supply_fans(case: Case) -> list[Fan]:
    """Fans that bring in outdoor air for people."""
    fans = [fan for fan in case.design.fans.values() if fan.role == "supply" and not fan.for_cooling_only]
    return [fan for fan in fans if fan.whole_house is not False and not is_make_up_fan(case, fan)]


@quantity()
def filters_of_fan(case: Case, fan: Fan) -> int:
    """Filters of a fan, or of the unit that it delivers to. Raises Missing where the file doesn't tell."""
    found = len(filters_serving(case, fan))
    for name in fan.to:
        unit = case.design.equipment.get(name)
        if unit is not None:
            found += len(filters_serving(case, unit)) + bool(case.maybe(unit, "internal_filter"))
    told = case.stated("filters") and not unassigned(case) and path_of(fan, "filter") not in case.design.tbd
    if not found and not told:
        raise Missing(path_of(fan, "filter"))
    return found


def check(fan: Fan, filters: int) -> Meets | Finding:
    """Any filter will do here."""
    if filters:
        return Meets()
    return Finding(
        f"no filter cleans the outdoor air that {fan.name} brings in",
        at="filter",
        help="show a filter box at the fan or behind the intake, where people can reach it",
    )


RULE = Rule(
    code="FILT-04", name="fresh-air-without-filter", severity="caution", since="0.1",
    over=supply_fans, needs=(filters_of_fan,), cites=("fresh-air-filter",), check=check,
    nothing="no supply fan brings in outdoor air",
)  # fmt: skip
