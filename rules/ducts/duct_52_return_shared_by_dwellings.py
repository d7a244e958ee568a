"""One heating or cooling system serves several dwelling units.

Air that returns from one dwelling and is supplied to the next carries smells, smoke, germs and, in a fire, fire
gases across the separation between them. The code keeps the return air of each dwelling in it.

Give each dwelling its own unit and ducts. Shafts that bring outdoor air to several dwellings are another matter.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.ducts import DuctSystem
from checker.quantities.duct_exposure import house_air_systems
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def dwellings_served(case: Case, system: DuctSystem) -> float:
    """Dwelling units that a system serves; one in a house of one."""
    served = case.maybe(system, "serves_dwellings")
    if served is not None:
        return float(served)
    house = case.design.house
    units = None if house is None else case.maybe(house, "dwelling_units")
    if units is None or units <= 1:
        raise NotApplicable("the building is not said to have several dwelling units")
    return float(case.get(system, "serves_dwellings"))


def check(system: DuctSystem, served: float) -> Meets | Finding:
    """No more than one."""
    if served <= 1.0:
        return Meets()
    return Finding(
        f"{system.name} serves {{count}} dwelling units and mixes their return air",
        at="serves_dwellings",
        help="give each dwelling unit a system of its own",
        numbers={"count": Num(int(served))},
    )


RULE = Rule(
    code="DUCT-52", name="return-shared-by-dwellings", severity="correction", since="0.1",
    over=house_air_systems, needs=(dwellings_served,), cites=("return-between-dwellings",), check=check,
    nothing="no duct system heats or cools rooms", answers=("F38",),
)  # fmt: skip
