"""An air conditioner in the southwest is rated below the least efficiency at 95 degF.

Where the hottest hours decide what the grid must carry, a split air conditioner must also reach a least EER2. The
figures here are recalled: check them against the rule.

Choose a unit with a higher EER2; one of 15.2 SEER2 or more has a lower figure to meet.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.energy import cooling_size, rated_units, ratings_of
from checker.quantities.ventilation_standard import site_of
from checker.rule import Finding, Meets, Num, Rule
from checker.units import parse


def split_conditioners(case: Case) -> list[Equipment]:
    """Split air conditioners that state ratings, in the southwest."""
    if site_of(case).cooling_region != "southwest":
        return []
    return [unit for unit in rated_units(case, "seer2", "eer2") if unit.kind == "air conditioner"]


@quantity()
def eer2(case: Case, unit: Equipment) -> float:
    """Cooling efficiency at 95 F."""
    return float(case.get(ratings_of(unit), "eer2"))


@quantity()
def least_eer2(case: Case, unit: Equipment) -> float:
    """Least EER2; SEER2 and size are asked for only where they decide."""
    table, rated = case.limit("southwest-peak-efficiency"), eer2(case, unit)
    if rated >= float(table["small"]) or rated < float(table["then"]):
        return float(table["small"] if rated >= float(table["small"]) else table["then"])
    if float(case.get(ratings_of(unit), "seer2")) >= float(table["with_seer2"]):
        return float(table["then"])
    if rated < float(table["large"]):
        return float(table["large"])
    large = cooling_size(case, unit) >= parse(table["large_from"], "heat_rate")
    return float(table["large" if large else "small"])


def check(unit: Equipment, rated: float, least: float) -> Meets | Finding:
    """Compare with the minimum."""
    if rated >= least * (1 - 1e-9):
        return Meets()
    return Finding(
        "{unit} is rated at {eer2} EER2, below the {least_eer2} of the southwest",
        at="ratings.eer2",
        help="choose an air conditioner of {least_eer2} EER2 or more, or one of 15.2 SEER2 with the lower figure",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="ENER-04", name="peak-efficiency-below-minimum", severity="caution", since="0.1",
    over=split_conditioners, needs=(eer2, least_eer2), cites=("southwest-peak-efficiency",), check=check,
    nothing="no split air conditioner of the southwest states its ratings", answers=("R04",),
)  # fmt: skip
