"""A duct of gypsum board carries supply air, or air too hot for it.

Gypsum board may form return ducts and plenums as long as the air is no hotter than 125 degF and its surfaces stay
dry. Supply air breaks one or the other: heated air is often hotter, and cooled air sweats on the board.

Run supply air in metal, duct board or flexible duct.
"""

from checker.case import Case, quantity
from checker.design.airway import Run
from checker.quantities.duct_exposure import side
from checker.quantities.duct_scope import systems
from checker.rule import Finding, Meets, Num, Rule


def gypsum_runs(case: Case) -> list[Run]:
    """Runs of gypsum board."""
    runs = [run for system in systems(case) for run in system.runs.values()]
    return [run for run in runs if run.material == "gypsum"]


@quantity("temperature")
def hottest(case: Case, run: Run) -> float:
    """Hottest air in it, where stated; return air is room air otherwise."""
    return float(case.maybe(run, "air_temperature") or 0.0)


def check(run: Run, carries: str, temperature: float, most: float) -> Meets | Finding:
    """Return air, not too hot."""
    if carries == "supply":
        return Finding(
            f"{run.name} is of gypsum and carries supply air",
            at="material",
            help="run supply air in metal, duct board or flexible duct",
        )
    if temperature > most:
        return Finding(
            f"{run.name} is of gypsum and carries air of {{found}}, hotter than {{limit}}",
            at="air_temperature",
            help="use metal where the air is hotter than {limit}",
            numbers={"found": Num(temperature, "temperature")},
        )
    return Meets()


RULE = Rule(
    code="DUCT-40", name="gypsum-duct-misused", severity="correction", since="0.1",
    over=gypsum_runs, needs=(side, hottest), limits=("gypsum-duct-temperature",), check=check,
    nothing="no duct is of gypsum", answers=("F04",),
)  # fmt: skip
