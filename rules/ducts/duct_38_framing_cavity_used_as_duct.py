"""A cavity of the framing is used as a duct.

Panned joists and stud cavities are open at every crack, wire hole and joint of the sheet metal. A return of that
kind pulls air from the attic, the garage or the crawl space, and no mastic reaches the leaks. The energy chapter
does not allow cavities as ducts or plenums at all.

Put a duct into the cavity, or let the room's air come back to a central return through a transfer grille.
"""

from checker.case import Case, given, path_of
from checker.design.airway import Run
from checker.quantities.duct_scope import systems
from checker.rule import Finding, Meets, Rule


def runs_of_known_material(case: Case) -> list[Run]:
    """Runs whose material is stated or to be decided."""
    runs = [run for system in systems(case) for run in system.runs.values()]
    return [run for run in runs if run.material is not None or path_of(run, "material") in case.design.tbd]


def check(run: Run, material: str) -> Meets | Finding:
    """No framing cavity."""
    if material != "framing cavity":
        return Meets()
    return Finding(
        f"{run.name} is a cavity of the framing used as a duct",
        at="material",
        help="run a sealed duct in the cavity, or bring the air back through a transfer grille",
    )


RULE = Rule(
    code="DUCT-38", name="framing-cavity-used-as-duct", severity="correction", since="0.1",
    over=runs_of_known_material, needs=(given("material"),), cites=("framing-cavity-duct",), check=check,
    nothing="no duct has its material stated", answers=("F07",),
)  # fmt: skip
