"""The blower of the heating and cooling takes much power for the air that it moves.

A blower that runs a few thousand hours a year costs as much as it heats and cools the air it fights through narrow
ducts and dirty filters; in summer its heat must be cooled away again. Good systems take 0.3 to 0.4 W for each cfm.

Widen what resists most (filter, return), and choose a motor with electronic commutation.
"""

from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.quantities.sizing import unit_airflow
from checker.rule import Finding, Meets, Num, Rule

DUCTED = ("slim duct unit", "air handler", "furnace", "packaged unit")


def blowers(case: Case) -> list[Equipment]:
    """Ducted equipment that states the power of its blower."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.kind in DUCTED
        and (case.speaks_of(unit, "power") or any(case.speaks_of(s, "power") for s in unit.settings.values()))
    ]


@quantity("specific_fan_power", "power / airflow")
def power_per_flow(case: Case, unit: Equipment) -> float:
    """Power for each flow: of the rated airflow, else of the fastest setting that states its power."""
    stated = case.maybe(unit, "power")
    if stated is not None:
        flow = unit_airflow(case, unit)
        return float(stated) / flow if flow > 0 else 0.0
    ratios = []
    for setting in unit.settings.values():
        power, flow = case.maybe(setting, "power"), case.maybe(setting, "airflow")
        if power is not None and flow:
            ratios.append((float(flow), float(power) / float(flow)))
    if not ratios:
        raise Missing(f"{unit.path}.airflow")
    return max(ratios)[1]


def check(unit: Equipment, ratio: float, most: float) -> Meets | Finding:
    """Compare with the usual limit."""
    if ratio <= most * (1 + 1e-9):
        return Meets()
    return Finding(
        "the blower of {unit} takes {power_per_flow}; good systems stay below {limit}",
        at="power" if unit.power is not None else "settings",
        help="widen filter and return, or choose an electronically commutated motor, to get below {limit}",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="ENER-10", name="blower-takes-too-much-power", severity="note", since="0.1",
    over=blowers, needs=(power_per_flow,), limits=("blower-power",), check=check,
    nothing="no ducted equipment states the power of its blower", answers=("Q12", "R20"),
)  # fmt: skip
