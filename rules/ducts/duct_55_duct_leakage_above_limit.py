"""The ducts leak more than the edition allows, by test or by the stated target.

The limit is per 100 ft2 of floor that the system serves: 4 cfm at 25 Pa with the air handler in place, 3 without
it; from 2021 8 where everything is inside. The 2024 edition has a table by area and returns, and a plain figure
for systems up to 1,000 ft2.

Seal boots, takeoffs and the cabinet first; they leak most. A target above the limit is a slip of the pen.
"""

from checker.case import Missing, NotApplicable
from checker.design.ducts import DuctSystem
from checker.quantities.duct_exposure import house_air_systems
from checker.quantities.duct_leakage import Allowed, allowed, served_area, total_leakage
from checker.rule import Finding, Meets, Num, Rule

SLACK = 1.0 + 1e-9


def check(system: DuctSystem, total: float, limit: Allowed, area: float) -> Meets | Finding:
    """Compare the leakage with what is allowed, whatever the file leaves open."""
    if limit.least == float("inf"):
        raise NotApplicable("the edition sets no limit where ducts and air handler are all inside")
    numbers = {"allowed": Num(limit.greatest, "leakage"), "served": Num(area, "area")}
    if total <= limit.least * SLACK:
        return Meets({**numbers, "allowed": Num(limit.least, "leakage")})
    if total <= limit.greatest * SLACK:
        raise Missing(*limit.ask)
    by_class = system.leakage is not None and system.leakage.total is None
    how = "tested" if system.leakage is not None and system.leakage.tested else "by its class" if by_class else "aimed at"
    return Finding(
        f"{{total_leakage}} of leakage {how} for {system.name}, which serves {{served}}, is more than {{allowed}}",
        at="leakage" if by_class else "leakage.total",
        help="seal boots, takeoffs, the cabinet and the return until {allowed} is met",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-55", name="duct-leakage-above-limit", severity="correction", since="0.1",
    over=house_air_systems, needs=(total_leakage, allowed, served_area), cites=("duct-leakage-limit",), check=check,
    nothing="no duct system heats or cools rooms", answers=("F29", "F30", "F31", "F32"),
)  # fmt: skip
