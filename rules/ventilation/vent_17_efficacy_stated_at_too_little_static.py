"""A fan's efficacy is stated at less static pressure than counts.

Any fan looks good in free air. Since 2021 the energy chapter lets the airflow per watt of an in-line fan or a
ducted recovery unit count only at 0.2 in w.c. or more, that of a ducted hood, bath or utility fan at 0.1 in
w.c. or more.

Show airflow and power from the fan's table at that static pressure or above, under a setting or under
`rating`. The point need not be the one at which it will run.
"""

from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.fans import Fan
from checker.design.hoods import Hood
from checker.quantities.fan_efficacy import least_static, points
from checker.quantities.ventilation import SLACK
from checker.quantities.whole_house import whole_house
from checker.rule import Finding, Meets, Rule


def whole_house_fans(case: Case) -> list[Fan | Hood]:
    """Fans and hoods that ventilate the whole house."""
    return [part.device for part in whole_house(case, case.design) if isinstance(part.device, Fan | Hood)]


@quantity("pressure", "highest static pressure of the stated points whose efficacy reaches the table")
def static_of_efficacy(case: Case, device: Fan | Hood) -> float:
    """Static pressure at which a sufficient efficacy is stated. NotApplicable where none is, or none suffices."""
    rated = isinstance(device, Fan) and device.rating is not None and device.rating.power
    if not rated and not any(setting.power for setting in device.settings.values()):
        raise NotApplicable("no power is stated, which another rule asks for")
    good = [point for point in points(case, device) if point.reaches]
    if not good:
        raise NotApplicable("no stated point reaches the efficacy at all")
    known = [point.static for point in good if point.static is not None]
    least = least_static(case, device)
    if len(known) < len(good) and not any(static >= least * (1 - SLACK) for static in known):
        raise Missing(*[f"{point.path}.static" for point in good if point.static is None][:1])
    return max(known)


def check(device: Fan | Hood, static: float, least: float) -> Meets | Finding:
    """The static pressure against the least one that counts."""
    if static >= least * (1 - SLACK):
        return Meets()
    return Finding(
        f"the efficacy of {device.name} is stated at {{static_of_efficacy}}; it counts from {{least_static}} up",
        help="show airflow and power at {least_static} or more, under a setting or under `rating`",
    )


RULE = Rule(
    code="VENT-17", name="efficacy-stated-at-too-little-static", severity="caution", since="0.1",
    over=whole_house_fans, needs=(static_of_efficacy, least_static),
    cites=("efficacy-static-ducted", "efficacy-static-other"), check=check,
    nothing="no fan ventilates the whole house", answers=("A16",),
)  # fmt: skip
