"""Air goes through a supply duct faster than the usual greatest velocity.

Fast air is loud and costs pressure: both grow with more than the square of the velocity. The trade's table
recommends 700 fpm in supply trunks and 600 fpm in branches, and stops at 900 fpm in rigid and 700 fpm in
flexible duct.

Go a size larger, split the run, or send less air through it. Where another source allows more (a lined or
small-duct system by its maker), name it under `velocity_limit_by`.
"""

from checker.design.airway import Airway
from checker.quantities.duct_flow import duct_flow, duct_label
from checker.quantities.duct_velocity import supply_ducts, velocity
from checker.rule import Finding, Meets, Num, Rule


def check(duct: Airway, speed: float, airflow: float, limits: list[float]) -> Meets | Finding:
    """Compare with the limit for rigid or flexible duct."""
    limit = limits[1] if duct.material in ("flexible", "semi-rigid aluminum") else limits[0]
    numbers = {
        "duct": Num(duct_label(duct)),
        "most": Num(limit, "velocity"),
        "area": Num(airflow / limit, "small_area"),
    }
    if speed <= limit * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        "air goes through {duct} at {velocity}, more than {most}",
        at="size",
        help="give it {area} of inside area or more for {duct_flow}",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-08", name="supply-velocity-too-high", severity="caution", since="0.1",
    over=supply_ducts, needs=(velocity, duct_flow), limits=("supply-velocity",), check=check, answers=("F45", "F46"),
    nothing="no supply duct is described",
)  # fmt: skip
