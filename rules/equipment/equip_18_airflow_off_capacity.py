"""A ducted cooling unit moves too little or too much air for its capacity.

Too little air makes the coil too cold: it frosts, and the unit loses capacity. Too much makes it too warm to dry
the air. The trade reckons with about 400 cfm for each ton, less in humid and more in dry climates; slim-duct units
are built for other figures. Thin air at altitude counts by its mass.

Set the blower speed by the maker's table, or change the duct so that it gets there.
"""


from checker.case import Case, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.fields import AirflowPerHeat
from checker.quantities.climate import is_warm_and_humid
from checker.quantities.equipment import gives, outdoor_of
from checker.quantities.sizing import airflow_for_capacity, unit_airflow
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule
from checker.units import parse

DUCTED = ("slim duct unit", "air handler", "packaged unit", "heat pump", "air conditioner", "furnace")


class Range(Record):
    """Least and greatest airflow for the capacity, m3/J."""

    least: AirflowPerHeat
    most: AirflowPerHeat


def ducted_coolers(case: Case) -> list[Equipment]:
    """Ducted units that cool."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.kind in DUCTED and gives(case, unit, "cooling") and speaks_of_air(case, unit)
    ]


def speaks_of_air(case: Case, unit: Equipment) -> bool:
    """Whether the file says anything of a unit's airflow; a heat pump without it is an outdoor unit."""
    said = case.speaks_of(unit, "airflow") or case.speaks_of(unit, "settings")
    return said or (unit.kind in ("slim duct unit", "air handler") and outdoor_of(case, unit) is not None)


@quantity()
def usual_range(case: Case, unit: Equipment) -> Range:
    """Range of airflow for the capacity that is usual for its kind."""
    table = case.limit("airflow-for-capacity")
    row = table.get(unit.kind, table["humid climate" if is_warm_and_humid(case, unit) else "usual"])
    capacity = parse(row["of"], "heat_rate")
    return Range(parse(row["least"], "airflow") / capacity, parse(row["most"], "airflow") / capacity)


def check(unit: Equipment, flow: float, ratio: float, usual: Range) -> Meets | Finding:
    """Compare with both ends."""
    numbers = {
        "unit": Num(unit.name),
        "least": Num(flow * usual.least / ratio if ratio else 0.0, "airflow"),
        "most": Num(flow * usual.most / ratio if ratio else 0.0, "airflow"),
        "capacity": Num(flow / ratio if ratio else 0.0, "heat_rate"),
    }
    if usual.least * (1 - 1e-9) <= ratio <= usual.most * (1 + 1e-9):
        return Meets(numbers)
    word = "little" if ratio < usual.least else "much"
    return Finding(
        "{unit} moves {unit_airflow} for its cooling capacity, {word} for a unit that works best between {least} and "
        "{most}",
        at=path_of(unit, "airflow").removeprefix(f"{unit.path}.") if unit.airflow is not None else "settings",
        help="set the blower between {least} and {most} by the maker's table, or change the ducts to reach it",
        numbers={**numbers, "word": Num(word)},
    )


RULE = Rule(
    code="EQUIP-18", name="airflow-off-capacity", severity="caution", since="0.1",
    over=ducted_coolers, needs=(unit_airflow, airflow_for_capacity, usual_range), cites=("airflow-for-capacity",),
    check=check, nothing="no ducted unit is said to cool", answers=("H22",),
)  # fmt: skip
