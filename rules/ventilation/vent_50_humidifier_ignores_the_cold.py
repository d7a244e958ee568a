"""A humidifier holds the same humidity in the deepest cold, so that windows run with water.

Glass and corners get colder with the weather, and bear less humidity. A humidifier with a fixed set point that suits a
mild day waters the windows, and hidden places in walls and roof, on a cold one.

Choose a control that lowers the set point by itself as it gets colder outdoors, or set it to what the glass bears at
the winter design temperature. In a tight house with enough people none may be needed.
"""

from checker.case import Case, given, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.fans import Control
from checker.each import blank
from checker.quantities.moist_air import has_frost, winter_design
from checker.quantities.window_glass import ceiling
from checker.rule import Finding, Meets, Num, Rule


def humidifiers(case: Case) -> list[Equipment]:
    """Units that moisten the air."""
    return [unit for unit in case.design.equipment.values() if unit.kind == "humidifier"]


def is_fixed(case: Case, unit: Equipment) -> bool:
    """Its set point follows the outdoor temperature, or the winter is without frost."""
    control = unit.control or blank(Control, path_of(unit, "control"))
    return not case.maybe(control, "follows_outdoor") and has_frost(case, unit)


@quantity("relative_humidity", "p_sat(glass) / p_sat(room)", "ISO 13788")
def glass_bears(case: Case, unit: Equipment) -> float:
    """Indoor humidity that the weakest glass bears at the winter design temperature."""
    return ceiling(case, unit)


def check(unit: Equipment, found: float, most: float, _outdoor: float) -> Meets | Finding:
    """Compare the set point with what the glass bears."""
    numbers = {"unit": Num(unit.name)}
    if found <= most * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} holds {humidity_set} whatever the weather; at {winter_design} the window glass bears no more than {glass_bears}",
        at="control.humidity_set",
        help="choose a control that lowers the set point with the outdoor temperature, and state `follows_outdoor: yes`",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-50", name="humidifier-ignores-the-cold", severity="caution", since="0.1",
    over=humidifiers, when=is_fixed, needs=(given("control.humidity_set"), glass_bears, winter_design),
    cites=("humidifier-set-point",), check=check, nothing="the design has no humidifier", answers=("Q14",),
)  # fmt: skip
