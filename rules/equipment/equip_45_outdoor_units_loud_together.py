"""Several outdoor units, each quiet enough, are loud at the lot line together.

Two equal sources give 3 dB more than one, four give 6 dB. Local ordinances look at the sum that a neighbor hears at
night, when all units of a house run in the cold.

Put the units on different sides of the house, choose quieter ones, or fewer. Where different lot lines are the
nearest ones, the sum does not arise.
"""


from checker.case import Case, gather, quantity
from checker.design.equipment import Equipment
from checker.physics.sound import combined_level
from checker.quantities.outdoor_unit import level_at_lot_line, with_sound_levels
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Together(Record):
    """Outdoor units that are heard together."""

    path: str
    units: tuple[Equipment, ...]


def several(case: Case) -> list[Together]:
    """The outdoor units whose sound is stated, where there are two or more."""
    units = sorted(with_sound_levels(case), key=lambda unit: str(unit.path))
    return [Together(str(units[0].path), tuple(units))] if len(units) > 1 else []


def each_alone(case: Case, together: Together) -> list[float]:
    """The level of each at the lot line. Raises Missing."""
    return gather([lambda unit=unit: level_at_lot_line(case, unit) for unit in together.units])  # type: ignore[misc]


def is_quiet_alone(case: Case, together: Together) -> bool:
    """One of them is too loud by itself."""
    return max(each_alone(case, together)) <= float(case.limit("lot-line-sound")) + 1e-9


@quantity("sound_level", "10 log10 of the sum of 10^(level / 10)", "energy sum")
def level_together(case: Case, together: Together) -> float:
    """Level of all units at a lot line that is the nearest to each of them."""
    return combined_level(each_alone(case, together))


def check(together: Together, level: float, most: float) -> Meets | Finding:
    """Compare the sum with the usual limit."""
    names = [str(unit.name) for unit in together.units]
    numbers = {"units": Num(f"{', '.join(names[:-1])} and {names[-1]}")}
    if level <= most + 1e-9:
        return Meets(numbers)
    return Finding(
        "{units} give about {level_together} together at the lot line, if the same one is the nearest to them; neighbors "
        "expect {limit} or less",
        at="siting",
        help="put them on different sides of the house, or choose quieter ones; look up the local ordinance",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-45", name="outdoor-units-loud-together", severity="note", since="0.1",
    over=several, when=is_quiet_alone, needs=(level_together,), limits=("lot-line-sound",), check=check,
    nothing="fewer than two outdoor units state how loud they are", answers=("I21",),
)  # fmt: skip
