"""The reduced whole-house rate is used, but the house does not meet its conditions.

Since 2021 the code lets a house do with 70 % of the rate where its ventilation is balanced and where ducts
lead outdoor air to every bedroom and to a living, dining or kitchen space: air that arrives where people are
does more for them.

Usual causes: one bedroom was left out, fresh air is let into a closet or a hall only, or the exhaust that was
meant to balance the supply runs on demand. Complete the ducts and the balance, or provide the full rate.
"""

from checker import each
from checker.case import Case, Missing, quantity
from checker.design import Design
from checker.quantities.fresh_air import lacking_ducted_air
from checker.quantities.ventilation import (
    SLACK,
    code_rate,
    least_rate,
    mean_exhaust,
    mean_supply,
    moves_both_ways,
    provided_rate,
    strongest,
)
from checker.quantities.whole_house import Running
from checker.rule import Finding, Meets, Num, Rule


def relies_on_it(case: Case, design: Design) -> bool:
    """The design does not rely on the reduced rate."""
    case.limit("balanced-distributed-factor")
    if not moves_both_ways(case, design):
        return False
    provided = provided_rate(case, design)
    least, full = least_rate(case, design), code_rate(case, design)
    return least * (1 - SLACK) <= provided < full * (1 - SLACK)


def in_balance(supply: float, exhaust: float, tolerance: float) -> bool:
    """Whether supply and exhaust differ by no more than a share of the larger one."""
    return abs(supply - exhaust) <= tolerance * max(supply, exhaust) * (1 + SLACK)


@quantity()
def rooms_without_duct(case: Case, design: Design) -> list[str]:
    """Rooms that no duct leads outdoor air to; not asked for where the balance alone already fails."""
    try:
        return lacking_ducted_air(case, design)
    except Missing:
        if in_balance(mean_supply(case, design), mean_exhaust(case, design), case.limit("balance-tolerance")):
            raise
        return []


def check(
    design: Design, provided: float, full: float, supply: float, exhaust: float, lacking: list[str],
    part: Running, factor: float, tolerance: float,
) -> Meets | Finding:  # fmt: skip
    """Both conditions: balance, and ducts to all bedrooms and a living space."""
    wrong, cure = [], []
    if lacking:
        cure.append("duct outdoor air to these rooms")
    if not in_balance(supply, exhaust, tolerance):
        wrong.append("supply {mean_supply} and exhaust {mean_exhaust} are not in balance")
        cure.append("balance the two sides")
    if lacking:
        wrong.append("no outdoor air is ducted to {lacking}")
    numbers = {"lacking": Num(", ".join(lacking[:4]))}
    if not wrong:
        return Meets()
    return Finding(
        "{provided_rate} is below the full {code_rate}, and the reduction does not hold: " + "; ".join(wrong),
        at=f"rooms.{lacking[0]}" if lacking and lacking[0] in design.rooms else part.path,
        help=" and ".join(cure) + ", or provide the full {code_rate}",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-03", name="reduced-rate-without-its-conditions", severity="correction", since="0.1",
    over=each.design, when=relies_on_it,
    needs=(provided_rate, code_rate, mean_supply, mean_exhaust, rooms_without_duct, strongest),
    limits=("balanced-distributed-factor", "balance-tolerance"), check=check, answers=("A06",),
)  # fmt: skip
