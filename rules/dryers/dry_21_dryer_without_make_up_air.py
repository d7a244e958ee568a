"""A dryer that exhausts more than 200 cfm has no make-up air.

What the dryer throws out must come in elsewhere. In a tight house it comes down a flue, out of the garage, or
through the drains; where nothing comes, the clothes stay wet.

The usual cause is a large or second dryer in a tight house. Provide an opening or a fan for make-up air, or
choose a dryer that moves less.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import is_connected
from checker.rule import Finding, Meets, Rule


@quantity()
def make_up(case: Case, dryer: Dryer) -> bool:
    """Whether make-up air is shown; asked only of a large exhaust."""
    if float(case.get(dryer, "airflow")) <= case.limit("dryer-make-up-air"):
        return True
    return case.get(dryer, "make_up_air") is not None


@quantity("airflow")
def dryer_airflow(case: Case, dryer: Dryer) -> float:
    """Rated exhaust airflow of the dryer."""
    return float(case.get(dryer, "airflow"))


def check(_dryer: Dryer, airflow: float, provided: bool, most: float) -> Meets | Finding:
    """A large exhaust has make-up air."""
    if airflow <= most or provided:
        return Meets()
    return Finding(
        "this dryer exhausts {dryer_airflow}, more than {limit}, and no make-up air is provided", at="make_up_air",
        help="provide make-up air of about {dryer_airflow}, or choose a dryer with less exhaust",
    )  # fmt: skip


RULE = Rule(
    code="DRY-21", name="dryer-without-make-up-air", severity="correction", since="0.1",
    over=each.dryer, when=is_connected, needs=(dryer_airflow, make_up), limits=("dryer-make-up-air",), check=check,
    nothing="the design has no clothes dryer", answers=("C10",),
)  # fmt: skip
