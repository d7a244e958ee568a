"""A heat pump, air conditioner or furnace shares its branch circuit.

Compressors and blowers start with several times their running current. On a shared circuit lights dim, breakers
trip on the coldest morning, and a fault elsewhere switches the heating off.

Show a circuit of its own for each unit, sized by its nameplate. An electrician installs it.
"""

from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.quantities.equipment import outdoor_units
from checker.rule import Finding, Meets, Num, Rule


def with_electrics(case: Case) -> list[Equipment]:
    """Outdoor units, furnaces, boilers and air handlers whose electrics are stated."""
    outdoors = outdoor_units(case)
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.electrical is not None and (unit in outdoors or unit.kind in ("furnace", "boiler", "air handler"))
    ]


def check(unit: Equipment, dedicated: bool) -> Meets | Finding:
    """A shared circuit is the finding."""
    if dedicated:
        return Meets()
    return Finding(
        "the circuit of {unit} feeds other things as well",
        at="electrical.dedicated_circuit",
        help="show a branch circuit of its own for {unit}; an electrician installs it",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-34", name="circuit-shared", severity="caution", since="0.1",
    over=with_electrics, needs=(given("electrical.dedicated_circuit"),), cites=("dedicated-circuit",), check=check,
    nothing="nothing says how the heating and cooling equipment is fed",
)  # fmt: skip
