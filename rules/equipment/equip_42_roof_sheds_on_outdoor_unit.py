"""A roof sheds its water and snow onto an outdoor unit.

Dripping water freezes on the fan and the grille, and a slide of snow buries or breaks the unit. Many a heat pump in
snow country fails under its own eave in the first winter.

Move the unit to a gable side or out of the drip line, show a small roof over it that keeps the maker's distances, or
a gutter with a snow guard above.
"""

from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.quantities.equipment import outdoor_units
from checker.rule import Finding, Meets, Num, Rule


def told(case: Case) -> list[Equipment]:
    """Outdoor units of which the file says whether a roof sheds onto them."""
    return [
        unit
        for unit in outdoor_units(case)
        if unit.siting is not None and case.speaks_of(unit.siting, "roof_sheds_on_it")
    ]


def check(unit: Equipment, sheds: bool) -> Meets | Finding:
    """A roof that sheds onto it is the finding."""
    numbers = {"unit": Num(unit.name)}
    if not sheds:
        return Meets(numbers)
    return Finding(
        "a roof sheds water and snow onto {unit}",
        at="siting.roof_sheds_on_it",
        help="move {unit} out of the drip line, or show a roof over it or a gutter with a snow guard",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-42", name="roof-sheds-on-outdoor-unit", severity="caution", since="0.1",
    over=told, needs=(given("siting.roof_sheds_on_it"),), cites=("outdoor-unit-out-of-drip",), check=check,
    nothing="nothing says whether a roof sheds onto an outdoor unit", answers=("I19",),
)  # fmt: skip
