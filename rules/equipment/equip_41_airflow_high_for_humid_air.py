"""A ducted unit in a humid climate moves more air for its capacity than dries it well.

The same capacity over more air gives a warmer coil, and a warmer coil condenses less. In a humid climate 350 cfm for
each ton is usual; 450 is for the dry one. A warm coil shows on the hygrometer, not on the thermometer.

Set the blower to a lower speed by the maker's table, within its range, and take capacity and duct losses there.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.climate import zone
from checker.quantities.equipment import gives
from checker.quantities.sizing import airflow_for_capacity, unit_airflow
from checker.rule import Finding, Meets, Num, Rule

DUCTED = ("air handler", "packaged unit", "heat pump", "furnace")


def central_coolers(case: Case) -> list[Equipment]:
    """Central units that cool and state their airflow."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.kind in DUCTED and gives(case, unit, "cooling") and (case.speaks_of(unit, "airflow") or unit.settings)
    ]


def is_humid(case: Case, unit: Equipment) -> bool:
    """The climate zone is not one of the humid ones from 1A to 3A, or is not stated."""
    site = case.design.site
    if site is None or not case.speaks_of(site, "climate_zone"):
        return False
    return zone(case, unit) in ("0A", "1A", "2A", "3A")


@quantity("airflow", "airflow x limit / airflow for the capacity")
def greatest_airflow(case: Case, unit: Equipment) -> float:
    """Airflow up to which the unit dries the air well."""
    ratio = airflow_for_capacity(case, unit)
    return unit_airflow(case, unit) * float(case.limit("airflow-for-humid-air")) / ratio if ratio > 0.0 else 0.0


def check(unit: Equipment, flow: float, ratio: float, _greatest: float, most: float) -> Meets | Finding:
    """Compare the airflow for the capacity with its limit."""
    numbers = {"unit": Num(unit.name), "ratio": Num(ratio, "airflow_per_heat")}
    if ratio <= most * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} moves {unit_airflow} for its cooling capacity, {ratio} in a humid climate, where {limit} or less dries better",
        at="airflow" if unit.airflow is not None else "settings",
        help="set the blower at {greatest_airflow} or less, within the range of the maker's table",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-41", name="airflow-high-for-humid-air", severity="note", since="0.1",
    over=central_coolers, when=is_humid, needs=(unit_airflow, airflow_for_capacity, greatest_airflow),
    limits=("airflow-for-humid-air",), check=check, nothing="no central unit that cools states its airflow",
    answers=("H22", "H32"),
)  # fmt: skip
