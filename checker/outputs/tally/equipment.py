"""What heats and cools, against the load of the rooms that it serves."""

from checker.case import Case, NotApplicable
from checker.outputs.tally.cells import KNOWN, Cell, Column, Row, Section, Table, cell, reason
from checker.quantities.equipment import Group, all_cooling, all_heating
from checker.quantities.equipment_figures import (
    balance_point,
    cooling_ratio,
    group_backup,
    heating_ratio,
    least_cooling,
    least_heating,
    sensible_cooling,
    sensible_ratio,
    served,
    total_cooling_load,
)
from checker.quantities.heat_pump import group_heat
from checker.quantities.sizing import cooling_total
from checker.quantities.unit_loads import group_cooling_sensible, group_heating_load

HEATING = (
    Column("capacity at design", "heat_rate"), Column("load", "heat_rate"), Column("capacity over load"),
    Column("least capacity", "heat_rate"), Column("balance point", "temperature"), Column("backup at design", "heat_rate"),
)  # fmt: skip
COOLING = (
    Column("total capacity", "heat_rate"), Column("total load", "heat_rate"), Column("total over load"),
    Column("sensible capacity", "heat_rate"), Column("sensible load", "heat_rate"), Column("sensible over load"),
    Column("least capacity", "heat_rate"),
)  # fmt: skip


def build(case: Case) -> Section:
    """The section. NotApplicable where nothing heats or cools."""
    heating, cooling = all_heating(case), all_cooling(case)
    if not heating and not cooling:
        raise NotApplicable("no equipment that heats or cools is described")
    tables = (
        Table("heating", HEATING, tuple(Row(group.name, heating_cells(case, group)) for group in heating)),
        Table("cooling", COOLING, tuple(Row(group.name, cooling_cells(case, group)) for group in cooling)),
    )
    rooms = {group.name: cell(lambda group=group: served(case, group)) for group in (*heating, *cooling)}  # type: ignore[misc]
    notes = [f"{name} serves {found.value}." if found.state == KNOWN else f"{name}: {reason(found)}."
             for name, found in rooms.items()]  # fmt: skip
    return Section("", "", (), tables, tuple(notes))


def heating_cells(case: Case, group: Group) -> tuple[Cell, ...]:
    """Heating of units that share rooms."""
    return (
        cell(lambda: group_heat(case, group), "heat_rate"),
        cell(lambda: group_heating_load(case, group), "heat_rate"),
        cell(lambda: heating_ratio(case, group)),
        cell(lambda: least_heating(case, group), "heat_rate"),
        cell(lambda: balance_point(case, group), "temperature"),
        cell(lambda: group_backup(case, group), "heat_rate"),
    )


def cooling_cells(case: Case, group: Group) -> tuple[Cell, ...]:
    """Cooling of units that share rooms."""
    return (
        cell(lambda: cooling_total(case, group), "heat_rate"),
        cell(lambda: total_cooling_load(case, group), "heat_rate"),
        cell(lambda: cooling_ratio(case, group)),
        cell(lambda: sensible_cooling(case, group), "heat_rate"),
        cell(lambda: group_cooling_sensible(case, group), "heat_rate"),
        cell(lambda: sensible_ratio(case, group)),
        cell(lambda: least_cooling(case, group), "heat_rate"),
    )
