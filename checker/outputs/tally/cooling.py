"""Cooling loads, sensible by their causes and latent: a row for each room, their sum, the house as one block."""

from functools import partial

from checker.case import Case, NotApplicable
from checker.design.rooms import Room
from checker.outputs.tally.cells import NOTHING, Fact, Row, Section, Table, cell, cells
from checker.outputs.tally.heating import parts
from checker.outputs.tally.load_page import PER_AREA, SUPPLY, basis_notes, load_column, speaks_of_loads
from checker.quantities.block_loads import block_gains
from checker.quantities.cooling_terms import daily_range
from checker.quantities.equipment import heated_rooms
from checker.quantities.load_figures import (
    blown_in,
    cooling_basis,
    cooling_difference,
    house_cooling_per_area,
    paper_cooling,
    room_cooling_per_area,
    rooms_cooling_per_area,
    stated_sum,
    told_load,
    usual_conditions,
)
from checker.quantities.load_parts import Gains, gains_of_rooms, latent_of_rooms, room_gains_by_part
from checker.quantities.loads import block_cooling_latent, room_cooling_latent
from checker.quantities.moist_air import indoor_summer, outdoor_summer
from checker.quantities.stated_loads import stated_room_cooling

PARTS = {
    "opaque": "walls, roofs, floors", "windows": "windows", "outdoor_air": "outdoor air", "internal": "people, appliances",
    "ducts": "ducts",
}  # fmt: skip
FIELDS = (*PARTS, "total")


def build(case: Case) -> Section:
    """The section. NotApplicable where the file holds nothing of loads."""
    rooms = heated_rooms(case)
    if not speaks_of_loads(case, "cooling_load", "cooling_sensible"):
        raise NotApplicable("the file holds no envelope and states no cooling load")
    worked = case.design.envelope is not None
    columns = (
        *(load_column(title) for title in PARTS.values()), load_column("sensible, worked out"),
        load_column("latent"), PER_AREA, load_column("sensible, stated"), SUPPLY,
    ) if worked else (load_column("sensible, stated"), PER_AREA, SUPPLY)  # fmt: skip
    rows = [room_row(case, room, worked) for room in rooms]
    notes = basis_notes(cell(lambda: cooling_basis(case, case.design)), usual_conditions(case, "cooling")) if worked else []
    return Section("", "", facts(case), (Table("room", columns, (*rows, *sums(case, worked))),), tuple(notes))


def facts(case: Case) -> tuple[Fact, ...]:
    """The design conditions, and the latent load."""
    design = case.design
    return (
        Fact("outdoors", cell(lambda: outdoor_summer(case, design).temperature, "temperature")),
        Fact("outdoor dew point", cell(lambda: outdoor_summer(case, design).dew_point, "temperature")),
        Fact("daily range", cell(lambda: daily_range(case), "temperature_difference")),
        Fact("indoors", cell(lambda: indoor_summer(case, design).temperature, "temperature")),
        Fact("indoor humidity", cell(lambda: indoor_summer(case, design).relative_humidity, "relative_humidity")),
        Fact("latent load of the house", cell(lambda: block_cooling_latent(case, design), "heat_rate")),
    )


def room_row(case: Case, room: Room, worked: bool) -> Row:
    """One room."""
    area, air = cell(lambda: room_cooling_per_area(case, room), "heat_flux"), cell(lambda: blown_in(case, room), "airflow")
    if not worked:
        return Row(room.name, (cell(lambda: stated_room_cooling(case, room), "heat_rate"), area, air))
    causes = parts(cells(lambda: room_gains_by_part(case, room), Gains, *FIELDS))
    latent = cell(lambda: room_cooling_latent(case, room), "heat_rate")
    return Row(room.name, (*causes, latent, area, cell(lambda: told_load(case, room, "cooling_load"), "heat_rate"), air))


def sums(case: Case, worked: bool) -> list[Row]:
    """The rooms together, the house as one block, and how far they are apart."""
    design = case.design
    stated = cell(lambda: stated_sum(case, "cooling_load"), "heat_rate")
    paper = cell(lambda: paper_cooling(case, design), "heat_rate")
    if not worked:
        return [Row("all rooms", (stated, NOTHING, NOTHING), True), Row("the house", (paper, NOTHING, NOTHING), True)]
    together = parts(cells(lambda: gains_of_rooms(case, design), Gains, *FIELDS))
    block = parts(cells(lambda: block_gains(case, design), Gains, *FIELDS))
    apart = cell(lambda: cooling_difference(case, design), "share")
    latent = cell(lambda: latent_of_rooms(case, design), "heat_rate")
    whole = cell(lambda: block_cooling_latent(case, design), "heat_rate")
    areas = [cell(partial(each, case, design), "heat_flux") for each in (rooms_cooling_per_area, house_cooling_per_area)]
    return [
        Row("all rooms", (*together, latent, areas[0], stated, NOTHING), True),
        Row("as one block", (*block, whole, areas[1], paper, NOTHING), True),
        Row("difference", (*[NOTHING] * len(PARTS), apart, NOTHING, NOTHING, NOTHING, NOTHING), True),
    ]
