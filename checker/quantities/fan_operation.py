"""Where a fan runs on its curve: left of its peak, far beyond its design, and what that means for a cooling coil."""

from itertools import pairwise

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.airway import Airway
from checker.design.equipment import Equipment
from checker.design.fans import Curve, Fan
from checker.quantities.circuits import Circuit, circuit_flow, ducted_circuits
from checker.quantities.duct_solved import designs_of, has_curve, network_of
from checker.quantities.solved_airflows import (
    DEPENDS,
    NOTHING,
    curved_circuits,
    is_damped,
    moved,
    own_ducts,
    rise_at,
)
from checker.quantities.static_budget import clean_budget
from checker.quantities.static_offer import curve_of, holds_airflow
from checker.record import Record


class Stall(Record):
    """At the airflow of the peak of a curve: that airflow, m3/s, the pressure of the fan and what the ducts take, Pa."""

    peak_flow: float
    peak: float
    taken: float
    is_left: bool

    def worksheet_lines(self, system: str) -> list[str]:
        """Fan and ducts at the peak, on one line."""
        from checker.quantities.solved_words import stall_lines

        return stall_lines(self, system)


def peaked_circuits(case: Case) -> list[Circuit]:
    """Circuits with a curve that somewhere rises with the airflow."""
    found = []
    for circuit in curved_circuits(case):
        points = [point.pressure for curve in curves_of(circuit) for point in curve.points]
        if any(b is None or a is None or b > a for a, b in pairwise(points)):
            found.append(circuit)
    return found


def curves_of(circuit: Circuit) -> list[Curve]:
    """The curve of a circuit's mover at its setting."""
    mover = circuit.mover
    curve = curve_of(mover, circuit.setting) if isinstance(mover, Fan | Equipment) else None
    return [] if curve is None else [curve]


@quantity()
def stall(case: Case, circuit: Circuit) -> Stall:
    """Whether a fan surely runs left of its peak. NotApplicable where its static pressure is too little anyway."""
    network = network_of(case, circuit)
    curve = network.model.curve
    if len(network.models) > 1 or curve is None or curve.peak == 0:
        raise NotApplicable("its curve has no peak, or several fans move its air")
    flow, peak = curve.lowest_stable_flow, curve.pressure(curve.lowest_stable_flow) * network.density_ratio
    least, most = (rise_at(network, flow, worst) for worst in (False, True))
    beyond = peak * (1.0 + float(case.limit("static-margin")))
    if least > beyond and clean_budget(case, circuit).is_above:
        raise NotApplicable("its ducts take more than it offers at the design airflow already")
    if least <= beyond and most > peak:
        raise CannotJudge(DEPENDS)
    return Stall(flow, peak, least, least > beyond)


def cooling_circuits(case: Case) -> list[Circuit]:
    """Circuits of units that cool and that have a curve, or hold their airflow up to some pressure."""
    return [
        each
        for each in ducted_circuits(case)
        if isinstance(each.mover, Equipment)
        and each.mover.cooling is not None
        and (has_curve(each) or holds_airflow(each.mover))
    ]


@quantity("heat_rate")
def rated_cooling(case: Case, circuit: Circuit) -> float:
    """Rated cooling capacity of the unit."""
    assert isinstance(circuit.mover, Equipment)
    assert circuit.mover.cooling is not None
    return float(case.get(circuit.mover.cooling, "rated"))


class Overrun(Record):
    """Airflow at worst that a mover settles at above its design, m3/s; `held_back` where dampers can hold it back."""

    least: float
    held_back: bool

    def worksheet_lines(self, system: str) -> list[str]:
        """The airflow at worst, on one line."""
        from checker.quantities.solved_words import overrun_lines

        return overrun_lines(self, system)


@quantity()
def overrun(case: Case, circuit: Circuit) -> Overrun:
    """How far a mover runs beyond its design. Raises CannotJudge where the losses decide."""
    found, most = moved(case, circuit), circuit_flow(case, circuit) * (1.0 + case.limit("room-airflow-tolerance"))
    if found.low <= most or found.is_less:
        return Overrun(min(found.low, found.high), False)
    if found.high <= most:
        raise CannotJudge(DEPENDS)
    return Overrun(min(found.low, found.high), throttles(case, circuit))


def throttles(case: Case, circuit: Circuit) -> bool:
    """Whether dampers can hold the airflow back: one on the way of all the air, or one on every last way."""
    network, designs = network_of(case, circuit), designs_of(case, circuit)
    ducts = [each for each in network.passages if isinstance(each.thing, Airway)]
    whole = circuit_flow(case, circuit) * (1.0 - NOTHING)
    if any(is_damped(each.thing) for each in ducts if (designs[each.key] or 0.0) >= whole):
        return True
    bare = [way for way in (own_ducts(network, each) for each in network.terminals) if not any(map(is_damped, way))]
    unsaid = [[duct for duct in way if duct.balancing_damper is None] for way in bare]
    if bare and all(unsaid):
        raise Missing(*(path_of(duct, "balancing_damper") for way in unsaid for duct in way))
    return not bare
