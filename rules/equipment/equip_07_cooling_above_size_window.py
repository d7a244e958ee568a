"""A central cooling unit is larger than the window that the selection procedure allows for its load.

Too much cooling runs in short bursts, which leaves the moisture in the air and the far rooms warm. The window over
the total load is narrow for a single stage and wider for equipment that follows the load; in a climate of
heating a heat pump may be chosen larger, for its heat.

Choose the smaller size, or one whose range reaches down to the load. The limits are recalled from the selection
procedure: hold them against its text.
"""

from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import HEADS, Group, all_cooling, is_heat_pump
from checker.quantities.sizing import cooling_of, cooling_total, least_of, stages_of
from checker.quantities.unit_loads import LoadSpan, group_cooling_total, loads_spoken_of
from checker.quantities.ventilation_standard import site_of
from checker.rule import Finding, Meets, Num, Rule


def central(case: Case) -> list[Group]:
    """Cooling groups of one central unit."""
    return [group for group in all_cooling(case) if len(group.units) == 1 and group.units[0].kind not in HEADS]


def has_load(case: Case, group: Group) -> bool:
    """The house has no cooling load, or the file holds no load at all."""
    return loads_spoken_of(case, "cooling_load") and group_cooling_total(case, group).high > 0.0


def in_heating_climate(case: Case) -> bool:
    """Whether heating rules by the ratio of degree days. Raises Missing where they are not known."""
    site = site_of(case)
    heating, cooling = case.all(site, "heating_degree_days", "cooling_degree_days")
    return float(heating) >= float(case.limit("heating-climate-ratio")) * float(cooling)


def greatest_for(case: Case, unit: Equipment, load: float, total: float) -> float:
    """Greatest total capacity that the selection allows for a load; more for a heat pump in a heating climate."""
    most = float(case.limit("cooling-size")[stages_of(case, unit)]) * load
    if not is_heat_pump(case, unit):
        return most
    most = max(most, float(case.limit("heat-pump-cooling-size")) * load)
    allowed = load + float(case.limit("heating-climate-allowance"))
    if most < total <= allowed:
        return allowed if in_heating_climate(case) else most
    return max(most, allowed) if total > allowed > most and not knows_to_cool(case) else most


def knows_to_cool(case: Case) -> bool:
    """Whether the degree days are known to be those of a cooling climate."""
    try:
        return not in_heating_climate(case)
    except Missing:
        return False


@quantity("heat_rate", "load x the factor of its stages, or the load and an allowance for a heat pump in the cold")
def greatest_cooling(case: Case, group: Group) -> float:
    """Greatest total capacity that the selection allows. Raises Missing where the latent load decides."""
    unit, load, total = group.units[0], group_cooling_total(case, group), cooling_total(case, group)
    most = greatest_for(case, unit, load.high, total)
    if load.missing and total <= most and total > greatest_for(case, unit, load.low, total):
        raise Missing(*load.missing)
    return most


@quantity()
def follows_the_load(case: Case, group: Group) -> bool:
    """Whether equipment with stages publishes a range that holds the load."""
    unit = group.units[0]
    if stages_of(case, unit) == "single stage":
        return False
    least = least_of(case, unit, cooling_of(case, unit))
    return least is not None and least <= group_cooling_total(case, group).low


def check(group: Group, total: float, load: LoadSpan, most: float, follows: bool) -> Meets | Finding:
    """Compare the capacity with the window."""
    numbers = {
        "unit": Num(group.name),
        "load": Num(load.high, "heat_rate"),
        "ratio": Num(round(total / load.high, 2)),
    }
    if follows or total <= most * (1 + 1e-9):
        return Meets(numbers)
    word = "of no more than" if load.missing else "of"
    return Finding(
        f"{{unit}} cools with {{cooling_total}} against a total load {word} {{load}}, {{ratio}} times as much",
        at="cooling",
        help="choose a total capacity of no more than {greatest_cooling}, or equipment that follows the load",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-07", name="cooling-above-size-window", severity="caution", since="0.1",
    over=central, when=has_load, needs=(cooling_total, group_cooling_total, greatest_cooling, follows_the_load),
    cites=("cooling-size", "heat-pump-cooling-size", "heating-climate-allowance", "selection-with-a-range"),
    check=check, nothing="no central unit cools the house alone",
    answers=("H02", "H08", "H09", "H10", "H11", "H12", "H17"),
)  # fmt: skip
