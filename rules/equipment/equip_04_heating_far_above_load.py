"""A heat pump cannot turn down to what its rooms lose, even on the coldest day.

Small heads are often bought at the smallest size there is and still stand far above the load of one tight bedroom.
Where the least capacity is above the load of the design day, the unit starts and stops all winter: it wears, hums
and costs more than its rating promises. A full capacity far above the load does no harm as long as the unit can
turn down to it.

State the least capacity, choose a unit with a lower one, or let one ducted unit serve several small rooms.
"""

from checker.case import Case, Missing, quantity
from checker.quantities.equipment import Group, all_heating, burns, is_heat_pump
from checker.quantities.sizing import Extent, heating_extent
from checker.quantities.unit_loads import group_heating_load, loads_spoken_of
from checker.rule import Finding, Meets, Num, Rule


def by_compressor(case: Case) -> list[Group]:
    """Heating groups with a heat pump and nothing that burns."""
    return [
        group
        for group in all_heating(case)
        if any(is_heat_pump(case, unit) for unit in group.units)
        and not any(burns(unit) for unit in group.units)
    ]


def has_load(case: Case, group: Group) -> bool:
    """Its rooms lose no heat, or the file holds no load at all."""
    return loads_spoken_of(case, "heating_load") and group_heating_load(case, group) > 0.0


@quantity()
def judged_extent(case: Case, group: Group) -> Extent:
    """The capacities; the least one is asked for where it decides."""
    found, load = heating_extent(case, group), group_heating_load(case, group)
    ratio = found.full / load
    if found.least is None and case.limit("unremarkable-ratio") < ratio <= case.limit("oversize-ratio"):
        raise Missing(*found.asked)
    return found


def check(group: Group, capacity: Extent, load: float, extreme: float, _fair: float) -> Meets | Finding:
    """Compare the least capacity with the load, or the full one where the least is not stated."""
    numbers = {
        "unit": Num(group.name),
        "full": Num(capacity.full, "heat_rate"),
        "least": Num(capacity.least, "heat_rate"),
        "ratio": Num(round(capacity.full / load, 1)),
    }
    if capacity.least is not None and capacity.least > load * (1 + 1e-9):
        return Finding(
            "{unit} runs at {least} or more, {full} at most; its rooms lose {group_heating_load} on the coldest day, "
            "so it starts and stops all winter",
            at="heating",
            help="choose a unit that turns down to {group_heating_load}, or let one unit serve more rooms",
            numbers=numbers,
        )
    if capacity.least is None and capacity.full > extreme * load * (1 + 1e-9):
        return Finding(
            "{unit} has {full} for rooms that lose {group_heating_load} on the coldest day, {ratio} times as much; "
            "few units turn down that far, and it starts and stops all winter",
            at="heating",
            help="state the least capacity, choose a smaller unit, or let one unit serve more rooms",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="EQUIP-04", name="heating-far-above-load", severity="caution", since="0.1",
    over=by_compressor, when=has_load, needs=(judged_extent, group_heating_load),
    limits=("oversize-ratio", "unremarkable-ratio"), check=check, nothing="no heat pump is said to heat rooms",
)  # fmt: skip
