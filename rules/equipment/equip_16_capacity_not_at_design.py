"""A capacity at design that was taken from the nominal size or the rating, not from the maker's table.

The figure in the model number is a name. Ratings hold at 95 and 47 degF outdoors; on the winter design day a heat
pump gives less than at 47, by a third or a half for an ordinary one. Sizes chosen by the nominal figure are the
commonest error in a selection.

Take the capacity at the design temperature from the maker's performance table, and say so; a few units made for the
cold do keep their rated capacity.
"""

from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import is_heat_pump
from checker.quantities.heat_pump import RATING_TEMPERATURE
from checker.quantities.sizing import is_named_size
from checker.quantities.ventilation_standard import site_of
from checker.rule import Finding, Meets, Num, Rule


def doubted(case: Case) -> list[Equipment]:
    """Heat pumps whose heating capacity at design is stated."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.heating is not None and case.speaks_of(unit.heating, "at_design") and is_heat_pump(case, unit)
    ]


def is_colder_than_rating(case: Case, unit: Equipment) -> bool:
    """The winter design temperature is near the one at which capacity is rated."""
    design = case.maybe(site_of(case), "winter_design")
    return design is None or design < (RATING_TEMPERATURE - case.limit("well-below-rating")) * (1 - 1e-9)


@quantity()
def basis(case: Case, unit: Equipment) -> str:
    """Where the capacity at design comes from; taken to be the table where it differs from rating and size."""
    heating = unit.heating
    assert heating is not None
    stated = case.maybe(heating, "basis")
    if stated is not None:
        return str(stated)
    at_design = float(case.get(heating, "at_design"))
    if is_named_size(case, unit, heating, at_design):
        raise Missing(f"{heating.path}.basis")
    return "performance table"


@quantity("heat_rate")
def stated_at_design(case: Case, unit: Equipment) -> float:
    """Heating capacity at design as stated."""
    return float(case.get(unit.heating, "at_design"))


def check(unit: Equipment, source: str, capacity: float) -> Meets | Finding:
    """A rating or nominal size is the finding."""
    if source == "performance table":
        return Meets()
    word = "its nominal size" if source == "nominal" else "its rating at {rated_at}"
    return Finding(
        "{unit} is counted with {stated_at_design} on the winter design day, which is " + word,
        at="heating.basis",
        help="take the capacity at the winter design temperature from the maker's performance table",
        numbers={"unit": Num(unit.name), "rated_at": Num(RATING_TEMPERATURE, "temperature")},
    )


RULE = Rule(
    code="EQUIP-16", name="capacity-not-at-design", severity="caution", since="0.1",
    over=doubted, when=is_colder_than_rating, needs=(basis, stated_at_design), cites=("capacity-at-design", "well-below-rating"),
    check=check, nothing="no heat pump states its heating capacity at design", answers=("H18",),
)  # fmt: skip
