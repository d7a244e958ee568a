"""In a hot place the cooling capacity is that of the rating at 95 degF, not that of the design day.

Ratings are made at 95 degF outdoors. An ordinary unit loses about one hundredth of its capacity for each degree
above that, and takes more power, so that one chosen by its rating or its model number falls short when it is wanted
most.

Take the capacity at the summer design temperature from the maker's performance table, and say so.
"""

from checker.case import Case, Missing, either, path_of, quantity
from checker.design.equipment import Equipment
from checker.quantities.cooling_capacity import has_cooling_table, summer_outdoor
from checker.quantities.equipment import gives
from checker.quantities.sizing import cooling_of, is_named_size
from checker.quantities.ventilation_standard import site_of
from checker.rule import Finding, Meets, Num, Rule

COOLING_RATING = 308.15
"""95 degF, at which cooling capacity is rated."""


def coolers(case: Case) -> list[Equipment]:
    """Units with a compressor that cool and state a capacity, without a table by outdoor temperature."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.kind != "evaporative cooler" and gives(case, unit, "cooling") and tells_capacity(case, unit)
    ]


def tells_capacity(case: Case, unit: Equipment) -> bool:
    """Whether a unit states its cooling capacity, without a table that is read for the design day."""
    cooling = cooling_of(case, unit)
    spoken = case.speaks_of(cooling, "rated") or case.speaks_of(cooling, "at_design")
    return spoken and not has_cooling_table(case, cooling)


def is_hotter_than_rating(case: Case, unit: Equipment) -> bool:
    """The summer design temperature is near the one at which cooling is rated, or nobody says that a rating is counted."""
    summer = site_of(case).summer_design
    told = summer is not None and case.speaks_of(summer, "dry_bulb")
    doubted = told or case.maybe(cooling_of(case, unit), "basis") in ("rating", "nominal")
    least = COOLING_RATING + float(case.limit("well-above-rating"))
    return either(lambda: summer_outdoor(case, unit) > least * (1 + 1e-9), lambda: doubted)


@quantity("heat_rate", "at design, else as rated")
def counted_cooling(case: Case, unit: Equipment) -> float:
    """Cooling capacity that the design counts with; asks for the one at design where only a rating is stated."""
    cooling = cooling_of(case, unit)
    stated = case.maybe(cooling, "at_design")
    if stated is None and case.maybe(cooling, "basis") not in ("rating", "nominal"):
        raise Missing(path_of(cooling, "at_design"))
    return float(case.get(cooling, "rated") if stated is None else stated)


@quantity()
def cooling_basis(case: Case, unit: Equipment) -> str:
    """Where the cooling capacity at design comes from; taken to be the table where it differs from rating and size."""
    cooling = cooling_of(case, unit)
    stated, counted = case.maybe(cooling, "basis"), counted_cooling(case, unit)
    if stated is not None:
        return str(stated)
    if is_named_size(case, unit, cooling, counted):
        raise Missing(path_of(cooling, "basis"))
    return "performance table"


def check(unit: Equipment, source: str, _capacity: float, outdoor: float) -> Meets | Finding:
    """A rating or nominal size is the finding."""
    if source == "performance table" or outdoor <= COOLING_RATING:
        return Meets()
    word = "its nominal size" if source == "nominal" else "its rating at {rated_at}"
    return Finding(
        "{unit} is counted with {counted_cooling} of cooling at {summer_outdoor} outdoors, which is " + word,
        at="cooling.basis",
        help="take the capacity at {summer_outdoor} from the maker's performance table",
        numbers={"unit": Num(unit.name), "rated_at": Num(COOLING_RATING, "temperature")},
    )


RULE = Rule(
    code="EQUIP-57", name="cooling-not-at-design", severity="caution", since="0.1",
    over=coolers, when=is_hotter_than_rating, needs=(cooling_basis, counted_cooling, summer_outdoor),
    cites=("capacity-at-design", "well-above-rating"), check=check,
    nothing="no unit states a cooling capacity without its table", answers=("H18",),
)  # fmt: skip
