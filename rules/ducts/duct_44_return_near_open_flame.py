"""A return opening is near an open flame or draft hood in the same space.

A return pulls hundreds of cfm out of its room. Near a draft hood or an open combustion chamber it pulls the flue
gas with it and spreads carbon monoxide through every register. The distance is 10 ft in any direction.

Move the return to another room, or have a licensed contractor replace the appliance by one that is sealed from
the room. A carbon monoxide alarm does not make a near return safe.
"""

from checker.case import Case
from checker.design import Design
from checker.quantities.return_air import Inlet, flame_distance, inlets
from checker.rule import Finding, Meets, Num, Rule


def return_inlets(case: Case) -> list[Inlet]:
    """All places of return air."""
    design: Design = case.design
    return inlets(case, design)


def check(inlet: Inlet, distance: float | None, least: float) -> Meets | Finding:
    """Compare the distance with 10 ft."""
    if distance is None or distance >= least:
        return Meets()
    return Finding(
        "{inlet} takes return air {flame_distance} from an open flame or draft hood, nearer than {limit}",
        at="distance_to_flame" if inlet.outlet is not None and inlet.outlet.distance_to_flame is not None else "",
        help="move the return to another room or {limit} away, or have the appliance replaced by a sealed one by a "
        "licensed contractor",
        numbers={"inlet": Num(inlet.name)},
    )


RULE = Rule(
    code="DUCT-44", name="return-near-open-flame", severity="correction", since="0.1",
    over=return_inlets, needs=(flame_distance,), limits=("return-near-flame",), check=check,
    nothing="nothing says where return air is taken", answers=("F33",),
)  # fmt: skip
