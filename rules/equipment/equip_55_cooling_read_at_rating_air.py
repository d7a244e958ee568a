"""The cooling capacities of the selection hold for moister room air than the house is to have.

Ratings are made with entering air of 80 degF and a wet bulb of 67. A house at 75 degF and 50 % has a wet bulb near 63:
there the coil gives about 6 % less in total, and more of it sensible. Read at 67, the total looks larger and the
latent part much larger than what will be there.

Read the maker's table at the wet bulb of the room air, mixed with the outdoor air where a duct brings it to the unit.
"""

from checker.case import Case, given
from checker.design.selection_paper import SelectionPaper
from checker.quantities.cooling_capacity import entering_wet_bulb
from checker.quantities.selection_paper import selections
from checker.rule import Finding, Meets, Num, Rule


def with_wet_bulb(case: Case) -> list[SelectionPaper]:
    """Selections that state the wet bulb of the entering air."""
    return [paper for paper in selections(case) if case.speaks_of(paper, "entering_wet_bulb")]


def takes_no_outdoor_air(case: Case, _paper: SelectionPaper) -> bool:
    """A duct brings outdoor air to a unit, which makes the entering air moister than the room."""
    return not any(unit.outdoor_air is not None for unit in case.design.equipment.values())


def check(paper: SelectionPaper, stated: float, room: float, apart: float) -> Meets | Finding:
    """Compare with the wet bulb of the rooms."""
    numbers = {"name": Num(paper.name), "room": Num(room, "temperature")}
    if stated <= room + apart + 1e-9:
        return Meets(numbers)
    return Finding(
        "the selection of {name} reads its cooling at an entering wet bulb of {stated}; the rooms are to have {room}",
        at="entering_wet_bulb",
        help="read the maker's table at {room}, the wet bulb of the room air",
        numbers={**numbers, "stated": Num(stated, "temperature")},
    )


RULE = Rule(
    code="EQUIP-55", name="cooling-read-at-rating-air", severity="caution", since="0.1",
    over=with_wet_bulb, when=takes_no_outdoor_air, needs=(given("entering_wet_bulb", "on_paper"), entering_wet_bulb),
    limits=("selection-temperature",), cites=("capacity-at-design",), check=check,
    nothing="no equipment selection states the wet bulb of its entering air", answers=("H18",),
)  # fmt: skip
