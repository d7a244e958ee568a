"""A dehumidifier is to be set, or can only be set, to air that is too damp.

From 60 % relative humidity on, dust mites thrive, carpets smell and cold supply ducts and grilles sweat. A dehumidifier
that waits until then protects nothing; one that is set to 50 to 55 % has something in hand.

State the set point, or choose a control that goes lower.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.fans import Control
from checker.each import blank
from checker.quantities.latent_balance import dehumidifiers
from checker.rule import Finding, Meets, Num, Rule


def control_of(unit: Equipment) -> Control:
    """The control of a unit; an empty one where it states none."""
    control: Control = unit.control or blank(Control, path_of(unit, "control"))
    return control


def set_dehumidifiers(case: Case) -> list[Equipment]:
    """Dehumidifiers that say anything of their set point."""
    fields = ("humidity_set", "humidity_low")
    return [each for each in dehumidifiers(case) if any(case.speaks_of(control_of(each), field) for field in fields)]


@quantity("relative_humidity", "the set point; else the lowest that the control can be set to")
def set_point(case: Case, unit: Equipment) -> float:
    """Humidity that a dehumidifier is set to."""
    control = control_of(unit)
    stated = case.maybe(control, "humidity_set")
    lowest = case.maybe(control, "humidity_low") if stated is None else stated
    if lowest is None:
        raise Missing(path_of(control, "humidity_set"))
    return float(lowest)


def check(unit: Equipment, found: float, limit: float) -> Meets | Finding:
    """Compare the set point with the most that is good."""
    numbers = {"unit": Num(unit.name)}
    if found <= limit * (1 + 1e-9):
        return Meets(numbers)
    stated = control_of(unit).humidity_set is not None
    words = "is set to {set_point}" if stated else "can be set to {set_point} at the lowest"
    return Finding(
        f"{{unit}} {words}, above {{limit}}",
        at="control.humidity_set" if stated else "control.humidity_low",
        help="set it to 50 to 55 % in summer, by a control that goes that low",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-49", name="dehumidifier-set-too-damp", severity="note", since="0.1",
    over=set_dehumidifiers, needs=(set_point,), limits=("summer-humidity-most",), check=check,
    nothing="no dehumidifier that dries the rooms states its set point", answers=("Q14",),
)  # fmt: skip
