"""The cooling takes less moisture out than the load calculation says must go.

Total capacity is sensible and latent together. A unit with a warm coil and much air has a large sensible share: it
holds the temperature, and leaves the air damp. The share that the load asks for is its sensible ratio; that of the
equipment has to be no higher where the latent load decides.

Slow the blower, choose a combination with a larger latent part at the design conditions, or show a dehumidifier.
"""

from checker.case import Case, quantity
from checker.design.equipment import Capacity
from checker.quantities.cooling_capacity import has_cooling_table
from checker.quantities.equipment import Group, all_cooling
from checker.quantities.sizing import cooling_of, cooling_total, sensible_extent
from checker.quantities.stated_loads import loads_paper
from checker.quantities.unit_loads import group_cooling_latent, group_cooling_sensible
from checker.rule import Finding, Meets, Num, Rule


def tells_sensible(case: Case, capacity: Capacity) -> bool:
    """Whether the sensible part of a capacity is spoken of, be it in every point of its table."""
    tabled = has_cooling_table(case, capacity) and all(each.sensible is not None for each in capacity.points)
    return tabled or case.speaks_of(capacity, "sensible")


def with_latent_load(case: Case) -> list[Group]:
    """What cools, where its sensible capacity is known and a latent load is worked out, or stated for the whole house."""
    paper = loads_paper(case)
    told = case.speaks_of(paper, "cooling_latent") or case.speaks_of(paper, "cooling_total")
    if not told and case.design.envelope is None:
        return []
    groups = [group for group in all_cooling(case) if group.whole_house or case.design.envelope is not None]
    return [group for group in groups if all(tells_sensible(case, cooling_of(case, unit)) for unit in group.units)]


def is_undried(case: Case, group: Group) -> bool:
    """A dehumidifier is shown, or there is no latent load."""
    dried = any(unit.kind == "dehumidifier" for unit in case.design.equipment.values())
    return not dried and group_cooling_latent(case, group) > 0.0


@quantity("heat_rate", "total - sensible capacity")
def latent_part(case: Case, group: Group) -> float:
    """Latent capacity at the design conditions."""
    return max(0.0, cooling_total(case, group) - sensible_extent(case, group).full)


@quantity("share", "sensible / total capacity")
def sensible_ratio(case: Case, group: Group) -> float:
    """Sensible heat ratio of the equipment."""
    total = cooling_total(case, group)
    return sensible_extent(case, group).full / total if total > 0.0 else 1.0


@quantity("share", "sensible / (sensible + latent load)")
def ratio_of_load(case: Case, group: Group) -> float:
    """Sensible heat ratio of the load."""
    sensible, latent = group_cooling_sensible(case, group), group_cooling_latent(case, group)
    return sensible / (sensible + latent) if sensible + latent > 0.0 else 1.0


def check(
    group: Group, latent: float, load: float, _ratio: float, _of_load: float, share: float
) -> Meets | Finding:
    """Compare the latent parts."""
    numbers = {"unit": Num(group.name), "short": Num(max(0.0, share * load - latent), "heat_rate")}
    if latent >= share * load * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} has {latent_part} of latent capacity for a latent load of {group_cooling_latent}: {sensible_ratio} of its capacity "
        "is sensible, {ratio_of_load} of the load",
        at="cooling.sensible",
        help="show {short} more of latent capacity at the design conditions, or a dehumidifier",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-40", name="latent-capacity-below-load", severity="caution", since="0.1",
    over=with_latent_load, when=is_undried, needs=(latent_part, group_cooling_latent, sensible_ratio, ratio_of_load),
    limits=("latent-capacity-for-load",), check=check,
    nothing="no cooling states its sensible part, or no latent load is known", answers=("H14", "H32"),
)  # fmt: skip
