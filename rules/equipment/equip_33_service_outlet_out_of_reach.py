"""No service outlet is near the outdoor unit, or it goes dead with the unit.

Service needs light, a vacuum pump and a recovery machine. Without an outlet nearby cords are run through doors and
puddles; one that hangs on the unit's own disconnect is dead when it is needed.

Show an outlet within 25 ft on the level of the unit, fed from another circuit. An electrician installs it.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import outdoor_units
from checker.quantities.outdoor_unit import electrical_of
from checker.rule import Finding, Meets, Num, Rule


def with_electrics(case: Case) -> list[Equipment]:
    """Outdoor units whose electrics are spoken of."""
    return [unit for unit in outdoor_units(case) if case.speaks_of(unit, "electrical")]


@quantity()
def fault(case: Case, unit: Equipment) -> str:
    """What is wrong with the outlet apart from its distance, "" for nothing."""
    electrical = electrical_of(unit)
    if case.maybe(electrical, "outlet") is False:
        return "no service outlet is near {unit}"
    if case.maybe(electrical, "outlet_after_disconnect"):
        return "the service outlet of {unit} is fed from the load side of its disconnect, and is dead with it"
    if case.maybe(electrical, "outlet_same_level") is False:
        return "the service outlet of {unit} is on another level"
    return ""


@quantity("length")
def outlet_distance(case: Case, unit: Equipment) -> float:
    """Distance to the outlet; not asked where something else is wrong with it."""
    return 0.0 if fault(case, unit) else float(case.get(electrical_of(unit), "outlet_distance"))


def check(unit: Equipment, wrong: str, distance: float, most: float) -> Meets | Finding:
    """Any fault, or too great a distance, is the finding."""
    if not wrong and distance <= most * (1 + 1e-9):
        return Meets()
    return Finding(
        wrong or "the service outlet is {outlet_distance} from {unit}, farther than {limit}",
        at="electrical",
        help="show an outlet within {limit} on the level of {unit}, on another circuit; an electrician installs it",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-33", name="service-outlet-out-of-reach", severity="correction", since="0.1",
    over=with_electrics, needs=(fault, outlet_distance), limits=("service-outlet",), check=check,
    nothing="nothing says how an outdoor unit is fed", answers=("I16",),
)  # fmt: skip
