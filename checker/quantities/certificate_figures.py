"""What the design itself has for each figure of the energy certificate."""

from collections.abc import Callable
from functools import partial

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.certificate import EnergyCertificate
from checker.design.envelope import Assembly, Surface
from checker.design.fields import fold
from checker.quantities.airtightness import air_changes_at_50
from checker.quantities.assembly_values import assembly_of, surface_kind
from checker.quantities.certificate import WORDS, certificate_of, ducts_outside
from checker.quantities.duct_exposure import house_air_systems
from checker.quantities.energy import energy_paper
from checker.quantities.envelope_parts import of_window, window_area
from checker.record import Record

DIMENSIONS = {
    **dict.fromkeys(("ceiling", "wall", "floor", "basement_wall", "slab", "duct"), "resistance"),
    "window_u": "u_value", "airtightness": "ach50", "duct_leakage": "leakage", "afue": "share",
}  # fmt: skip
MEASURED = ("airtightness", "duct_leakage")
KINDS = {"ceiling": ("ceiling", "roof"), "wall": ("wall",), "floor": ("floor",)}
INSULATING = ("insulation", "foam", "board insulation", "xps", "eps", "polyiso", "mineral wool", "continuous")



def told(case: Case, value: Callable[[], float | None]) -> list[float]:
    """A value as a list of one; an empty list where the file does not say it. Raises Missing for what is to be decided."""
    try:
        found = value()
    except NotApplicable:
        return []
    except Missing as gap:
        if any(path in case.design.tbd for path in gap.paths):
            raise
        return []
    return [] if found is None else [float(found)]


def kind_told(case: Case, surface: Surface) -> str:
    """Kind of a surface; nothing where the file does not say it. Raises Missing for what is to be decided."""
    try:
        return surface_kind(case, surface)
    except Missing as gap:
        if any(path in case.design.tbd for path in gap.paths):
            raise
        return ""


class Figure(Record):
    """One figure of the certificate."""

    path: str
    field: str
    certificate: EnergyCertificate


def figures(case: Case) -> list[Figure]:
    """Every figure that the certificate states."""
    certificate = certificate_of(case)
    if certificate is None:
        return []
    return [
        Figure(path_of(certificate, field), field, certificate)
        for field in WORDS
        if field != "measures" and case.speaks_of(certificate, field)
    ]


@quantity()
def stated_figure(case: Case, figure: Figure) -> float | str:
    """The figure as the certificate states it; a leakage of the house in air changes."""
    value = case.get(figure.certificate, figure.field)
    if figure.field == "airtightness":
        if value.kind != "ach50":
            raise NotApplicable("the certificate gives the leakage otherwise than in air changes")
        return float(value.value)
    return str(value) if figure.field in ("code", "code_path") else float(value)


class Own(Record):
    """What the design has for a figure; any of the values may stand on the certificate."""

    values: tuple[float | str, ...]


@quantity()
def of_the_design(case: Case, figure: Figure) -> Own:
    """The design's own values for a figure. NotApplicable where it has none."""
    values: list[float | str] = [*own_words(case, figure.field), *own_numbers(case, figure.field)]
    if not values:
        raise NotApplicable("the design does not state it")
    return Own(tuple(dict.fromkeys(values)))


def own_words(case: Case, field: str) -> list[str]:
    """Code edition or path of the design."""
    project = case.design.project
    if field == "code":
        return [project.code] if project is not None and project.code is not None else []
    path = energy_paper(case).code_path
    return [path] if field == "code_path" and path is not None else []


def own_numbers(case: Case, field: str) -> list[float]:
    """The design's own values in SI, the predominant first."""
    envelope = case.design.envelope
    if field in KINDS:
        return insulation(case, KINDS[field])
    if field in ("window_u", "window_shgc"):
        return of_windows(case, field.removeprefix("window_"))
    if field in ("slab", "basement_wall"):
        parts = [] if envelope is None else [*(envelope.slabs if field == "slab" else envelope.below_grade_walls).values()]
        return [value for part in parts for value in told(case, partial(case.maybe, part, "insulation"))]
    if field == "duct":
        return [value for run in ducts_outside(case) for value in told(case, partial(case.maybe, run, "insulation"))]
    if field == "airtightness":
        return told(case, lambda: air_changes_at_50(case, case.design))
    if field == "duct_leakage":
        leakages = [system.leakage for system in house_air_systems(case) if system.leakage is not None]
        found = [value for each in leakages for value in told(case, partial(case.maybe, each, "total"))]
        return [sum(found), *found] if found else []
    return [
        value
        for unit in case.design.equipment.values()
        if unit.ratings is not None and field in unit.ratings.fields
        for value in told(case, partial(case.maybe, unit.ratings, field))
    ]


def insulation(case: Case, kinds: tuple[str, ...]) -> list[float]:
    """Insulation of the assembly that covers most of these surfaces; of each one where areas are not all known."""
    envelope = case.design.envelope
    areas: dict[str, float] = {}
    assemblies: dict[str, Assembly] = {}
    all_known = True
    for surface in [] if envelope is None else envelope.surfaces.values():
        if kind_told(case, surface) not in kinds:
            continue
        assembly = assembly_of(case, surface)
        area = area_of(case, surface)
        all_known = all_known and area is not None
        assemblies[assembly.path] = assembly
        areas[assembly.path] = areas.get(assembly.path, 0.0) + (area or 0.0)
    chosen = sorted(assemblies, key=lambda path: (-areas[path], path))[: 1 if all_known else None]
    return [value for path in chosen for value in of_assembly(case, assemblies[path])]


def area_of(case: Case, surface: Surface) -> float | None:
    """Area of a surface, gross or net, where one is stated."""
    found = told(case, partial(case.maybe, surface, "area")) or told(case, partial(case.maybe, surface, "net_area"))
    return found[0] if found else None


def of_assembly(case: Case, assembly: Assembly) -> list[float]:
    """Insulation of an assembly: in its cavities, across its framing, and both together."""
    cavity = sum(told(case, partial(case.maybe, assembly, "cavity")))
    across = sum(told(case, partial(case.maybe, assembly, "continuous")))
    across += sum(value for name, value in assembly.layers.items() if any(word in fold(name) for word in INSULATING))
    return [value for value in (cavity + across, cavity, across) if value > 0.0]


def of_windows(case: Case, field: str) -> list[float]:
    """U or SHGC of most of the windows, and the mean by area; of each kind where areas are not all known."""
    envelope = case.design.envelope
    areas: dict[float, float] = {}
    all_known = True
    for window in [] if envelope is None else envelope.windows.values():
        for value in told(case, partial(of_window, case, window, field)):
            area = told(case, partial(window_area, case, window))
            all_known = all_known and bool(area)
            areas[value] = areas.get(value, 0.0) + sum(area)
    ranked = sorted(areas, key=lambda value: (-areas[value], value))
    total = sum(areas.values())
    if not all_known or total <= 0.0:
        return ranked
    return [ranked[0], sum(value * area for value, area in areas.items()) / total]
