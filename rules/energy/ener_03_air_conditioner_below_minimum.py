"""An air conditioner is rated below the federal minimum of its region.

The least SEER2 is lower in the north than in the southeast and southwest, where cooling runs longest; there a unit
must meet the region's figure in order to be installed.

Choose equipment that is rated at the minimum of the region or above.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.energy import cooling_size, is_conditioner, rated_units, ratings_of
from checker.quantities.ventilation_standard import site_of
from checker.rule import Finding, Meets, Num, Rule
from checker.units import parse


def conditioners(case: Case) -> list[Equipment]:
    """Air conditioners that state a SEER2."""
    return [unit for unit in rated_units(case, "seer2") if is_conditioner(case, unit)]


@quantity()
def seer2(case: Case, unit: Equipment) -> float:
    """Seasonal cooling efficiency."""
    return float(case.get(ratings_of(unit), "seer2"))


@quantity()
def least_seer2(case: Case, unit: Equipment) -> float:
    """Least SEER2; region and size are asked for only where they decide."""
    table = case.limit("air-conditioner-efficiency")
    if unit.kind == "packaged unit":
        return float(table["packaged"]["small"])
    rated, regions = seer2(case, unit), [table[each] for each in ("north", "southeast", "southwest")]
    figures = [float(row[size]) for row in regions for size in ("small", "large")]
    if rated >= max(figures) or rated < min(figures):
        return max(figures) if rated >= max(figures) else min(figures)
    row = table[str(case.get(site_of(case), "cooling_region"))]
    small, large = float(row["small"]), float(row["large"])
    if (rated >= small) == (rated >= large):
        return small
    return large if cooling_size(case, unit) >= parse(table["large_from"], "heat_rate") else small


def check(unit: Equipment, rated: float, least: float) -> Meets | Finding:
    """Compare with the minimum."""
    if rated >= least * (1 - 1e-9):
        return Meets()
    return Finding(
        "{unit} is rated at {seer2} SEER2, below the federal minimum of {least_seer2}",
        at="ratings.seer2",
        help="choose an air conditioner of {least_seer2} SEER2 or more",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="ENER-03", name="air-conditioner-below-minimum", severity="correction", since="0.1",
    over=conditioners, needs=(seer2, least_seer2), cites=("air-conditioner-efficiency",), check=check,
    nothing="no air conditioner states its SEER2", answers=("H33", "R01", "R02", "R03", "R06"),
)  # fmt: skip
