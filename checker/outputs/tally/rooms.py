"""What air each room gets, gives and passes on."""

from checker.case import Case, NotApplicable
from checker.design.rooms import Room
from checker.outputs.tally.cells import KNOWN, Cell, Column, Row, Section, Table, cell, lacking
from checker.quantities.load_figures import blown_in
from checker.quantities.room_figures import (
    all_day_exhaust,
    assumed_of_fresh_air,
    fresh_air,
    fresh_share,
    most_exhaust,
    taken_back,
    through_door,
    through_door_at_most,
)

COLUMNS = (
    Column("blown in", "airflow"), Column("returned", "airflow"), Column("exhaust all day", "airflow"),
    Column("exhaust at most", "airflow"), Column("by the door all day", "airflow"),
    Column("by the door at most", "airflow"), Column("outdoor air led in", "airflow"), Column("share of it", "share"),
)  # fmt: skip


def build(case: Case) -> Section:
    """The section. NotApplicable where no room is described, or no air is told of any."""
    rows = tuple(Row(room.name, room_cells(case, room)) for room in case.design.rooms.values())
    if all(lacking(row.cells) for row in rows):
        raise NotApplicable("no air of any room is described" if rows else "no room is described")
    notes = ["By the door: what leaves a closed room by it; below zero, what must come in. Outdoor air is averaged over time."]
    assumed = cell(lambda: assumed_of_fresh_air(case, case.design))
    if assumed.state == KNOWN and assumed.value:
        notes.append(f"Assumed: {'; '.join(assumed.value)}.")
    return Section("", "", (), (Table("room", COLUMNS, rows),), tuple(notes))


def room_cells(case: Case, room: Room) -> tuple[Cell, ...]:
    """One room."""
    return (
        cell(lambda: blown_in(case, room), "airflow"),
        cell(lambda: taken_back(case, room), "airflow"),
        cell(lambda: all_day_exhaust(case, room), "airflow"),
        cell(lambda: most_exhaust(case, room), "airflow"),
        cell(lambda: through_door(case, room), "airflow"),
        cell(lambda: through_door_at_most(case, room), "airflow"),
        cell(lambda: fresh_air(case, room), "airflow"),
        cell(lambda: fresh_share(case, room), "share"),
    )
