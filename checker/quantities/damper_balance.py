"""The best that balancing dampers can do: every outlet at the same share of its design, the damper of one left open.

Source: proportional balancing, ASHRAE Handbook - HVAC Applications, chapter "Testing, Adjusting, and Balancing".
"""

from collections.abc import Mapping

from checker.case import CannotJudge
from checker.physics.scalar_root import bracketed_root
from checker.quantities.duct_mesh import HELD, Passage
from checker.quantities.duct_network import DuctNetwork, solve
from checker.record import Record

SHARE_TOLERANCE = 1e-4


class Balance(Record):
    """The share of its design that every terminal gets, what the damper of each takes in Pa by key, and the terminal
    whose way takes most, so that its damper takes nothing.

    `is_less` means that even that share is more than the mover moves: its stable, printed curve ends there.
    """

    share: float
    takes: dict[str, float]
    critical: str
    is_less: bool

    def worksheet_lines(self, _system: str) -> list[str]:
        """The balance on one line."""
        less = "less than " if self.is_less else ""
        return [f"{less}{100.0 * self.share:.1f} % of the design for each; the damper of {self.critical} stands open"]


def balance(
    network: DuctNetwork, designs: Mapping[str, float | None], worst: tuple[str, ...] | None
) -> Balance | None:
    """The balance with these passages at their upper bounds; None with several movers or without design airflows."""
    wanted = {each.key: designs[each.key] or 0.0 for each in network.terminals}
    if len(network.models) > 1 or not wanted or min(wanted.values()) <= 0.0:
        return None
    whole = sum(wanted.values())
    share, is_less = network.model.flow / whole, False
    curve = network.model.curve
    if curve is not None:
        # Leakage, if any, takes its part of the same airflow: then the ends are out of reach, not wrong.
        least, most = max(curve.lowest_stable_flow / whole, 1e-6), curve.free_flow / whole * (1.0 - 1e-6)

        def spare(share: float) -> float:
            return spare_at(network, wanted, share, worst)

        share = least * (1.0 + 1e-6)
        is_less = spare(share) <= 0.0
        if not is_less:
            share = bracketed_root(spare, share, most, SHARE_TOLERANCE, "balance of the dampers")
    try:
        takes = takes_at(network, wanted, share, worst)
    except CannotJudge:  # leakage inward leaves the fan less than its curve shows
        return Balance(share, {}, next(iter(wanted)), is_less)
    critical = min(takes, key=lambda key: takes[key])
    return Balance(share, {key: max(value - takes[critical], 0.0) for key, value in takes.items()}, critical, is_less)


def spare_at(network: DuctNetwork, wanted: dict[str, float], share: float, worst: tuple[str, ...] | None) -> float:
    """Least pressure in Pa that is left at any terminal; below zero where the fan cannot move that much."""
    try:
        return min(takes_at(network, wanted, share, worst).values())
    except CannotJudge:
        return -1.0


def takes_at(
    network: DuctNetwork, wanted: dict[str, float], share: float, worst: tuple[str, ...] | None
) -> dict[str, float]:
    """Pressure in Pa that is left for a damper at every terminal that gets this share of its design."""
    answer = solve(network, worst, {key: share * flow for key, flow in wanted.items()})
    sign = -1.0 if network.center.outgoing else 1.0
    return {
        each.key: sign * answer.pressures[free_joint(each)] - sum(answer.losses[each.key].values())
        for each in network.terminals
    }


def free_joint(terminal: Passage) -> str:
    """The joint at which a terminal leaves the ducts."""
    return terminal.end if terminal.start in HELD else terminal.start


def way_to(network: DuctNetwork, terminal: Passage) -> list[Passage]:
    """The passages from the mover to a terminal, by the smallest number of joints."""
    center = network.center
    first = center.start if center.outgoing else center.end
    ways: dict[str, list[Passage]] = {first: []}
    waiting = [first]
    while waiting:
        joint = waiting.pop(0)
        for each in network.passages:
            for one, other in ((each.start, each.end), (each.end, each.start)):
                if one == joint and other not in ways and other not in HELD and each.kind != "mover":
                    ways[other] = [*ways[joint], each]
                    waiting.append(other)
    return [*ways.get(free_joint(terminal), []), terminal]


def outward(network: DuctNetwork) -> list[Passage]:
    """The passages in the order in which a walk from the mover meets them, what it blows through first."""
    found = {network.center.key: network.center}
    for first in (network.center.end, network.center.start):
        waiting, seen = [first], {first, *HELD}
        while waiting:
            joint = waiting.pop(0)
            for each in network.passages:
                if joint in (each.start, each.end) and joint not in HELD and each.key not in found:
                    found[each.key] = each
                    beyond = each.end if each.start == joint else each.start
                    if beyond not in seen:
                        seen.add(beyond)
                        waiting.append(beyond)
    return list(found.values())
