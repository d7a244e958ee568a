"""The windows and doors of a room are larger than the wall that they are in.

A wall is stated gross, with its windows. Where they are larger than it, a wall was left out, its area is already
net, or the window faces another way. The loads of the room can't be worked out before that is settled.

Check the compass points first; a wall without its windows is stated by `net_area`.
"""


from checker.case import Case, gather, quantity
from checker.design.envelope import POINTS, Surface
from checker.quantities.envelope_parts import holes
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Wall(Record):
    """The gross surfaces of a room that face one way."""

    path: str
    surfaces: tuple[Surface, ...]


def walls(case: Case) -> list[Wall]:
    """Gross walls by room and compass point that have windows or doors."""
    envelope = case.design.envelope
    if envelope is None:
        return []
    pierced = {(each.room, each.faces) for each in envelope.windows.values()}
    pierced |= {(each.room, each.faces) for each in envelope.doors.values()}
    found: dict[tuple[object, object], list[Surface]] = {}
    for each in envelope.surfaces.values():
        if each.faces in POINTS and (each.room, each.faces) in pierced and each.net_area is None:
            found.setdefault((each.room, each.faces), []).append(each)
    return [Wall(str(surfaces[0].path), tuple(surfaces)) for surfaces in found.values()]


@quantity("area")
def wall_area(case: Case, wall: Wall) -> float:
    """Gross area. Raises Missing."""
    return sum(gather([lambda each=each: float(case.get(each, "area")) for each in wall.surfaces]))  # type: ignore[misc]


@quantity("area")
def window_and_door_area(case: Case, wall: Wall) -> float:
    """Windows and doors of the room that face the same way. Raises Missing."""
    return holes(case, wall.surfaces[0])


def check(wall: Wall, gross: float, pierced: float) -> Meets | Finding:
    """No more windows than wall."""
    if pierced <= gross * (1 + 1e-9):
        return Meets()
    surface = wall.surfaces[0]
    return Finding(
        "windows and doors of {room} facing {faces} are {window_and_door_area}, its wall there {wall_area}",
        at="area", help="check the compass points, or state the wall by `net_area`",
        numbers={"room": Num(surface.room), "faces": Num(surface.faces)},
    )


RULE = Rule(
    code="LOAD-24", name="windows-larger-than-their-wall", severity="caution", since="0.1",
    over=walls, needs=(wall_area, window_and_door_area), cites=("envelope-adds-up",), check=check,
    nothing="no wall with windows or doors is described",
)  # fmt: skip
