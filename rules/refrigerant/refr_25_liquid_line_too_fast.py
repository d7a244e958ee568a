"""The liquid runs too fast through its line.

The liquid of a cooling system fills a thin pipe. In a pipe that is too thin for the capacity it loses pressure, boils
before the valve and hisses, and where a valve shuts it hammers.

The usual cause is an old line set that is used again for a larger unit. Take the sizes of the unit's maker; they go
before this rule of thumb. Ductless units expand the liquid outdoors and are not judged by this.
"""

from checker.case import CannotJudge, Case, gather, quantity
from checker.design.refrigerant import RefrigerantLine
from checker.physics.refrigerant import TUBE_WALL, liquid_velocity
from checker.physics.validity import OutOfRange
from checker.quantities.refrigerant import designation, drawn_lines, expands_indoors, indoor_units, system_of
from checker.quantities.sizing import cooling_of, full_of
from checker.rule import Finding, Meets, Rule


def has_liquid_line(case: Case, line: RefrigerantLine) -> bool:
    """The size of its liquid line is not stated, or the liquid expands outdoors."""
    return expands_indoors(case, line) and case.speaks_of(line, "liquid")


@quantity("heat_rate")
def capacity(case: Case, line: RefrigerantLine) -> float:
    """Cooling capacity of the units that the line feeds."""
    return sum(gather([lambda unit=unit: full_of(case, cooling_of(case, unit)) for unit in indoor_units(case, line)]))  # type: ignore[misc]


@quantity("velocity", "capacity / (latent heat x density) / inside area", "energy balance of the evaporator")
def liquid_speed(case: Case, line: RefrigerantLine) -> float:
    """Velocity of the liquid on a hot day. CannotJudge for a refrigerant without properties, or a pipe of no inside."""
    inside = float(case.get(line, "liquid")) - 2.0 * TUBE_WALL
    name, warm = designation(case, system_of(case, line)), float(case.limit("liquid-line-temperature"))
    if inside <= 0.0 or capacity(case, line) <= 0.0:
        raise CannotJudge(f"the liquid line of {line.name} has no inside, or carries nothing")
    try:
        return liquid_velocity(name, capacity(case, line), warm, inside)
    except OutOfRange as problem:
        raise CannotJudge(problem.reason) from None


def check(line: RefrigerantLine, speed: float, _load: float, most: float) -> Meets | Finding:
    """Compare the velocity with what is usually allowed."""
    if speed <= most * (1.0 + 1e-9):
        return Meets()
    return Finding(
        f"the liquid of {line.name} runs at {{liquid_speed}} for {{capacity}} of cooling, faster than {{limit}}",
        at="liquid",
        help="choose a larger liquid line by the maker's table",
    )


RULE = Rule(
    code="REFR-25", name="liquid-line-too-fast", severity="note", since="0.1",
    over=drawn_lines, when=has_liquid_line, needs=(liquid_speed, capacity), limits=("liquid-line-velocity",),
    cites=("liquid-line-temperature",), check=check, nothing="no refrigerant line is drawn",
)  # fmt: skip
