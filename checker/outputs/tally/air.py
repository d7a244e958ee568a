"""Supply against exhaust at every combination of settings, and the pressure of the house."""

from checker.case import Case, NotApplicable
from checker.outputs.tally.cells import Cell, Column, Row, Section, Table, cell
from checker.quantities.mode_figures import mode_net, mode_pressure, shown
from checker.quantities.modes import Mode

COLUMNS = (
    Column("fans bring in", "airflow"), Column("fans take out", "airflow"), Column("net out", "airflow"),
    Column("house pressure", "house_pressure"),
)  # fmt: skip


def build(case: Case) -> Section:
    """The section. NotApplicable where nothing moves air in or out."""
    found = shown(case)
    if not found.modes:
        raise NotApplicable("no fan, hood or dryer moves air in or out of the house")
    rows = tuple(Row(name_of(mode), (*flows(mode), *balance(case, mode))) for mode in found.modes)
    notes = ["Net out: what draws on the leaks of the house, stated make-up air taken off; a pressure below zero draws it down."]
    if found.of > len(found.modes):
        some = f"{len(found.modes)} of {found.of} combinations"
        notes.append(f"{some}: one demand at a time beside what runs all day, and the worst.")
    if found.without:
        notes.append(f"Without what a dryer takes out, which is not stated: {', '.join(found.without)}.")
    always = dict.fromkeys(stream.label for mode in found.modes for stream in mode.running if stream.continuous)
    if always:
        notes.append(f"All day: {', '.join(always)}; a setting on demand takes the place of that of its own device.")
    return Section("", "", (), (Table("what runs", COLUMNS, rows),), tuple(notes))


def name_of(mode: Mode) -> str:
    """What runs on demand in a mode; the worst of many is named already."""
    if not mode.path:
        return mode.name
    demanded = [stream.label for stream in mode.running if not stream.continuous]
    return " + ".join(demanded) if demanded else "all day"


def flows(mode: Mode) -> tuple[Cell, Cell]:
    """What fans bring in and take out."""
    return Cell(mode.supply, "airflow"), Cell(mode.exhaust, "airflow")


def balance(case: Case, mode: Mode) -> tuple[Cell, Cell]:
    """Net exhaust, and the pressure that follows."""
    pressure = cell(lambda: mode_pressure(case, case.design, mode))
    value = getattr(pressure.value, "value", None)
    beyond = "further out than the method goes" if getattr(pressure.value, "beyond", False) else ""
    return (
        cell(lambda: mode_net(case, case.design, mode), "airflow"),
        pressure._replace(value=value, dimension="house_pressure", reason=beyond or pressure.reason),
    )
