"""What a section is made of: tables of cells, each a value with its dimension or an honest reason why there is none."""

from collections.abc import Callable, Sequence
from typing import Any

from checker.case import CannotJudge, Case, Missing, NotApplicable
from checker.outputs.record_units import declared_dimensions
from checker.physics.validity import NoSolution, OutOfRange
from checker.record import Record

KNOWN, BLANK, NEEDS, CANNOT, IDLE, BROKE = "known", "blank", "needs-info", "cannot-judge", "not-applicable", "broke"


class Cell(Record):
    """A value in SI units, or a word; `state` says why there is none, with the missing paths or the reason."""

    value: Any = None
    dimension: str = ""
    state: str = KNOWN
    missing: tuple[str, ...] = ()
    reason: str = ""


class Column(Record):
    """A column: its title, the dimension of its numbers, and a metric unit other than the usual one."""

    title: str
    dimension: str = ""
    metric: str = ""


class Row(Record):
    """A row: its name and one cell for each column; `sums` marks those below the line."""

    name: str
    cells: tuple[Cell, ...]
    sums: bool = False


class Table(Record):
    """Rows under a head, which names what the rows are."""

    head: str
    columns: tuple[Column, ...]
    rows: tuple[Row, ...]


class Fact(Record):
    """A single figure with its label."""

    label: str
    cell: Cell


class Section(Record):
    """A section of the page; `left_out` says why it has nothing to show."""

    name: str
    title: str
    facts: tuple[Fact, ...] = ()
    tables: tuple[Table, ...] = ()
    notes: tuple[str, ...] = ()
    left_out: str = ""


Build = Callable[[Case], Section]
NOTHING = Cell(state=BLANK)


def cell(route: Callable[[], Any], dimension: str = "") -> Cell:
    """The value of a route, or why there is none; a fault of ours stays in its cell."""
    try:
        return Cell(route(), dimension)
    except Missing as gap:
        return Cell(dimension=dimension, state=NEEDS, missing=gap.paths)
    except CannotJudge as why:
        return Cell(dimension=dimension, state=CANNOT, reason=str(why))
    except NotApplicable as why:
        return Cell(dimension=dimension, state=IDLE, reason=str(why))
    except (OutOfRange, NoSolution) as limit:
        return Cell(dimension=dimension, state=CANNOT, reason=f"{limit.method}: {limit.reason}")
    except Exception as fault:
        from checker.judge import from_physics

        if isinstance(fault, ValueError) and from_physics(fault):
            return Cell(dimension=dimension, state=CANNOT, reason=f"a value is impossible: {fault}")
        return Cell(dimension=dimension, state=BROKE, reason=f"a fault of airtally, please report it: {fault!r}")


def cells(route: Callable[[], Any], record: type, *fields: str) -> list[Cell]:
    """One cell for each field of a record, in the dimension that the record declares; or the same reason in all."""
    dimensions = declared_dimensions(record)
    found = cell(route)
    if found.state != KNOWN:
        return [found._replace(dimension=dimensions.get(field, "")) for field in fields]
    return [Cell(getattr(found.value, field), dimensions.get(field, "")) for field in fields]


def lacking(found: Sequence[Cell]) -> bool:
    """Whether no cell has anything to say."""
    return all(each.state in (BLANK, IDLE) for each in found)


def pruned(table: Table) -> Table:
    """The table without columns in which no row has anything to say, and without sums of nothing."""
    kept = [place for place in range(len(table.columns)) if not lacking([row.cells[place] for row in table.rows])]
    shown = [row for row in table.rows if not (row.sums and lacking(row.cells))]
    rows = [row._replace(cells=tuple(row.cells[place] for place in kept)) for row in shown]
    return Table(table.head, tuple(table.columns[place] for place in kept), tuple(rows))


def section_of(case: Case, name: str, title: str, build: Build) -> Section:
    """A section as built, with what it has; left out with the reason where its subject is absent."""
    found = cell(lambda: build(case))
    if found.state != KNOWN:
        return Section(name, title, left_out=reason(found))
    made: Section = found.value
    tables = tuple(table for table in map(pruned, made.tables) if table.columns and table.rows)
    return made._replace(name=name, title=title, tables=tables)


def reason(found: Cell, most: int = 4) -> str:
    """Why a cell has no value, in words."""
    if found.state != NEEDS:
        return found.reason
    more = f" and {len(found.missing) - most} more" if len(found.missing) > most else ""
    return f"needs {', '.join(found.missing[:most])}{more}"
