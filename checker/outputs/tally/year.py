"""The humidity that the ventilation leaves in winter, and what its air takes in a year without recovery and with it."""

from checker.case import Case, NotApplicable
from checker.outputs.tally.cells import KNOWN, Cell, Column, Fact, Row, Section, Table, cell
from checker.quantities.moisture_balance import humidity_left_by_fans
from checker.quantities.recovery_options import Comparison, Option
from checker.quantities.recovery_worth import as_designed, offers, recovery_parts, ventilation_flow
from checker.quantities.whole_house import is_ventilated
from checker.quantities.winter_figures import humidity_with_leakage

COLUMNS = (
    Column("heating", "energy"), Column("cooling", "energy"), Column("drying", "energy"), Column("fans", "energy"),
    Column("cost of the air", "money"), Column("cost of the fans", "money"), Column("upkeep", "money"),
    Column("cost in all", "money"),
)  # fmt: skip


def build(case: Case) -> Section:
    """The section. NotApplicable where nothing ventilates the house."""
    if not is_ventilated(case, case.design):
        raise NotApplicable("no fan is there to ventilate the whole house")
    facts = [
        Fact("ventilation, averaged over time", cell(lambda: ventilation_flow(case, case.design), "airflow")),
        Fact("indoor humidity on the winter design day by the fans alone",
             cell(lambda: humidity_left_by_fans(case, case.design), "relative_humidity")),
        Fact("and with air leakage", cell(lambda: humidity_with_leakage(case, case.design), "relative_humidity")),
    ]  # fmt: skip
    found = comparison(case)
    if found.state != KNOWN:
        return Section("", "", (*facts, Fact("energy of a year", found)))
    compared: Comparison = found.value
    options = (compared.without, *compared.options)
    rows = tuple(Row(option.name, option_cells(option, compared.warm_part)) for option in options)
    return Section("", "", tuple(facts), (Table("in a year", COLUMNS, rows),), tuple(notes(compared)))


def comparison(case: Case) -> Cell:
    """The recovery units of the design against none; else the usual ones against what the design has."""
    design = case.design
    return cell(lambda: as_designed(case, design) if recovery_parts(case, design) else offers(case, design))


def option_cells(option: Option, warm_part: bool) -> tuple[Cell, ...]:
    """One way of ventilating."""
    cool = Cell(option.cooling, "energy"), Cell(option.dehumidifying, "energy")
    unknown = Cell(state="not-applicable", reason="the warm part of the year is not stated")
    return (
        Cell(option.heating, "energy"), *(cool if warm_part else (unknown, unknown)), Cell(option.fans, "energy"),
        Cell(option.air_cost, "money"), Cell(option.fan_cost, "money"), Cell(option.upkeep, "money"),
        Cell(option.cost, "money"),
    )  # fmt: skip


def notes(compared: Comparison) -> list[str]:
    """What the comparison is reckoned with."""
    lines = [f"Heat by {compared.heat.source}: {compared.heat.efficiency:.3g} for each unit of energy, {compared.heat.basis}."]
    if compared.cool is not None and compared.warm_part:
        lines.append(f"Cooling: {compared.cool.efficiency:.3g} for each unit of energy, {compared.cool.basis}.")
    if not compared.warm_part:
        lines.append("Cooling and drying are left out: the warm part of the year is not stated.")
    return lines
