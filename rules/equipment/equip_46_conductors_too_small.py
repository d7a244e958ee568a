"""The conductors that feed a unit carry less than its nameplate asks for.

The minimum circuit ampacity on the nameplate is what the conductors must carry all day, the largest motor counted
with its surplus. Smaller wire runs hot inside walls and terminals, where nobody sees it.

Choose conductors of that ampacity or more at the temperature of their terminals; an electrician sizes them.
"""

from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.rule import Finding, Meets, Num, Rule


def with_conductors(case: Case) -> list[Equipment]:
    """Equipment whose conductors are spoken of."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.electrical is not None and case.speaks_of(unit.electrical, "conductor_ampacity")
    ]


def check(unit: Equipment, conductors: float, least: float) -> Meets | Finding:
    """Compare with the nameplate."""
    numbers = {"unit": Num(unit.name)}
    if conductors >= least * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "the conductors of {unit} carry {conductor_ampacity}; its nameplate asks for {least_ampacity}",
        at="electrical.conductor_ampacity",
        help="show conductors of {least_ampacity} or more; an electrician sizes them",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-46", name="conductors-too-small", severity="caution", since="0.1",
    over=with_conductors, needs=(given("electrical.conductor_ampacity"), given("electrical.least_ampacity")),
    cites=("conductor-ampacity",), check=check, nothing="no equipment states what its conductors carry",
)  # fmt: skip
