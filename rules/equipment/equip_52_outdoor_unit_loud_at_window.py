"""An outdoor unit is loud outside a bedroom window.

A window ajar takes 10 to 15 dB off what stands outside it, and people sleep badly above 30 dB. A unit below the
bedroom, or across from the neighbor's, is what they complain of; in defrost it is louder than its rating.

Move the unit to a side without bedrooms, choose a quieter one, or put it farther away.
"""

from checker.case import Case
from checker.design.equipment import Equipment
from checker.physics.sound import distance_of_level
from checker.quantities.outdoor_unit import (
    level_at_window,
    siting_of,
    sound_field,
    to_bedroom_window,
    with_sound_levels,
)
from checker.rule import Finding, Meets, Num, Rule


def near_windows(case: Case) -> list[Equipment]:
    """Outdoor units whose distance to a bedroom window and sound are stated."""
    return [unit for unit in with_sound_levels(case) if case.speaks_of(siting_of(unit), "to_bedroom_window")]


def check(unit: Equipment, level: float, distance: float, most: float) -> Meets | Finding:
    """Compare the level there with the usual limit."""
    numbers = {
        "unit": Num(unit.name),
        "far_enough": Num(distance_of_level(level, distance, most), "length"),
    }
    if level <= most + 1e-9:
        return Meets(numbers)
    return Finding(
        "{unit} gives about {level_at_window} outside the bedroom window {to_bedroom_window} away; {limit} or less lets "
        "people sleep",
        at=sound_field(unit),
        help="move {unit} to {far_enough} from the window or to another side, or choose a quieter one",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-52", name="outdoor-unit-loud-at-window", severity="note", since="0.1",
    over=near_windows, needs=(level_at_window, to_bedroom_window), limits=("bedroom-window-sound",), check=check,
    nothing="no outdoor unit states its sound and its distance to a bedroom window", answers=("I21",),
)  # fmt: skip
