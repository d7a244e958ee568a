"""An inner surface gets so cold in winter that mold can grow on it.

Mold needs no running water: room air that is cooled at a surface to 80 % relative humidity or more for weeks is
enough. It starts where insulation is thin or interrupted, behind furniture and curtains and in closets on outer walls.

The month that counts is the coldest one, with its mean temperature outdoors, not the design day. A plain wall, ceiling
or floor is reckoned with the slow air of corners and curtains (0.25 m2 K/W); a detail by its temperature factor, else
by the usual ones of its kind. The humidity is the one stated for winter, else what the ventilation leaves, else the
usual one of dwellings. Insulate the place, or keep the rooms drier.
"""

from checker.case import CannotJudge, Case, quantity
from checker.design.details import Detail
from checker.design.envelope import Assembly
from checker.quantities.cold_surfaces import ColdNode, Touching, air_at_surface, cold_nodes, u_that_helps
from checker.quantities.moist_air import has_frost
from checker.rule import Finding, Meets, Num, Rule


@quantity("u_value", "resistance at which the surface stays dry enough")
def most_u(case: Case, node: ColdNode) -> float | None:
    """Highest U-value of an assembly on which no mold grows; None for details, and where none is low enough."""
    try:
        return u_that_helps(case, node) if isinstance(node, Assembly) else None
    except CannotJudge:
        return None


def check(node: ColdNode, air: Touching, most: float | None, limit: float) -> Meets | Finding:
    """Compare the humidity at the surface with the limit."""
    numbers = {
        "name": Num(node.name),
        "surface": Num(air.surface, "temperature"),
        "outdoor": Num(air.outdoor, "temperature"),
        "humidity": Num(air.humidity, "relative_humidity"),
        "wet": Num(air.at_surface, "relative_humidity"),
    }
    if air.at_surface <= limit * (1 + 1e-9):
        return Meets(numbers)
    if most is not None:
        words = "insulate it to {most_u} or better"
    elif isinstance(node, Detail) and air.needed is not None:
        numbers["needed"] = Num(f"{air.needed + 0.005:.2f}")
        words = "interrupt it by insulation until its temperature factor is {needed} or more, and state that"
    else:
        words = "insulate it, and keep the rooms drier by more outdoor air"
    return Finding(
        "in a month with a mean of {outdoor} outdoors the inside of {name} stays at {surface}; room air of {humidity} has "
        "{wet} relative humidity there, above {limit}",
        help=words,
        numbers=numbers,
    )


RULE = Rule(
    code="LOAD-31", name="cold-surface-grows-mold", severity="caution", since="0.1",
    over=cold_nodes, when=has_frost, needs=(air_at_surface, most_u), limits=("mold-surface-humidity",),
    cites=("coldest-month-above-design", "usual-humidity-indoors", "bare-detail-factors", "insulated-detail-factor"),
    check=check, nothing="no envelope with assemblies or details of heated rooms is described",
)  # fmt: skip
