"""A recovery unit that the climate zone makes compulsory recovers too little heat.

Where the energy chapter asks for recovery it wants at least 65 % sensible recovery at 32 degF outdoors, at
the design airflow or more. The figure is the sensible recovery efficiency (SRE), which leaves out the heat of
the fans; the apparent effectiveness (ASE) of the same unit is higher and is not the one that is meant.

Take the figure from the unit's certified rating at an airflow not below the design, or choose another unit.
"""

from checker import each
from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.fans import Fan
from checker.quantities.climate import zone_number
from checker.quantities.ventilation import SLACK
from checker.rule import Finding, Meets, Rule

NEAR = 0.6  # K; 0 degC and 32 degF are the same point, and ratings are rounded


def is_compulsory(case: Case, _fan: Fan) -> bool:
    """The edition does not ask for recovery in this climate zone."""
    return zone_number(case, case.design) in case.limit("recovery-zones")


@quantity("share")
def sensible_recovery(case: Case, fan: Fan) -> float:
    """Sensible recovery efficiency. CannotJudge where it is stated at another outdoor temperature."""
    if fan.recovery is None:
        raise Missing(f"{path_of(fan, 'recovery')}.sensible")
    sensible, at = case.all(fan.recovery, "sensible", "at")
    limit = case.limit("recovery-rating-temperature")
    if abs(at - limit) > NEAR:
        raise CannotJudge("the recovery is stated at another outdoor temperature than the 32 degF that count")
    return float(sensible)


def check(fan: Fan, sensible: float, limit: float) -> Meets | Finding:
    """The stated recovery against the least one."""
    if sensible >= limit * (1 - SLACK):
        return Meets()
    return Finding(
        f"{fan.name} recovers {{sensible_recovery}} of the sensible heat, below {{limit}}",
        at="recovery.sensible",
        help="choose a unit with at least {limit} sensible recovery at 32 degF and the design airflow",
    )


RULE = Rule(
    code="VENT-15", name="recovery-efficiency-too-low", severity="correction", since="0.1",
    over=each.where(each.fan, lambda fan: fan.role == "recovery"), when=is_compulsory, needs=(sensible_recovery,),
    limits=("recovery-efficiency",), cites=("recovery-rating-temperature",), check=check,
    nothing="the design has no recovery unit", answers=("A12",),
)  # fmt: skip
