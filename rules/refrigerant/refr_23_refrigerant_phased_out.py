"""A new system holds a refrigerant above the warming limit for equipment made today.

A federal rule limits new residential split air conditioners and heat pumps to refrigerants with a warming potential
of 700 or less from 2025, which ends R-410A in new systems. Stock made or imported before that could be installed through
2025; that last date has been changed and set aside since, and states may keep it.

Ask for the date of manufacture and the present state of the rule before ordering. Never fill another refrigerant into
a system: that is dangerous, and only a certified technician may handle the gas.
"""

import re

from checker.case import CannotJudge, Case, Missing, quantity
from checker.quantities.refrigerant import (
    System,
    charged_systems,
    charged_units,
    designation,
    of_system,
)
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def warming(case: Case, system: System) -> float:
    """Global warming potential of the refrigerant. CannotJudge where the codebook lacks it."""
    table: dict[str, float] = case.limit("warming-potentials")
    name = designation(case, system)
    if name not in table:
        raise CannotJudge(f"no warming potential is tabled for {name}")
    return float(table[name])


def year_in(text: str) -> float:
    """The year of a date in words. CannotJudge where it holds none."""
    year = re.search(r"(?<!\d)(?:19|20)\d\d(?!\d)", text)
    if year is None:
        raise CannotJudge(f"`{text}` holds no year")
    return float(year[0])


@quantity()
def year_made(case: Case, system: System) -> float | None:
    """Year of manufacture or import; None where the refrigerant is below the limit anyway."""
    if warming(case, system) <= case.limit("warming-potential"):
        return None
    stated = [case.maybe(unit, "made_on") for unit in charged_units(case, system)]
    told = next((each for each in stated if each is not None), None)
    if told is None and not system.lines:
        raise Missing(f"{system.path}.made_on")
    return year_in(str(of_system(case, system, "made_on") if told is None else told))


@quantity()
def year_installed(case: Case, system: System) -> float | None:
    """Year in which the system is installed; None where no line says."""
    told = [case.maybe(line, "installed_on") for line in system.lines]
    return next((year_in(str(each)) for each in told if each is not None), None)


def check(
    system: System, name: str, potential: float, made: float | None, installed: float | None, limit: float, first: float
) -> Meets | Finding:
    """Below the limit, or made and installed before it began."""
    if made is None or (made < first and (installed is None or installed <= first)):
        return Meets()
    late = made < first
    told = "{system}, made in {year} and to be installed in {installed}, holds" if late else "{system}, made in {year}, holds"
    help_ = "ask whether stock of {year} may still be installed, or" if late else "ask what the rule now allows, or"
    return Finding(
        f"{told} {{designation}}, whose warming potential {{warming}} is above {{warming_potential}}",
        at="refrigerant",
        help=f"{help_} choose equipment for a refrigerant of {{warming_potential}} or less",
        numbers={"system": Num(system.name), "year": Num(f"{made:.0f}"),
                 "installed": Num("" if installed is None else f"{installed:.0f}")},
    )  # fmt: skip


RULE = Rule(
    code="REFR-23", name="refrigerant-phased-out", severity="caution", since="0.1",
    over=charged_systems, needs=(designation, warming, year_made, year_installed),
    limits=("warming-potential", "first-year-of-low-warming"), check=check,
    nothing="no refrigerant line is drawn, and no equipment states its refrigerant", answers=("I14", "I24"),
)  # fmt: skip
