"""The pressure balance of a house on paper: streams, leakage curve, ways in, net flow, pressure, make-up air that would hold it."""

from math import log
from typing import TYPE_CHECKING

from checker.physics.house_pressure import path_inflows
from checker.units import show

if TYPE_CHECKING:
    from checker.quantities.combined_exhaust import Combination, Moving
    from checker.quantities.house_pressure import HousePressure
    from checker.quantities.modes import Mode
    from checker.quantities.movers import Stream

HELD = (2.0, 3.0, 5.0)
"""Pa below outdoors at which the make-up air that would hold the house is told."""
TEST, LOW = 50.0, 5.0


def flow(value: float, system: str) -> str:
    """An airflow, below zero with its sign."""
    return f"-{show(-value, 'airflow', system)}" if value < 0.0 else show(value, "airflow", system)


def stream_line(stream: "Stream", system: str) -> str:
    """One device at one setting."""
    run = "runs all the time" if stream.continuous else "on demand"
    return f"{stream.label}: out {flow(stream.exhaust, system)}, in {flow(stream.supply, system)}, {run}"


def mode_lines(mode: "Mode", system: str) -> list[str]:
    """What runs in a mode, and its sums."""
    lines = [stream_line(stream, system) for stream in mode.running]
    sums = f"out {flow(mode.exhaust, system)} - in {flow(mode.supply, system)} = net {flow(mode.net_exhaust, system)} out"
    return [f"{mode.name}: {sums}", *(f"  {line}" for line in lines)]


def moving_line(moving: "Moving", system: str) -> str:
    """One device of a combination, with make-up air that is stated to come with it taken off."""
    stream = moving.stream
    if stream is None:
        return f"{moving.label}: net {flow(moving.net, system)} out"
    made_up = stream.exhaust - stream.supply - moving.net
    less = f", stated make-up air {flow(made_up, system)}" if abs(made_up) > 1e-9 else ""
    return f"{stream_line(stream, system)}{less}; net {flow(moving.net, system)} out"


def combination_lines(combination: "Combination", system: str) -> list[str]:
    """What runs together, and its net exhaust."""
    head = f"{combination.name}: net {flow(combination.net, system)} out"
    return [head, *(f"  {moving_line(one, system)}" for one in combination.running)]


def pressure_lines(found: "HousePressure", system: str) -> list[str]:
    """The whole balance."""
    net = found.combination.net
    leak = found.paths[0]
    exponent = log(leak.flow(TEST) / leak.flow(LOW)) / log(TEST / LOW)
    beyond = ", or further out" if found.beyond else ""
    lines = combination_lines(found.combination, system)
    lines.append(f"envelope: Q = Q50 (p / 50 Pa)^n, Q50 {flow(leak.flow(TEST), system)}, n {exponent:.3g}")
    lines.append(f"house pressure {show(found.value, 'house_pressure', system)}{beyond}, where what comes in makes up the net:")
    inflows = path_inflows(found.value, found.paths)
    for place, (path, inflow) in enumerate(zip(found.paths, inflows, strict=True)):
        name = "envelope" if place == 0 else f"opening {place}{', one way' if path.one_way else ''}"
        lines.append(f"  {name}: {flow(inflow, system)} in")
    lines.append(f"  together {flow(sum(inflows), system)} in against net {flow(net, system)} out")
    if net > 0.0:
        lines += [f"  to hold {limit_text(limit, system)}: {held_text(found, limit, system)}" for limit in HELD]
    return lines


def limit_text(limit: float, system: str) -> str:
    """How far below outdoors, as a limit."""
    return show(-limit, "house_pressure", system)


def held_text(found: "HousePressure", limit: float, system: str) -> str:
    """Make-up air beyond what comes in by itself at this pressure."""
    short = found.combination.net - found.inflow_at(limit)
    came = f"{flow(found.inflow_at(limit), system)} comes in by itself"
    return f"{came}, {flow(short, system)} more make-up air is needed" if short > 0.0 else f"{came}, none is needed"
