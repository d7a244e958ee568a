"""A cavity of the framing carries supply air, or lies in an exterior wall.

Where framing cavities serve as plenums at all, they carry return air only: warm or cold supply air in a bare
cavity dries, wets and stains the framing. A cavity in an exterior wall has no room for insulation and pulls
outdoor air in.

Run a duct instead. Cavities that stay return plenums also need fireblocking, and a stud cavity serves one floor.
"""

from checker.case import Case, given
from checker.design.airway import Run
from checker.quantities.duct_exposure import side
from checker.quantities.duct_scope import systems
from checker.rule import Finding, Meets, Rule


def cavity_runs(case: Case) -> list[Run]:
    """Runs made of framing cavities."""
    runs = [run for system in systems(case) for run in system.runs.values()]
    return [run for run in runs if run.material == "framing cavity"]


def check(run: Run, carries: str, places: list[str]) -> Meets | Finding:
    """Return air, and no exterior wall."""
    if carries == "supply":
        return Finding(
            f"{run.name} is a framing cavity and carries supply air",
            at="material",
            help="run a duct to its outlet; framing cavities do not carry supply air",
        )
    if "exterior wall" in places:
        return Finding(
            f"{run.name} is a framing cavity in an exterior wall",
            at="location",
            help="bring the return through an interior wall, in a duct",
        )
    return Meets()


RULE = Rule(
    code="DUCT-39", name="framing-plenum-misplaced", severity="correction", since="0.1",
    over=cavity_runs, needs=(side, given("location")), cites=("framing-cavity-plenum",), check=check,
    nothing="no duct is a cavity of the framing", answers=("F06",),
)  # fmt: skip
