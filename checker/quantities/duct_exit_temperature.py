"""Temperature of the air where a supply run ends and where it enters a room, after what it lost or gained on its way.

Two bounds, the coldest and the warmest that the file allows: a run that passes both the house and the attic does not
say how far in each. The surroundings outside are at the design temperature of the season; a sunlit attic is warmer,
so that the warmest cooled air is a lower bound there.
"""


from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, path_of, quantity
from checker.design.airway import Run
from checker.design.ducts import DuctSystem, Outlet
from checker.design.equipment import Equipment
from checker.design.fields import Temperature
from checker.physics.air import SPECIFIC_HEAT_DRY_AIR
from checker.physics.duct_heat import conductance, exit_temperature
from checker.quantities.distribution import behind
from checker.quantities.duct_exposure import zone_of
from checker.quantities.duct_flow import system_flow
from checker.quantities.duct_graph import Branch, tree
from checker.quantities.duct_scope import mover_or_none
from checker.quantities.duct_surface import capacity_flow, insulation
from checker.quantities.equipment import burns, gives, is_heat_pump
from checker.quantities.heat_pump import compressor_capacity, heat_at_design, helped_by_fuel
from checker.quantities.moist_air import (
    air_density,
    indoor_summer,
    indoor_winter,
    outdoor_summer,
    winter_design,
)
from checker.quantities.whole_house import running, supply_of
from checker.record import Record

HANDBOOK = "ASHRAE Handbook - Fundamentals, chapter 4 (exponential approach to the surroundings)"


class Span(Record):
    """The coldest and the warmest that air may be, K."""

    coldest: Temperature
    warmest: Temperature


def output_without_backup(case: Case, mover: Equipment) -> float:
    """Heat in W of a unit whose backup rests: what the compressor alone gives, since backup runs only now and then.

    Backup is all there is where the compressor is off; a flame takes the place of the compressor.
    """
    if is_heat_pump(case, mover) and not burns(mover) and not helped_by_fuel(case, mover):
        return compressor_capacity(case, mover) or heat_at_design(case, mover)
    return heat_at_design(case, mover)


@quantity("temperature", "stated; else entering air + heat output without backup / what the air carries for each kelvin")
def heated_air_at_unit(case: Case, system: DuctSystem) -> float:
    """Supply air where it leaves the unit on the winter design day. Raises Missing for its temperature."""
    stated = case.maybe(system, "greatest_supply_temperature")
    if stated is not None:
        return float(stated)
    output, mover = case.maybe(system, "heat_output"), mover_or_none(case, system)
    if output is None and isinstance(mover, Equipment) and gives(case, mover, "heating"):
        output = output_without_backup(case, mover)
    if output is None:
        raise Missing(path_of(system, "greatest_supply_temperature"))
    if output <= 0.0:
        raise NotApplicable(f"{system.name} gives no heat on the winter design day")  # it stops; other rules say so
    carried = system_flow(case, system) * air_density(case, system) * SPECIFIC_HEAT_DRY_AIR
    if carried <= 0.0:
        raise CannotJudge(f"no air flows through {system.name}")
    return entering_air(case, system) + float(output) / carried


@quantity("temperature", "room air, mixed with outdoor air where the unit or a fan before it draws some in")
def entering_air(case: Case, system: DuctSystem) -> float:
    """Air that enters the unit on the winter design day; tempered or recovered outdoor air counts as warm as the room."""
    room, mover = indoor_winter(case, system).temperature, mover_or_none(case, system)
    if not isinstance(mover, Equipment) or mover.tempering is not None:
        return room
    outdoor = 0.0 if mover.outdoor_air is None else float(case.get(mover.outdoor_air, "airflow"))
    before = [fan for fan in case.design.fans.values() if any(behind(case, name) is mover for name in fan.to)]
    leading = [fan for fan in before if case.maybe(fan, "role") == "supply" and fan.tempering is None]
    if leading:
        outdoor += sum(supply_of(case, part) for part in running(case, case.design) if part.device in leading)
    if outdoor <= 0.0:
        return room
    share = min(1.0, outdoor / system_flow(case, system))
    return room - share * (room - winter_design(case, system))


@quantity("temperature", "stated; else the usual coldest supply air of cooling")
def cooled_air_at_unit(case: Case, system: DuctSystem) -> float:
    """Coldest supply air where it leaves the unit in summer."""
    stated = case.maybe(system, "supply_temperature")
    return float(case.limit("cold-supply-air") if stated is None else stated)


def around(case: Case, run: Run, room: float, outdoors: float) -> Span:
    """What may surround a run, K. Raises Missing where it does not say where it runs."""
    found = []
    for place in case.get(run, "location"):
        try:
            zone = zone_of(case, place)
        except CannotJudge:
            zone = "shell"
        found += {"inside": [room], "attic": [outdoors], "outside": [outdoors]}.get(zone, [room, outdoors])
    if case.maybe(run, "buried"):
        found.append(room)  # what lies over it insulates it too
    return Span(min(found), max(found))


def along(case: Case, run: Run, entering: Span, surroundings: Span, room: float) -> Span:
    """Air at the end of a run. A run in the rooms alone, whose loss stays in the house, still cools its air."""
    size, length, resistance, carried = gather([
        lambda: case.get(run, "size"), lambda: case.get(run, "length"),
        lambda: 0.0 if surroundings == Span(room, room) and run.insulation is None else insulation(case, run),
        lambda: capacity_flow(case, run),
    ])  # fmt: skip
    lost = conductance(size.perimeter, length, resistance)
    return Span(*(exit_temperature(air, about, lost, carried) for air, about in zip(entering, surroundings, strict=True)))


@quantity("", "surroundings + (entering - surroundings) x exp(- conductance / heat carried), run by run", HANDBOOK)
def heated_air_at_end(case: Case, run: Run) -> Span:
    """Heated air at the end of a supply run on the winter design day."""
    room = indoor_winter(case, run).temperature
    toward = nearer(case, run)
    system: DuctSystem = run.up
    at_unit = heated_air_at_unit(case, system) if toward is None else 0.0
    entering = Span(at_unit, at_unit) if toward is None else heated_air_at_end(case, toward)
    return along(case, run, entering, around(case, run, room, winter_design(case, run)), room)


@quantity("", "surroundings + (entering - surroundings) x exp(- conductance / heat carried), run by run", HANDBOOK)
def cooled_air_at_end(case: Case, run: Run) -> Span:
    """Cooled air at the end of a supply run on the summer design day, at the coldest that the unit sends out."""
    room = indoor_summer(case, run).temperature
    toward = nearer(case, run)
    system: DuctSystem = run.up
    at_unit = cooled_air_at_unit(case, system) if toward is None else 0.0
    entering = Span(at_unit, at_unit) if toward is None else cooled_air_at_end(case, toward)
    return along(case, run, entering, around(case, run, room, outdoor_summer(case, run).temperature), room)


def nearer(case: Case, run: Run) -> Run | None:
    """The run between a supply run and its unit; None where it joins the unit. CannotJudge for a return."""
    found = tree(case, run.up)
    branch = found.branches[run.name]
    if branch.side != "supply":
        raise CannotJudge(f"{run.name} brings air back to the unit")
    return None if branch.nearer is None else found.branches[branch.nearer].run


def branch_of(case: Case, outlet: Outlet) -> Branch:
    """The branch whose end an outlet is. CannotJudge where no run leads to it."""
    for branch in tree(case, outlet.up).branches.values():
        if outlet.name in branch.outlets:
            return branch
    raise CannotJudge(f"no run leads to {outlet.name}")


@quantity()
def heated_air_at_outlet(case: Case, outlet: Outlet) -> Span:
    """Duct air temperature at an outlet while the unit heats, on the winter design day."""
    return heated_air_at_end(case, branch_of(case, outlet).run)


@quantity()
def cooled_air_at_outlet(case: Case, outlet: Outlet) -> Span:
    """Duct air temperature at an outlet while the unit cools, on the summer design day."""
    return cooled_air_at_end(case, branch_of(case, outlet).run)
