"""Heat recovery saves so little in this house that its cost alone does not speak for it.

In a mild climate, with cheap fuel or a good heat pump, the heat in the outgoing air is worth little, and the fans
of the recovery unit take some of it back. Recovery may still be wanted: for warm fresh air, for balance, for dry or
humid air that it tempers, or because the code asks for it.

The figure to hold against an offer is the yearly saving times the years that one is willing to wait. It follows the
price of energy and the degree days in proportion.
"""

from checker import each
from checker.case import Case, Missing, NotApplicable, quantity
from checker.design import Design
from checker.design.fans import Fan
from checker.physics.ventilation_energy import MEAN_HOURS_OF_YEAR, fan_energy
from checker.quantities.climate import zone_number
from checker.quantities.recovery_worth import heat_cost, prices_of, ventilation_flow
from checker.quantities.whole_house import needed, run_share
from checker.rule import Finding, Meets, Num, Rule


def recovery_fans(case: Case, design: Design) -> list[Fan]:
    """Recovery units among what ventilates the house."""
    return [
        part.device
        for part in needed(case, design)
        if isinstance(part.device, Fan) and part.device.role == "recovery"
    ]


def by_choice(case: Case, design: Design) -> bool:
    """No energy prices are stated, the design has no recovery, or its climate zone asks for it."""
    if design.site is None or design.site.prices is None or not recovery_fans(case, design):
        return False
    try:
        return zone_number(case, design) not in case.limit("recovery-zones")
    except (Missing, NotApplicable):
        return True


@quantity("share")
def recovery(case: Case, design: Design) -> float:
    """Sensible recovery of the unit; the least where there are several."""
    shares = []
    for fan in recovery_fans(case, design):
        if fan.recovery is None:
            raise Missing(f"{fan.path}.recovery.sensible")
        shares.append(float(case.get(fan.recovery, "sensible")))
    return min(shares)


@quantity("", "power of the recovery unit - ventilation flow / 2.8 cfm/W of a plain fan, x hours x price")
def fan_cost(case: Case, design: Design) -> float:
    """Yearly cost of the unit's fans beyond those of a plain supply fan, in the money of the prices."""
    power = 0.0
    for part in needed(case, design):
        if part.setting is not None and isinstance(part.device, Fan) and part.device.role == "recovery":
            power += run_share(case, part) * float(case.get(part.setting, "power"))
    plain = ventilation_flow(case, design) / float(case.limit("plain-fan-efficacy"))
    price = float(case.get(prices_of(case), "electricity"))
    return fan_energy(max(0.0, power - plain), MEAN_HOURS_OF_YEAR) * price


def check(
    _design: Design, flow: float, heat: float, share: float, fans: float, least: float, years: float
) -> Meets | Finding:
    """Saving of a year against what is had for its cost alone."""
    saving = share * heat - fans
    numbers = {
        "saving": Num(round(max(0.0, saving))),
        "worth": Num(10 * round(max(0.0, saving) * years / 10)),
        "years": Num(round(years)),
        "flow": Num(flow, "airflow"),
    }
    if saving >= least:
        return Meets(numbers)
    return Finding(
        "recovery of {recovery} from {flow} saves about {saving} USD a year here; {worth} USD come back in {years} years",
        at="fans",
        help="keep it for comfort and moisture, or hold its extra cost against {worth} USD",
        numbers=numbers,
    )


RULE = Rule(
    code="ENER-13", name="recovery-saves-little", severity="note", since="0.1",
    over=each.design, when=by_choice, needs=(ventilation_flow, heat_cost, recovery, fan_cost),
    limits=("recovery-saving", "payback-time"), cites=("heating-efficiency", "plain-fan-efficacy"), check=check,
)  # fmt: skip
