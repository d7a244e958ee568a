"""An outdoor unit stands in salt air without protection against it.

Salt eats the aluminum fins and the steel cabinet: near the surf or beside a salted road a coil can be gone within
five years. Makers offer coated coils and cabinets for such places, and most warranties ask for them.

Choose the protected version, put the unit on the side away from the sea or the road, and rinse it as its maker says.
"""

from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.quantities.equipment import outdoor_units
from checker.quantities.outdoor_unit import siting_of
from checker.rule import Finding, Meets, Num, Rule


def in_salt_air(case: Case) -> list[Equipment]:
    """Outdoor units that salt reaches, or of which that is to be decided."""
    return [
        unit
        for unit in outdoor_units(case)
        if case.speaks_of(siting_of(unit), "salt_air") and siting_of(unit).salt_air is not False
    ]


def check(unit: Equipment, _reached: bool, protected: bool) -> Meets | Finding:
    """A unit without protection is the finding."""
    numbers = {"unit": Num(unit.name)}
    if protected:
        return Meets(numbers)
    return Finding(
        "salt reaches {unit}, whose coil and cabinet are not protected against it",
        at="siting.coil_protected",
        help="choose the version that its maker protects against salt, or put {unit} where none reaches it",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-53", name="outdoor-unit-in-salt-air", severity="note", since="0.1",
    over=in_salt_air, needs=(given("siting.salt_air"), given("siting.coil_protected")), cites=("salt-air",),
    check=check, nothing="no outdoor unit is said to stand in salt air",
)  # fmt: skip
