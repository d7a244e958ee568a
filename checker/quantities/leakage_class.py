"""Leakage of a duct system by the class that the design aims at, where no total is stated.

Source: SMACNA HVAC Air Duct Leakage Test Manual. Only the ducts count; the cabinet and the boots leak beside them.
"""

from checker.case import CannotJudge, Case, Missing, gather, path_of, quantity
from checker.design.airway import Run
from checker.design.ducts import DuctSystem
from checker.physics.duct_heat import LEAKAGE_CLASSES, leakage_of_class
from checker.sizes import Size

TEST_PRESSURE = 25.0
METALS = ("galvanized steel", "stainless steel", "aluminum", "copper", "unknown metal", "lined steel")
NOT_SEALED = "unsealed"


def states_class(case: Case, system: DuctSystem) -> bool:
    """Whether the file tells a leakage class or a seal class of the system."""
    leakage = system.leakage
    return leakage is not None and (
        case.maybe(leakage, "leakage_class") is not None or case.maybe(leakage, "seal_class") is not None
    )


def class_of(case: Case, run: Run, size: Size) -> float:
    """Leakage class of a run, cfm per 100 ft2 at 1 in w.c.: as stated for its system, else by its seal class."""
    assert run.up.leakage is not None
    stated = case.maybe(run.up.leakage, "leakage_class")
    if stated is not None:
        return float(stated)
    seal, material = case.get(run.up.leakage, "seal_class"), case.get(run, "material")
    if material == "flexible":
        return float(LEAKAGE_CLASSES["flexible, unsealed" if seal == NOT_SEALED else "flexible, sealed"])
    shape = "rectangular" if size.shape == "rectangular" else "round"
    row = f"{shape} metal, {seal if seal == NOT_SEALED else f'seal class {seal}'}"
    if material not in METALS or row not in LEAKAGE_CLASSES:
        raise CannotJudge(f"no leakage class is published for {seal} {shape} {material} duct")
    return float(LEAKAGE_CLASSES[row])


def run_leakage(case: Case, run: Run) -> float:
    """Leakage of a run at 25 Pa, m3/s. Raises Missing for its size, length or material."""
    size, length = case.all(run, "size", "length")
    return leakage_of_class(class_of(case, run, size), size.perimeter * length, TEST_PRESSURE)


@quantity("leakage", "leakage class x duct surface x (25 Pa / 1 in w.c.)^0.65", "SMACNA HVAC Air Duct Leakage Test Manual")
def leakage_by_class(case: Case, system: DuctSystem) -> float:
    """Leakage of the ducts of a system at 25 Pa by their class. Raises Missing for what their surface lacks."""
    if not system.runs:
        raise Missing(path_of(system, "runs"))
    return sum(gather([lambda run=run: run_leakage(case, run) for run in system.runs.values()]))  # type: ignore[misc]


def known_leakage(case: Case, system: DuctSystem) -> float | None:
    """Total leakage at 25 Pa, m3/s: as stated, else by the class; None where neither tells it."""
    total = None if system.leakage is None else case.maybe(system.leakage, "total")
    if total is not None:
        return float(total)
    try:
        return leakage_by_class(case, system) if states_class(case, system) else None
    except CannotJudge:
        return None
