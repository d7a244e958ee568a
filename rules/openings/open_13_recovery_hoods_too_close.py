"""The two hoods of a recovery unit are close together, though one is high enough above the other.

The unit then breathes part of its own stale air: the rooms get less fresh air than the airflow says. The rule of
height in the code keeps the plume off the intake in still air, but not in wind or in a corner.

The usual cause is that both ducts leave through one joist bay. Installation instructions commonly ask for 6 to
10 ft along the wall, out of inside corners. Follow those of the unit.
"""

from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.fans import Fan
from checker.physics.distances import ROUNDING
from checker.quantities.clearances import Neighbor, neighbor
from checker.quantities.opening_kinds import COMBINED, kind, uses
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def stale_hood(case: Case, fan: Fan) -> Neighbor:
    """The exhaust hood of a recovery unit as seen from its intake."""
    drawn = case.design.openings
    used = uses(case, case.design)
    intakes = [each for each in drawn.values() if any(u.device is fan and u.kind != "exhaust" for u in used[each.name])]
    outlets = [each for each in drawn.values() if any(u.device is fan and u.kind == "exhaust" for u in used[each.name])]
    if any(kind(case, each) == COMBINED for each in (*intakes, *outlets)):
        raise NotApplicable("intake and exhaust share one combined terminal")
    absent = [f"{fan.path}.{field}" for field, found in (("from", intakes), ("to", outlets)) if not found]
    if absent:
        raise Missing(*absent)
    pairs = [neighbor(case, intake, outlet) for intake in intakes for outlet in outlets]
    return min(pairs, key=lambda each: each.distance.low)


def recovery_units(case: Case) -> list[Fan]:
    """Recovery units."""
    return [fan for fan in case.design.fans.values() if fan.role == "recovery"]


def check(_fan: Fan, outlet: Neighbor, least: float, by_code: float, above: float) -> Meets | Finding:
    """Leave what the code decides to its own rule; judge the rest by the usual distance."""
    apart = outlet.distance
    if apart.high < by_code - ROUNDING and outlet.rise.high < above - ROUNDING:
        raise NotApplicable("the distance that the code asks for decides first")
    numbers = {"near": Num(outlet.label), "apart": Num(apart.low, "length")}
    if apart.low >= least - ROUNDING:
        return Meets(numbers)
    if not apart.known:
        raise Missing(*apart.missing)
    return Finding(
        "{near} is {apart} from the unit's intake, nearer than the usual {recovery_hoods_apart}",
        at="to", help="move one hood {short} farther away, out of inside corners, as the unit's instructions ask",
        numbers={**numbers, "short": Num(least - apart.low, "length")},
    )  # fmt: skip


RULE = Rule(
    code="OPEN-13", name="recovery-hoods-too-close", severity="caution", since="0.1",
    over=recovery_units, needs=(stale_hood,),
    limits=("recovery-hoods-apart", "exhaust-to-intake", "exhaust-above-intake"), check=check,
    nothing="the design has no recovery unit", answers=("D11",),
)  # fmt: skip
