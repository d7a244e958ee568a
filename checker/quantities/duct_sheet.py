"""The duct sheet as the trade fills it in: available static pressure, total effective length, friction rate."""

from math import inf

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.airway import Run
from checker.design.ducts import DuctSystem
from checker.design.fans import Fan
from checker.design.fields import FrictionRate, Length, Pressure
from checker.physics.friction import ROUGHNESS_BY_MATERIAL, friction_per_meter
from checker.quantities.circuits import system_circuit
from checker.quantities.duct_flow import run_flow, system_flow
from checker.quantities.duct_graph import Branch, Side, Tree, mover_of, tree
from checker.quantities.duct_losses import fitting_items
from checker.quantities.duct_ways import outlet_shares, sides_of, whole_flow_shares
from checker.quantities.static_budget import decided_clean
from checker.quantities.static_offer import offer
from checker.record import Record
from checker.sizes import equivalent_diameter

Bounds = tuple[float, float]


class Sheet(Record):
    """Figures that a designer declares; None where neither the system nor the papers state them."""

    friction_rate: FrictionRate | None
    length: Length | None
    available: Pressure | None


@quantity()
def declared_sheet(case: Case, system: DuctSystem) -> Sheet:
    """What the designer declares: on the system, else on the duct worksheet where there is one system."""
    papers = case.design.papers
    sheet = papers.ducts if papers is not None and len(case.design.ducts) == 1 else None
    rate = case.maybe(system, "declared_friction_rate")
    length = case.maybe(system, "declared_total_effective_length")
    available = case.maybe(system, "declared_available_static")
    if sheet is not None:
        rate = case.maybe(sheet, "friction_rate") if rate is None else rate
        length = case.maybe(sheet, "total_effective_length") if length is None else length
        available = case.maybe(sheet, "available_static") if available is None else available
    return Sheet(rate, length, available)


@quantity("pressure", "what the blower offers, less filter, coil, registers and grilles")
def available_bounds(case: Case, system: DuctSystem) -> Bounds:
    """Static pressure left for the ducts of a system, Pa: least and greatest; it may be negative."""
    mover = mover_of(case, system)
    circuit = system_circuit(case, system, mover)
    flow = system_flow(case, system)
    shares = whole_flow_shares(case, circuit, flow, loaded=False)
    unknown = [share.ask for share in shares if share.high == inf]
    if unknown:
        raise Missing(*unknown)
    low, high = sum(share.low for share in shares), sum(share.high for share in shares)
    for drops in outlet_drops(case, system):
        low += min(drop[0] for drop in drops)
        high += max(drop[1] for drop in drops)
    if high == inf:
        raise Missing(path_of(system, "losses"))
    offered = offer(case, mover, circuit.setting, flow)
    return offered.low - high, offered.high - low


def outlet_drops(case: Case, system: DuctSystem) -> list[list[Bounds]]:
    """Drops of the outlets with the filters in them, by side of the mover that has any."""
    found = tree(case, system)
    sides: tuple[Side, Side] = ("supply", "return")
    result = []
    for side in sides:
        names = [name for branch in found.branches.values() if branch.side == side for name in branch.outlets]
        shares = [outlet_shares(case, system, name, loaded=False) for name in names]
        if shares:
            result.append([(sum(each.low for each in own), sum(each.high for each in own)) for own in shares])
    return result


@quantity("length", "straight lengths and equivalent lengths of fittings, longest supply and return together")
def effective_length_bounds(case: Case, system: DuctSystem) -> Bounds:
    """Total effective length in m: least and greatest."""
    found = tree(case, system)
    circuit = system_circuit(case, system, mover_of(case, system))
    low = high = 0.0
    for branches in sides_of(circuit, found):
        ways = [way_length(case, found, branch) for branch in branches if not branch.farther]
        low += max((way[0] for way in ways), default=0.0)
        high += max((way[1] for way in ways), default=0.0)
    return low, high


def way_length(case: Case, found: Tree, branch: Branch) -> Bounds:
    """Effective length of the runs from the mover to the end of a branch."""
    ends = [run_length(case, each.run) for each in found.way(branch)]
    return sum(end[0] for end in ends), sum(end[1] for end in ends)


def run_length(case: Case, run: Run) -> Bounds:
    """Effective length of one run: as declared, else by its fittings; without a size only its straight part counts."""
    length = float(case.get(run, "length"))
    declared = case.maybe(run, "declared_equivalent_length")
    if declared is not None:
        return length + declared, length + declared
    size = case.maybe(run, "size")
    if size is None:
        return length, inf
    flow = run_flow(case, run)
    rate = friction_per_meter(flow, equivalent_diameter(size), ROUGHNESS_BY_MATERIAL["galvanized steel"].value)
    if rate <= 0.0:
        return length, inf
    ends = [item.bounds(flow) for item in fitting_items(case, run, size)]
    return length + sum(end[0] for end in ends) / rate, length + sum(end[1] for end in ends) / rate


class Difference(Record):
    """A declared figure beside what the design gives at best: its key, its dimension, both values."""

    field: str
    dimension: str
    declared: float
    own: float


@quantity()
def sheet_differences(case: Case, system: DuctSystem) -> list[Difference]:
    """Declared figures that promise more than the design gives at best, by more than the tolerance."""
    sheet = declared_sheet(case, system)
    tolerance: float = case.limit("sheet-tolerance")
    found = []
    if sheet.available is not None:
        _, most = available_bounds(case, system)
        if sheet.available > max(most, 0.0) * (1.0 + tolerance):
            found.append(Difference("declared_available_static", "pressure", sheet.available, max(most, 0.0)))
    if sheet.length is not None:
        least, _ = effective_length_bounds(case, system)
        if sheet.length < least * (1.0 - tolerance):
            found.append(Difference("declared_total_effective_length", "length", sheet.length, least))
    return found


class Rate(Record):
    """A friction rate, Pa/m: the greatest that the design allows, or the one that the designer declares."""

    value: FrictionRate
    is_declared: bool


@quantity()
def friction_rate(case: Case, system: DuctSystem) -> Rate:
    """The friction rate that ducts are sized at: as declared, else the greatest possible.

    Not asked where the sized ducts are already known to fit, or not to fit, what the blower offers.
    """
    declared = declared_sheet(case, system).friction_rate
    if declared is not None:
        return Rate(declared, True)
    try:
        decided_clean(case, system_circuit(case, system, mover_of(case, system)))
    except (Missing, CannotJudge):
        return Rate(greatest_friction_rate(case, system), False)
    raise NotApplicable("the ducts have sizes, and their static pressure is judged by them")


@quantity("friction_rate", "available static pressure over total effective length, at best")
def greatest_friction_rate(case: Case, system: DuctSystem) -> float:
    """The most friction rate that a system of equipment can be sized at, Pa/m; 0 where nothing is left."""
    if isinstance(mover_of(case, system), Fan):
        raise NotApplicable("the window is one for heating and cooling ducts")
    _, available = available_bounds(case, system)
    length, _ = effective_length_bounds(case, system)
    if available == inf or length <= 0.0:
        raise Missing(path_of(system, "declared_friction_rate"))
    return max(available, 0.0) / length
