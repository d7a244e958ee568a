"""The water of a heat pump's defrost cannot get away in winter, or makes ice where people walk.

Every defrost lets a quart or more of water out of the outdoor unit. Where its drain is plugged, or led into a pipe that
is not heated, the water freezes in the pan and grows into the coil and the fan; on a walk it is a sheet of ice.

Let it fall free onto gravel below a raised base, away from walks; where it has to be piped, show a heater for pan
and pipe.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.cold_climate import is_cold
from checker.quantities.equipment import outdoor_units
from checker.quantities.outdoor_unit import heats_in_winter, siting_of
from checker.rule import Finding, Meets, Num, Rule

FIELDS = ("defrost_drain", "drips_on_walk")


def told(case: Case) -> list[Equipment]:
    """Outdoor units of heat pumps of which the file says where their defrost water goes."""
    return [
        unit
        for unit in outdoor_units(case)
        if heats_in_winter(case, unit) and any(case.speaks_of(siting_of(unit), field) for field in FIELDS)
    ]


def freezes(case: Case, unit: Equipment) -> bool:
    """The climate is not cold."""
    return is_cold(case, unit)


@quantity()
def fault(case: Case, unit: Equipment) -> str:
    """What is wrong with the way of the defrost water, "" for nothing; the heater is asked for where it decides."""
    siting = siting_of(unit)
    drain = case.maybe(siting, "defrost_drain")
    if drain == "plugged":
        return "the drain holes of {unit} are plugged: defrost water freezes in its pan"
    if drain == "piped" and not case.get(siting, "base_heater"):
        return "the defrost water of {unit} is piped away without a heater, and freezes in pan and pipe"
    if case.maybe(siting, "drips_on_walk"):
        return "the defrost water of {unit} drips where people walk, and freezes there"
    return ""


def check(unit: Equipment, wrong: str) -> Meets | Finding:
    """Any fault is the finding."""
    numbers = {"unit": Num(unit.name)}
    if not wrong:
        return Meets(numbers)
    return Finding(
        wrong,
        at="siting",
        help="let it fall free onto gravel away from walks, or show a heater for the pan and the pipe",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-43", name="defrost-water-can-freeze", severity="caution", since="0.1",
    over=told, when=freezes, needs=(fault,), cites=("defrost-water-gets-away",), check=check,
    nothing="nothing says where the defrost water of a heat pump goes", answers=("I19",),
)  # fmt: skip
