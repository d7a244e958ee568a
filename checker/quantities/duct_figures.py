"""Ducts for a page that shows the house: each run at its design airflow, each circuit against what its mover offers."""

from math import inf

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.airway import Airway, Run
from checker.design.fans import Fan
from checker.design.fields import Airflow, FrictionRate, Pressure, Velocity
from checker.design.hoods import Dryer
from checker.quantities.circuits import Circuit
from checker.quantities.damper_balance import way_to
from checker.quantities.duct_flow import duct_flow, fastest, run_flow
from checker.quantities.duct_losses import duct_items
from checker.quantities.duct_sheet import effective_length_bounds
from checker.quantities.duct_solved import balances, network_of
from checker.quantities.duct_ways import valued
from checker.quantities.movers import airflow
from checker.quantities.static_budget import clean_budget
from checker.record import Record

FRICTION = "friction in "


class Line(Record):
    """A duct at its design airflow: m3/s, m/s, friction in Pa/m, and the pressure that it takes at best and at worst, Pa."""

    airflow: Airflow
    velocity: Velocity
    rate: FrictionRate
    low: Pressure
    high: Pressure


@quantity("airflow")
def line_flow(case: Case, duct: Airway) -> float:
    """Design airflow of a run, or of a duct in one line: that of its fan, hood or dryer at the fastest setting."""
    if isinstance(duct, Run):
        return run_flow(case, duct)
    if isinstance(duct.up, Fan):
        return duct_flow(case, duct)
    if isinstance(duct.up, Dryer):
        return float(case.get(duct.up, "airflow"))
    setting = fastest(case, duct.up.settings)
    if setting is None:
        raise Missing(path_of(duct.up, "settings"))
    return airflow(case, setting)


@quantity("", "by its friction and fittings at its design airflow", "Darcy-Weisbach, Colebrook; loss coefficients")
def line(case: Case, duct: Airway) -> Line:
    """What a duct takes. Raises Missing for airflow, size and length, CannotJudge without a bound."""
    flow = line_flow(case, duct)
    items = valued(duct_items(case, duct), flow)
    length = float(case.get(duct, "length")) + (getattr(duct, "declared_equivalent_length", None) or 0.0)
    friction = sum(item.low for item in items if item.name.startswith(FRICTION))
    low, high = sum(item.low for item in items), sum(item.high for item in items)
    if high == inf:
        raise Missing(*(item.ask for item in items if item.high == inf and item.ask))
    return Line(flow, flow / case.get(duct, "size").area, friction / length if length > 0.0 else 0.0, low, high)


def lines(case: Case) -> list[Airway]:
    """Every duct of the design: the runs of its systems, then ducts given in one line."""
    found: list[Airway] = [run for system in case.design.ducts.values() for run in system.runs.values()]
    own = [duct for fan in case.design.fans.values() for duct in (fan.duct, fan.exhaust_duct)]
    own += [hood.duct for hood in case.design.hoods.values()] + [dryer.duct for dryer in case.design.dryers.values()]
    return found + [duct for duct in own if duct is not None]


def line_name(duct: Airway) -> str:
    """What a duct is called: the run with its system, or the duct of its appliance."""
    if isinstance(duct, Run):
        return f"{duct.up.name}: {duct.name}"
    return f"{duct.up.name}: {str(duct.name).replace('_', ' ')}"


class Against(Record):
    """A circuit at its airflow, m3/s: what it needs at best and at worst, what its mover surely offers, what is left, Pa."""

    airflow: Airflow
    low: Pressure
    high: Pressure
    offered: Pressure
    left: Pressure


@quantity("", "what the mover offers, less filters, fittings and friction")
def against_offer(case: Case, circuit: Circuit) -> Against:
    """A circuit with clean filters against its mover. Raises Missing for what would bound it."""
    found = clean_budget(case, circuit)
    if found.high == inf:
        raise Missing(*dict.fromkeys(share.ask for share in found.open_shares if share.high == inf and share.ask))
    return Against(found.airflow, found.low, found.high, found.offer.low, found.offer.low - found.high)


@quantity("length", "straight lengths and equivalent lengths of fittings, longest supply and return together")
def greatest_length(case: Case, circuit: Circuit) -> float:
    """Total effective length of a system at most. NotApplicable for a duct in one line, Missing without a bound."""
    if circuit.system is None or not circuit.system.runs:
        raise NotApplicable("its duct is one line")
    _, most = effective_length_bounds(case, circuit.system)
    if most == inf:
        raise Missing(*(f"{run.path}.size" for run in circuit.system.runs.values() if run.size is None))
    return most


@quantity()
def critical_path(case: Case, circuit: Circuit) -> str:
    """The way that takes most, from the mover on, in words. NotApplicable where dampers are not worked out."""
    network = network_of(case, circuit)
    if circuit.duct is not None or len(network.terminals) < 2:
        raise NotApplicable("there is one way only")
    found = balances(case, circuit)[0]
    if found is None or not found.takes:
        raise NotApplicable("its outlets have no design airflow, or several fans move its air")
    terminal = next(each for each in network.terminals if each.key == found.critical)
    return ", ".join(each.name for each in way_to(network, terminal))
