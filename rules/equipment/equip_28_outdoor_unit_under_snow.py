"""A heat pump's outdoor unit would stand in the snow that is to be reckoned with.

Snow against the coil stops the air; defrost water that cannot drain builds ice up into the fan. Most winter
failures of heat pumps begin there.

Raise the unit on a stand or wall brackets above the usual snow, with the few inches that the maker asks for beyond
it, and keep it from under an eave that sheds.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import outdoor_units
from checker.quantities.outdoor_unit import base_height, heats_in_winter, siting_of
from checker.quantities.surroundings import snow_depth
from checker.rule import Finding, Meets, Num, Rule


def winter_units(case: Case) -> list[Equipment]:
    """Outdoor units of heat pumps whose siting is spoken of."""
    return [unit for unit in outdoor_units(case) if case.speaks_of(unit, "siting") and heats_in_winter(case, unit)]


def stands_in_snow(case: Case, unit: Equipment) -> bool:
    """It stands on a roof."""
    return siting_of(unit).support != "roof" and unit.location != "roof"


@quantity("length", "snow depth + what the maker asks for above it")
def height_for_snow(case: Case, unit: Equipment) -> float:
    """Least height of the base."""
    above = None if unit.by_maker is None else case.maybe(unit.by_maker, "base_above_snow")
    return snow_depth(case, case.design) + (0.0 if above is None else float(above))


@quantity("length")
def depth(case: Case, _unit: Equipment) -> float:
    """Snow depth."""
    return snow_depth(case, case.design)


def check(unit: Equipment, height: float, least: float, _depth: float) -> Meets | Finding:
    """The base must clear the snow."""
    numbers = {"unit": Num(unit.name), "short": Num(max(0.0, least - height), "length")}
    if height >= least * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "the base of {unit} is {base_height} above grade, with {depth} of snow to reckon with",
        at="siting.base_height",
        help="raise the base by {short} to {height_for_snow} or more, and lead the defrost water away",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-28", name="outdoor-unit-under-snow", severity="caution", since="0.1",
    over=winter_units, when=stands_in_snow, needs=(base_height, height_for_snow, depth),
    cites=("outdoor-unit-above-snow",), check=check,
    nothing="nothing says how the outdoor unit of a heat pump stands", answers=("I19",),
)  # fmt: skip
