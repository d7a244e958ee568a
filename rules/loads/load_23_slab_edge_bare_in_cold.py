"""The edge of a slab is bare in a cold climate.

A slab loses its heat at the edge, where concrete meets the outside air. In a well insulated house a bare edge takes
more than all the walls together, and the floor beside it is cold and may grow mold under a cabinet.

Put insulation along the edge, down or out by two to four feet, and state it under `insulation` and `insulated`.
"""

from checker.case import Case, path_of, quantity
from checker.design.envelope import Slab
from checker.quantities.climate import zone_number
from checker.quantities.equipment import heated_rooms
from checker.rule import Finding, Meets, Num, Rule


def on_grade(case: Case) -> list[Slab]:
    """Slabs of heated rooms that lie at grade."""
    envelope = case.design.envelope
    rooms = {room.name for room in heated_rooms(case)}
    slabs = [] if envelope is None else envelope.slabs.values()
    return [each for each in slabs if (each.room in rooms or each.room is None) and not each.depth]


def in_cold(case: Case, slab: Slab) -> bool:
    """The climate is mild, or the slab has no edge outside."""
    if slab.perimeter == 0:
        return False
    return zone_number(case, slab) >= int(case.limit("slab-edge-insulation"))


@quantity("resistance")
def edge(case: Case, slab: Slab) -> float:
    """Insulation of the edge, none included. Raises Missing where nothing is said."""
    if path_of(slab, "insulation") in case.design.stated_none:
        return 0.0
    return float(case.get(slab, "insulation"))


def check(slab: Slab, edge: float) -> Meets | Finding:
    """None at all is the finding."""
    if edge > 0:
        return Meets()
    return Finding(
        "the edge of the slab {name} is not insulated",
        at="insulation", help="show R-10 along the edge, two to four feet down or out", numbers={"name": Num(slab.name)},
    )


RULE = Rule(
    code="LOAD-23", name="slab-edge-bare-in-cold", severity="caution", since="0.1",
    over=on_grade, when=in_cold, needs=(edge,), cites=("slab-edge-insulation",), check=check,
    nothing="no slab on grade is described",
)  # fmt: skip
