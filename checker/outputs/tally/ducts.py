"""Duct systems against what their movers offer, and every duct at its design airflow."""

from checker.case import Case, NotApplicable
from checker.design.airway import Airway
from checker.outputs.tally.cells import KNOWN, NEEDS, Cell, Column, Row, Section, Table, cell, cells
from checker.quantities.circuits import Circuit, at_setting, ducted_circuits
from checker.quantities.duct_figures import (
    Against,
    Line,
    against_offer,
    critical_path,
    greatest_length,
    line,
    line_name,
    lines,
)

CIRCUITS = (
    Column("airflow", "airflow"), Column("needs at best", "pressure"), Column("needs at worst", "pressure"),
    Column("offered at least", "pressure"), Column("left at worst", "pressure"), Column("total effective length", "length"),
)  # fmt: skip
LINES = (
    Column("size", "size"), Column("airflow", "airflow"), Column("velocity", "velocity"),
    Column("friction rate", "friction_rate"), Column("takes at best", "pressure"), Column("takes at worst", "pressure"),
)  # fmt: skip


def build(case: Case) -> Section:
    """The section. NotApplicable where no duct is described."""
    circuits, ducts = ducted_circuits(case), lines(case)
    if not circuits and not ducts:
        raise NotApplicable("no duct is described")
    tables = (
        Table("system", CIRCUITS, tuple(Row(circuit_name(each), circuit_cells(case, each)) for each in circuits)),
        Table("duct", LINES, tuple(Row(line_name(each), line_cells(case, each)) for each in ducts)),
    )
    ways = {circuit_name(each): cell(lambda each=each: critical_path(case, each)) for each in circuits}  # type: ignore[misc]
    notes = [f"Critical path of {name}: {way.value}." for name, way in ways.items() if way.state == KNOWN]
    return Section("", "", (), tables, ("Filters are clean. The friction rate is that at best.", *notes))


def circuit_name(circuit: Circuit) -> str:
    """The mover with its setting, and the side of a recovery unit that takes air out."""
    return f"{at_setting(circuit)}{', outgoing' if circuit.outgoing else ''}"


def circuit_cells(case: Case, circuit: Circuit) -> tuple[Cell, ...]:
    """One circuit against its mover."""
    found = cells(lambda: against_offer(case, circuit), Against, *Against._fields)
    return (*found, cell(lambda: greatest_length(case, circuit), "length"))


def line_cells(case: Case, duct: Airway) -> tuple[Cell, ...]:
    """One duct."""
    size = Cell(duct.size, "size") if duct.size is not None else Cell(state=NEEDS, missing=(f"{duct.path}.size",))
    return (size, *cells(lambda: line(case, duct), Line, *Line._fields))
