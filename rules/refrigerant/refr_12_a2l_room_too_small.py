"""The room is too small for the charge of mildly flammable refrigerant that could leak into it.

If the whole charge leaks, the gas sinks and spreads below the unit. In a small room it can reach a mixture that burns.
The safety standard sets the least floor area by charge, refrigerant and height of the unit; below 6 m3 times the
lower flammable limit (about 4 lb of R-32) no room is too small. In a system of several indoor units the whole charge can
run out into the smallest of their rooms.

Remedies: a smaller charge, shorter lines, a higher mounting, a room always open to others, or the maker's detector with
its own table. The maker's table for the adopted edition governs; a certified technician settles it.
"""

from checker.case import Case
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import (
    drawn_lines,
    indoor_units,
    is_ducted,
    leak_area,
    least_leak_area,
    line_is_mildly_flammable,
    system_of,
)
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


def can_leak_into_a_room(case: Case, line: RefrigerantLine) -> bool:
    """Its refrigerant is not of group A2L, or its unit is ducted and judged by another rule."""
    return not is_ducted(indoor_units(case, line)) and line_is_mildly_flammable(case, line)


def shares_its_charge(case: Case, line: RefrigerantLine) -> bool:
    """Whether other lines of its system, or charge stated on one of them, make the room a question of the sketch."""
    lines = system_of(case, line).lines
    return len(lines) > 1 or any(case.speaks_of(each, "charge") for each in lines)


def check(line: RefrigerantLine, least: float, area: float) -> Meets | Finding:
    """Compare the room with what the charge needs."""
    if area >= least * (1.0 - 1e-9):
        return Meets()
    return Finding(
        f"a leak of {line.name} needs a room of {{least_leak_area}}; it would run into one of {{leak_area}}",
        at="room",
        help="lower the charge, mount the unit higher, or show by the maker's table that {leak_area} is enough",
    )


RULE = Rule(
    code="REFR-12", name="a2l-room-too-small", severity="correction", since="0.1",
    over=drawn_lines, when=due("charge", when=can_leak_into_a_room, early=shares_its_charge),
    needs=(least_leak_area, leak_area), cites=("leak-room-area",), check=check,
    nothing="no refrigerant line is drawn", answers=("I13", "I23"),
)  # fmt: skip
