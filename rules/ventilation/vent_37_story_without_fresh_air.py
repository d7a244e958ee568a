"""No fresh air is led to a story on which people live, and no fan draws air through it.

Outdoor air that enters and leaves on one story stays there: warm air rises and cool air sinks, and a stair alone mixes
two stories slowly and not in every season. Bedrooms are judged one by one by a rule of their own.

The usual cause is a supply upstairs, where the attic is, with the bath fan beside it. Lead part of the fresh air to the
other story, or let an exhaust that runs all day draw from there.
"""


from checker.case import Case, NotApplicable, quantity
from checker.design.fields import fold
from checker.design.rooms import Room
from checker.quantities.fresh_air import is_supplied, reach
from checker.quantities.room_uses import room_use, rooms_used_as
from checker.quantities.whole_house import needed
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

LIVED_IN = ("living", "dining", "kitchen", "office")


class Story(Record):
    """The rooms of one story in which people live; `path` is the first of theirs by name."""

    path: str
    name: str
    rooms: tuple[Room, ...]


def stories(case: Case) -> list[Story]:
    """Stories without bedrooms, where rooms tell of two stories or more and fans bring air in."""
    needed(case, case.design)
    if not is_supplied(case, case.design):
        raise NotApplicable("no fan brings in outdoor air: it comes in everywhere")
    by_level: dict[str, list[Room]] = {}
    for room in rooms_used_as(case, "bedroom", *LIVED_IN):
        if room.level is not None:
            by_level.setdefault(fold(room.level), []).append(room)
    if len(by_level) < 2:
        return []
    return [
        Story(min(room.path for room in rooms), level, tuple(rooms))
        for level, rooms in by_level.items()
        if all(room_use(case, room) in LIVED_IN for room in rooms)
    ]


@quantity()
def reached(case: Case, story: Story) -> bool:
    """Whether fresh air reaches any of its rooms."""
    return any(reach(case, room).reached for room in story.rooms)


def check(story: Story, reached: bool) -> Meets | Finding:
    """Some room of the story must be reached."""
    if reached:
        return Meets()
    return Finding(
        "no fresh air is led to the {story} story, and no fan that runs all day draws air through it",
        help="lead part of the outdoor air to that story, or exhaust from it all day",
        numbers={"story": Num(story.name)},
    )


RULE = Rule(
    code="VENT-37", name="story-without-fresh-air", severity="note", since="0.1",
    over=stories, needs=(reached,), cites=("fresh-air-to-stories",), check=check,
    nothing="every story that rooms tell of has bedrooms, or only one is told of",
)  # fmt: skip
