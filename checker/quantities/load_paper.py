"""Figures of the load calculation beside those of the design."""

from collections.abc import Callable

from checker.case import CannotJudge, Case, Missing, either, gather, path_of, quantity
from checker.design.controls import LoadsPaper
from checker.design.envelope import Fenestration, Surface
from checker.design.fans import Fan
from checker.design.fields import Ratio, UValue
from checker.physics.infiltration import UNIT_LEAKAGE_AREA
from checker.quantities.airtightness import house_of
from checker.quantities.assembly_values import OPEN_AIR, envelope_of
from checker.quantities.duct_surface import sensible_recovery
from checker.quantities.envelope_parts import of_window, parts, window_area
from checker.quantities.moist_air import people
from checker.quantities.outdoor_air import leakage_area
from checker.quantities.ventilation import mean_flows
from checker.quantities.ventilation_standard import site_of
from checker.quantities.whole_house import run_share, running, supply_of
from checker.record import Record

CLASSES = {
    "tight": "tight", "semi-tight": "good", "average": "average", "semi-loose": "leaky", "loose": "very leaky",
}  # fmt: skip


def stating(*fields: str) -> Callable[[Case], list[LoadsPaper]]:
    """The load calculation, where it states one of these figures or leaves it to be decided."""

    def found(case: Case) -> list[LoadsPaper]:
        paper = None if case.design.papers is None else case.design.papers.loads
        if paper is None:
            return []
        told = any(getattr(paper, field) is not None or path_of(paper, field) in case.design.tbd for field in fields)
        return [paper] if told else []

    return found


@quantity("area", "sum over the windows of the envelope")
def design_window_area(case: Case, _node: object) -> float:
    """Window area by the envelope. Raises Missing."""
    envelope = envelope_of(case)
    if not envelope.windows and "envelope.windows" not in case.design.stated_none:
        raise Missing("envelope.windows")
    windows = list(envelope.windows.values())
    return sum(gather([lambda window=window: window_area(case, window) for window in windows]))  # type: ignore[misc]


class Glass(Record):
    """Area-weighted U-value in W/(m2 K) and solar heat gain coefficient of the windows; None where no window tells."""

    u: UValue | None
    shgc: Ratio | None


def weighted(case: Case, windows: list[Fenestration], field: str) -> float | None:
    """Area-weighted mean of a figure of the windows. Raises Missing; None without windows."""
    if not windows:
        return None
    pairs = gather(
        [lambda each=each: (window_area(case, each), of_window(case, each, field)) for each in windows]  # type: ignore[misc]
    )
    total = sum(area for area, _ in pairs)
    return sum(area * value for area, value in pairs) / total if total > 0 else None


@quantity()
def design_glass(case: Case, paper: LoadsPaper) -> Glass:
    """Mean figures of the windows, those that the load calculation states. Raises Missing."""
    windows = list(envelope_of(case).windows.values())
    if not windows:
        raise Missing("envelope.windows")
    u = weighted(case, windows, "u") if paper.window_u is not None else None
    return Glass(u, weighted(case, windows, "shgc") if paper.window_shgc is not None else None)


@quantity("", "bedrooms and one, or as stated")
def design_people(case: Case, node: object) -> int:
    """People that a load calculation counts."""
    return people(case, node)


@quantity("area", "walls, ceilings, roofs and floors that face outdoors or unheated spaces; else the stated envelope")
def exposed_area(case: Case, design: object) -> float:
    """Exposed surface of the house, for its leakage by area. Raises Missing."""

    def by_surfaces() -> float:
        surfaces = [part for part in parts(case, design) if isinstance(part, Surface) and part.faces in {*OPEN_AIR, "attic"}]
        if not surfaces:
            raise Missing("house.envelope_area")
        return sum(gather([lambda each=each: float(case.get(each, "area")) for each in surfaces]))  # type: ignore[misc]

    return either(lambda: float(case.get(house_of(case), "envelope_area")), by_surfaces)


@quantity("", "leakage area over that of the class", "ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 3")
def leakage_over_class(case: Case, paper: LoadsPaper) -> float:
    """How many times leakier the design is than the infiltration class of the load calculation."""
    per_area = UNIT_LEAKAGE_AREA[CLASSES[str(case.get(paper, "infiltration"))]]
    area, surface = gather([lambda: leakage_area(case, case.design), lambda: exposed_area(case, case.design)])
    if surface <= 0:
        raise CannotJudge("an envelope without any area has no leakage to compare")
    return area / (per_area * surface)


@quantity("airflow", "the larger of supply and exhaust that run all day or by a timer")
def design_ventilation(case: Case, node: object) -> float:
    """Outdoor air that the fans of the design cause, averaged over time."""
    running(case, node)
    if not case.stated("fans"):
        raise Missing("fans")
    return max(mean_flows(case, node))


@quantity("share", "of the air that recovery units bring in, over all that fans bring in")
def design_recovery(case: Case, node: object) -> float:
    """Sensible recovery of the ventilation as a whole; nothing where no recovery unit is shown. Raises Missing."""
    if not case.stated("fans"):
        raise Missing("fans")
    flows: list[tuple[float, float]] = []
    for part in running(case, node):
        if part.supplies:
            unit = part.device if isinstance(part.device, Fan) and part.device.role == "recovery" else None
            share = run_share(case, part) * supply_of(case, part)
            flows.append((share, 0.0 if unit is None else sensible_recovery(case, unit)))
    total = sum(flow for flow, _ in flows)
    return sum(flow * recovered for flow, recovered in flows) / total if total > 0 else 0.0


@quantity("area")
def design_floor_area(case: Case, _node: object) -> float:
    """Conditioned floor area of the house. Raises Missing."""
    return float(case.get(house_of(case), "floor_area"))


def outdoor_dry_bulb(case: Case) -> float:
    """Summer design dry bulb of the site, K. Raises Missing."""
    summer = site_of(case).summer_design
    if summer is None:
        raise Missing("site.summer_design.dry_bulb")
    return float(case.get(summer, "dry_bulb"))
