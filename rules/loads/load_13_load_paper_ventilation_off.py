"""The load calculation counts another ventilation than the fans give.

Outdoor air that a fan brings in must be heated, cooled and dried like everything else. In a tight house it is more
than what leaks in, so a sheet without it, or with the rate of an earlier fan, is off by a good part of the load.

Put the airflow of the fans that run all day into the load calculation, with their heat recovery if they have any.
"""

from checker.case import given
from checker.design.controls import LoadsPaper
from checker.quantities.load_paper import design_ventilation, stating
from checker.rule import Finding, Meets, Rule


def check(_paper: LoadsPaper, stated: float, own: float, tolerance: float, trifle: float) -> Meets | Finding:
    """Apart by more than the tolerance of the larger, and by more than a trifle."""
    apart = abs(stated - own)
    if apart <= max(trifle, tolerance * max(stated, own) * (1 + 1e-9)):
        return Meets()
    return Finding(
        "the load calculation counts {ventilation} of ventilation; the fans that run all day give {design_ventilation}",
        at="ventilation", help="put {design_ventilation} into the load calculation, or correct the fans",
    )


RULE = Rule(
    code="LOAD-13", name="load-paper-ventilation-off", severity="caution", since="0.1",
    over=stating("ventilation"), needs=(given("ventilation"), design_ventilation),
    limits=("paper-airtightness-tolerance", "paper-ventilation-trifle"), check=check, answers=("H29",),
    nothing="the load calculation states no ventilation",
)  # fmt: skip
