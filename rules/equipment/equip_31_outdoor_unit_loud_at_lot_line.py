"""An outdoor unit is loud at the lot line.

Sound falls by 6 dB for each doubling of the distance in the open; walls and fences near the unit throw 3 to 6 dB
of it back. Most local ordinances allow between 45 and 55 dB(A) at the neighbor's at night, and a neighbor's
bedroom window is where complaints come from.

Move the unit away from the lot line or to another side of the house, choose a quieter one, and look up the local
ordinance.
"""

from checker.design.equipment import Equipment
from checker.physics.sound import distance_of_level
from checker.quantities.outdoor_unit import (
    level_at_lot_line,
    sound_field,
    to_lot_line,
    with_sound_levels,
)
from checker.rule import Finding, Meets, Num, Rule


def check(unit: Equipment, level: float, distance: float, most: float) -> Meets | Finding:
    """Compare the level there with the usual limit."""
    numbers = {
        "unit": Num(unit.name),
        "far_enough": Num(distance_of_level(level, distance, most), "length"),
    }
    if level <= most + 1e-9:
        return Meets(numbers)
    return Finding(
        "{unit} gives about {level_at_lot_line} at the lot line {to_lot_line} away; neighbors expect {limit} or less",
        at=sound_field(unit),
        help="move {unit} to {far_enough} from the lot line, or choose a quieter one; look up the local ordinance",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-31", name="outdoor-unit-loud-at-lot-line", severity="note", since="0.1",
    over=with_sound_levels, needs=(level_at_lot_line, to_lot_line), limits=("lot-line-sound",), check=check,
    nothing="no outdoor unit states its sound level", answers=("I21",),
)  # fmt: skip
