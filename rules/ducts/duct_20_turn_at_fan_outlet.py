"""A turn directly at the fan's outlet takes a good part of its static pressure.

Air leaves a fan unevenly, fastest on one side. An elbow or a U-turn right there costs far more than the same
piece in a straight duct, and the fan gets loud. What is reckoned here is only what the turn would take in even
air, so the true loss is larger.

Turn the fan, or its outlet, toward the duct; give it three diameters of straight duct first; or make the duct a
size or two larger before the turn.
"""

from checker.case import Case, Missing, quantity
from checker.design.fans import Fan
from checker.physics.turn_at_fan import diameter_for_share, share_of_static, turn_loss
from checker.quantities.duct_flow import fastest, mover_flow
from checker.quantities.duct_scope import ROLES
from checker.quantities.static_offer import offer
from checker.quantities.turns import turn_coefficient
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import equivalent_diameter


def turned(case: Case) -> list[Fan]:
    """Supply, recovery and room-air fans with a turn at their outlet."""
    return [fan for fan in case.design.fans.values() if fan.role in ROLES and fan.turn_at_outlet in ("90", "180")]


@quantity("airflow")
def fastest_flow(case: Case, fan: Fan) -> float:
    """Airflow at the fastest setting."""
    return mover_flow(case, fastest(case, fan.settings), fan)


@quantity("pressure")
def offered(case: Case, fan: Fan) -> float:
    """Static pressure that the fan offers there."""
    found = offer(case, fan, fastest(case, fan.settings), fastest_flow(case, fan))
    if found.low <= 0.0 or found.low < found.high:
        raise Missing(found.ask or f"{fan.path}.settings")
    return found.high


@quantity("diameter")
def turn_diameter(case: Case, fan: Fan) -> float:
    """Diameter of the outlet, else of the duct on it."""
    stated = case.maybe(fan, "outlet_size")
    if stated is not None:
        return float(stated)
    if fan.duct is None or fan.duct.size is None:
        raise Missing(f"{fan.path}.outlet_size")
    return equivalent_diameter(case.get(fan.duct, "size"))


def check(fan: Fan, airflow: float, static: float, diameter: float, limit: float) -> Meets | Finding:
    """Compare the least loss of the turn with a share of the static pressure."""
    coefficient = turn_coefficient(fan)
    loss = turn_loss(airflow, diameter, coefficient)
    numbers = {
        "fan": Num(fan.name),
        "angle": Num(str(fan.turn_at_outlet)),
        "loss": Num(loss, "pressure"),
        "larger": Num(diameter_for_share(airflow, coefficient, static, limit), "diameter"),
    }
    if share_of_static(loss, static) <= limit * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{fan} turns its air by {angle} degrees right at its outlet: {loss} or more of its {offered} goes there",
        at="turn_at_outlet",
        help="turn the fan toward its duct, or make the turn {larger} or larger",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-20", name="turn-at-fan-outlet", severity="caution", since="0.1",
    over=turned, needs=(fastest_flow, offered, turn_diameter), limits=("turn-at-fan-share",), check=check,
    nothing="no supply or recovery fan has a turn at its outlet",
)  # fmt: skip
