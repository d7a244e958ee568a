"""The breaker or fuse of a unit does not fit its nameplate.

The nameplate states the least ampacity of the circuit and the greatest overcurrent device. A larger device lets the
wiring of the unit overheat before it trips; a smaller one trips on a cold start.

Choose the size between the two figures on the nameplate; an electrician sizes wire and device.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.outdoor_unit import electrical_of
from checker.rule import Finding, Meets, Num, Rule


def with_breakers(case: Case) -> list[Equipment]:
    """Equipment whose overcurrent device or nameplate is spoken of."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.electrical is not None
        and any(case.speaks_of(electrical_of(unit), each) for each in ("overcurrent", "greatest_overcurrent", "least_ampacity"))
    ]


@quantity()
def nameplate(case: Case, unit: Equipment) -> tuple[float, float]:
    """(minimum circuit ampacity, greatest overcurrent device), A."""
    least, greatest = case.all(electrical_of(unit), "least_ampacity", "greatest_overcurrent")
    return float(least), float(greatest)


@quantity("current")
def breaker(case: Case, unit: Equipment) -> float:
    """Rating of the overcurrent device."""
    return float(case.get(electrical_of(unit), "overcurrent"))


def check(unit: Equipment, rating: float, plate: tuple[float, float]) -> Meets | Finding:
    """Compare with both figures."""
    least, most = plate
    numbers = {"unit": Num(unit.name), "least": Num(least, "current"), "most": Num(most, "current")}
    if least * (1 - 1e-9) <= rating <= most * (1 + 1e-9):
        return Meets(numbers)
    bound = "greatest device on its nameplate is {most}" if rating > most else "circuit must carry {least}"
    return Finding(
        f"{{unit}} is protected by {{breaker}}; the {bound}",
        at="electrical.overcurrent",
        help="choose a device between {least} and {most}; an electrician sizes it and the wire",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-35", name="overcurrent-off-nameplate", severity="caution", since="0.1",
    over=with_breakers, needs=(breaker, nameplate), cites=("nameplate-overcurrent",), check=check,
    nothing="no equipment states its overcurrent device",
)  # fmt: skip
