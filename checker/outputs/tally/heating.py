"""Heating loads: a row for each room, their sum, the house as one block."""

from checker.case import Case, NotApplicable
from checker.design.rooms import Room
from checker.outputs.tally.cells import NOTHING, Cell, Fact, Row, Section, Table, cell, cells
from checker.outputs.tally.load_page import PER_AREA, SUPPLY, basis_notes, load_column, speaks_of_loads
from checker.quantities.block_loads import block_losses
from checker.quantities.equipment import heated_rooms
from checker.quantities.load_figures import (
    blown_in,
    heating_basis,
    heating_difference,
    house_heating_per_area,
    paper_heating,
    room_heating_per_area,
    rooms_heating_per_area,
    stated_sum,
    told_load,
    usual_conditions,
)
from checker.quantities.load_parts import Losses, losses_of_rooms, room_losses
from checker.quantities.moist_air import indoor_winter, winter_design
from checker.quantities.stated_loads import stated_room_heating

PARTS = {
    "walls": "walls", "openings": "windows, doors", "overhead": "ceilings, roofs", "below": "floors, ground",
    "leakage": "leakage", "fan_air": "fans' air", "ducts": "ducts",
}  # fmt: skip
FIELDS = (*PARTS, "total")


def build(case: Case) -> Section:
    """The section. NotApplicable where the file holds nothing of loads."""
    rooms = heated_rooms(case)
    if not speaks_of_loads(case, "heating_load", "heating"):
        raise NotApplicable("the file holds no envelope and states no heating load")
    worked = case.design.envelope is not None
    columns = (
        *(load_column(title) for title in PARTS.values()), load_column("worked out"), PER_AREA, load_column("stated"), SUPPLY,
    ) if worked else (load_column("stated"), PER_AREA, SUPPLY)  # fmt: skip
    rows = [room_row(case, room, worked) for room in rooms]
    notes = basis_notes(cell(lambda: heating_basis(case, case.design)), usual_conditions(case, "heating")) if worked else []
    return Section("", "", facts(case), (Table("room", columns, (*rows, *sums(case, worked))),), tuple(notes))


def facts(case: Case) -> tuple[Fact, ...]:
    """The design conditions."""
    return (
        Fact("outdoors", cell(lambda: winter_design(case, case.design), "temperature")),
        Fact("indoors", cell(lambda: indoor_winter(case, case.design).temperature, "temperature")),
    )


def parts(found: list[Cell]) -> list[Cell]:
    """The cells of a load by its causes; the total in the unit of the others."""
    return [each._replace(dimension="heat_rate") for each in found]


def room_row(case: Case, room: Room, worked: bool) -> Row:
    """One room."""
    area, air = cell(lambda: room_heating_per_area(case, room), "heat_flux"), cell(lambda: blown_in(case, room), "airflow")
    if not worked:
        return Row(room.name, (cell(lambda: stated_room_heating(case, room), "heat_rate"), area, air))
    causes = parts(cells(lambda: room_losses(case, room), Losses, *FIELDS))
    return Row(room.name, (*causes, area, cell(lambda: told_load(case, room, "heating_load"), "heat_rate"), air))


def sums(case: Case, worked: bool) -> list[Row]:
    """The rooms together, the house as one block, and how far they are apart."""
    design = case.design
    stated = cell(lambda: stated_sum(case, "heating_load"), "heat_rate")
    paper = cell(lambda: paper_heating(case, design), "heat_rate")
    if not worked:
        return [Row("all rooms", (stated, NOTHING, NOTHING), True), Row("the house", (paper, NOTHING, NOTHING), True)]
    together = parts(cells(lambda: losses_of_rooms(case, design), Losses, *FIELDS))
    block = parts(cells(lambda: block_losses(case, design), Losses, *FIELDS))
    apart = cell(lambda: heating_difference(case, design), "share")
    return [
        Row("all rooms", (*together, cell(lambda: rooms_heating_per_area(case, design), "heat_flux"), stated, NOTHING), True),
        Row("as one block", (*block, cell(lambda: house_heating_per_area(case, design), "heat_flux"), paper, NOTHING), True),
        Row("difference", (*[NOTHING] * len(PARTS), apart, NOTHING, NOTHING, NOTHING), True),
    ]
