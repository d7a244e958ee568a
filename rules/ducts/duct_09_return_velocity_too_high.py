"""Air goes through a return duct faster than the usual greatest velocity.

Returns carry the blower's noise straight to the grille, so the trade keeps them slower than supplies: 600 fpm
recommended in a trunk, 400 fpm in a branch, 700 fpm at most. A return that is too small is also the most common
reason for too much static pressure.

Make the return a size or two larger, or add a second one.
"""

from checker.design.airway import Run
from checker.quantities.duct_flow import duct_flow
from checker.quantities.duct_velocity import return_runs, velocity
from checker.rule import Finding, Meets, Num, Rule


def check(run: Run, speed: float, airflow: float, limit: float) -> Meets | Finding:
    """Compare with the limit."""
    numbers = {"run": Num(run.name), "area": Num(airflow / limit, "small_area")}
    if speed <= limit * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        "air goes through return duct {run} at {velocity}, more than {limit}",
        at="size",
        help="give it {area} of inside area or more for {duct_flow}, or add a second return",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-09", name="return-velocity-too-high", severity="caution", since="0.1",
    over=return_runs, needs=(velocity, duct_flow), limits=("return-velocity",), check=check, answers=("F47",),
    nothing="no return duct is described",
)  # fmt: skip
