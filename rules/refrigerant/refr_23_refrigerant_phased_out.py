"""A new system holds a refrigerant above the warming limit for equipment made today.

A federal rule limits new residential split air conditioners and heat pumps to refrigerants with a warming potential
of 700 or less from 2025, which ends R-410A in new systems. Stock made before that may be treated otherwise, and the
last date for installing it has changed more than once.

Ask for the date of manufacture and the present state of the rule before ordering. Never fill another refrigerant into
a system: that is dangerous, and only a certified technician may handle the gas.
"""

import re

from checker.case import CannotJudge, Case, quantity
from checker.quantities.refrigerant import System, designation, of_system, systems
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def warming(case: Case, system: System) -> float:
    """Global warming potential of the refrigerant. CannotJudge where the codebook lacks it."""
    table: dict[str, float] = case.limit("warming-potentials")
    name = designation(case, system)
    if name not in table:
        raise CannotJudge(f"no warming potential is tabled for {name}")
    return float(table[name])


@quantity()
def year_made(case: Case, system: System) -> float | None:
    """Year of manufacture; None where the refrigerant is below the limit anyway."""
    if warming(case, system) <= case.limit("warming-potential"):
        return None
    text = str(of_system(case, system, "made_on"))
    year = re.search(r"(?<!\d)(?:19|20)\d\d(?!\d)", text)
    if year is None:
        raise CannotJudge(f"`{text}` holds no year of manufacture")
    return float(year[0])


def check(
    system: System, name: str, potential: float, year: float | None, limit: float, first: float
) -> Meets | Finding:
    """Below the limit, or made before it began."""
    if year is None or year < first:
        return Meets()
    return Finding(
        f"{system.name}, made in {{year}}, holds {{designation}}, whose warming potential {{warming}} is above"
        " {warming_potential}",
        at="refrigerant",
        help="choose equipment for a refrigerant of {warming_potential} or less, or ask what the rule now allows",
        numbers={"year": Num(f"{year:.0f}")},
    )


RULE = Rule(
    code="REFR-23", name="refrigerant-phased-out", severity="caution", since="0.1",
    over=systems, needs=(designation, warming, year_made),
    limits=("warming-potential", "first-year-of-low-warming"), check=check,
    nothing="no refrigerant line is drawn", answers=("I14", "I24"),
)  # fmt: skip
