"""Figures of the equipment selection beside those of the design and of the load calculation."""

from collections.abc import Callable
from functools import partial

from checker.case import CannotJudge, Case, Missing, NotApplicable, either, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.selection_paper import SelectionPaper
from checker.physics.validity import OutOfRange
from checker.quantities.cooling_capacity import summer_outdoor
from checker.quantities.equipment import (
    Group,
    all_cooling,
    all_heating,
    burns,
    indoor_units,
    is_heat_pump,
)
from checker.quantities.heat_pump import backup_capacity, compressor_capacity, heat_at_design, stops_at_design
from checker.quantities.sizing import cooling_of, full_of, sensible_of, unit_airflow
from checker.quantities.stated_loads import (
    stated_block_cooling,
    stated_block_heating,
    stated_block_latent,
    stated_room_cooling,
    stated_room_heating,
)
from checker.quantities.unit_loads import (
    group_cooling_latent,
    group_cooling_sensible,
    group_heating_load,
    sum_of_rooms,
)
from checker.quantities.ventilating_handlers import winter_outdoor
from checker.record import Record


class Figure(Record):
    """One figure of a selection: where it stands, and what it is called."""

    path: str
    paper: SelectionPaper
    field: str
    what: str


class Amount(Record):
    """The value of a figure, in SI units of its dimension."""

    value: float
    dimension: str


OF_THE_DESIGN = {
    "winter_outdoor": "the outdoor temperature in winter", "summer_outdoor": "the outdoor temperature in summer",
    "heating": "the heating capacity at design", "cooling_total": "the total cooling capacity",
    "cooling_sensible": "the sensible cooling capacity", "airflow": "the airflow", "backup": "the backup heat",
}  # fmt: skip
OF_THE_LOADS = {
    "heating_load": "a heating load", "cooling_sensible_load": "a sensible cooling load",
    "cooling_latent_load": "a latent cooling load",
}  # fmt: skip
DIMENSIONS = {"winter_outdoor": "temperature", "summer_outdoor": "temperature", "airflow": "airflow", "backup": "power"}


def selections(case: Case) -> list[SelectionPaper]:
    """Every selection of the papers."""
    papers = case.design.papers
    return [] if papers is None else list(papers.selections.values())


def figures(case: Case, names: dict[str, str]) -> list[Figure]:
    """The figures of these names that the selections state."""
    return [
        Figure(path_of(paper, field), paper, field, what)
        for paper in selections(case)
        for field, what in names.items()
        if case.speaks_of(paper, field)
    ]


@quantity()
def selected(case: Case, paper: SelectionPaper) -> Equipment:
    """The equipment that a selection is for: as said, else the one of its name. Raises Missing."""
    unit = case.design.equipment.get(str(case.maybe(paper, "unit") or paper.name))
    if unit is None:
        raise Missing(path_of(paper, "unit"))
    return unit


def heating_of_design(case: Case, unit: Equipment) -> float:
    """Heating capacity at design, backup left out."""
    by_compressor = is_heat_pump(case, unit) and not burns(unit)
    if by_compressor and stops_at_design(case, unit):
        raise NotApplicable("its compressor is off on the winter design day, which is judged by itself")
    return compressor_capacity(case, unit) if by_compressor else heat_at_design(case, unit)


def sensible_of_design(case: Case, unit: Equipment) -> float:
    """Sensible cooling capacity. Raises Missing."""
    value = sensible_of(case, unit)
    if value is None:
        raise Missing(path_of(cooling_of(case, unit), "sensible"))
    return value


ROUTES: dict[str, Callable[[Case, Equipment], float]] = {
    "winter_outdoor": winter_outdoor,
    "summer_outdoor": summer_outdoor,
    "heating": heating_of_design,
    "cooling_total": lambda case, unit: full_of(case, cooling_of(case, unit)),
    "cooling_sensible": sensible_of_design,
    "airflow": unit_airflow,
    "backup": backup_capacity,
}


def amount(figure: Figure, value: float) -> Amount:
    """A value with the dimension of a figure."""
    return Amount(value, DIMENSIONS.get(figure.field, "heat_rate"))


@quantity()
def designed(case: Case, figure: Figure) -> Amount:
    """The figure of the design beside that of the selection. Raises Missing."""
    return amount(figure, float(ROUTES[figure.field](case, selected(case, figure.paper))))


def beside_design(case: Case) -> list[Figure]:
    """The figures of selections that the design states as well, or leaves to be decided."""
    found = []
    for figure in figures(case, OF_THE_DESIGN):
        try:
            designed(case, figure)
        except Missing as gap:
            own = path_of(figure.paper, "unit")
            if own not in gap.paths and not any(path in case.design.tbd for path in gap.paths):
                continue
        except (CannotJudge, NotApplicable, OutOfRange):
            continue
        found.append(figure)
    return found


def group_of(case: Case, groups: list[Group], unit: Equipment) -> Group:
    """The group that a unit, or its indoor units, belong to. Raises NotApplicable."""
    names = {unit.name, *(each.name for each in indoor_units(case, unit))}
    for group in groups:
        if any(each.name in names for each in group.units):
            return group
    raise NotApplicable(f"{unit.name} is not said to serve rooms")


@quantity("heat_rate", "as stated for the house or its rooms, else worked out")
def load_beside(case: Case, figure: Figure) -> float:
    """The load of the load calculation beside that of the selection. Raises Missing; CannotJudge for a part."""
    unit = selected(case, figure.paper)
    if figure.field == "heating_load":
        group = group_of(case, all_heating(case), unit)
        whole = partial(stated_block_heating, case, case.design)
        return either(whole if group.whole_house else partial(sum_of_rooms, case, group, stated_room_heating),
                      partial(group_heating_load, case, group))  # fmt: skip
    group = group_of(case, all_cooling(case), unit)
    if figure.field == "cooling_latent_load":
        worked = partial(group_cooling_latent, case, group)
        return either(partial(stated_block_latent, case, case.design), worked) if group.whole_house else worked()
    whole = partial(stated_block_cooling, case, case.design)
    return either(whole if group.whole_house else partial(sum_of_rooms, case, group, stated_room_cooling),
                  partial(group_cooling_sensible, case, group))  # fmt: skip
