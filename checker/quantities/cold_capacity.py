"""What a heat pump keeps of its rated heating capacity in the cold, by its maker's table."""

from checker.case import CannotJudge, Case
from checker.design.equipment import Equipment
from checker.physics.heat_pump import capacity_at, values_beside
from checker.quantities.heat_pump import RATING_TEMPERATURE, heating_of, points_of, table_of


def capacity_kept(case: Case, unit: Equipment) -> float:
    """Capacity at 5 F over that at 47 F."""
    points = table_of(case, unit)
    warm = capacity_at(points, RATING_TEMPERATURE)
    if warm <= 0.0:
        raise CannotJudge(f"{unit.name} is said to have no capacity at 47 degF")
    return capacity_at(points, float(case.limit("cold-rating-point"))) / warm


def most_kept(case: Case, unit: Equipment) -> float:
    """The most that the share may be: where the table has no such point, by the better of the points beside it."""
    share = capacity_kept(case, unit)
    points = points_of(case, heating_of(unit))
    warm = min(values_beside(points, RATING_TEMPERATURE))
    return max(share, max(values_beside(points, float(case.limit("cold-rating-point")))) / warm) if warm > 0.0 else share
