"""A drain pan under suction has no trap, or one that the fan can suck dry.

Where the fan draws air through the coil, the pan is under suction. Without a trap the fan pulls air up the pipe, the water
cannot leave, and the pan runs over or spits into the duct. A trap that is too shallow is sucked dry.

The seal takes half the suction as a column of water and an inch; the outlet lies below the pan by the whole of it and an inch.
The maker's figures go first: `by_maker: {trap_depth: ..., trap_drop: ...}`. Reckon with the filter loaded.
"""

from checker.case import Case, Missing, path_of
from checker.design.condensate import CondensateDrain
from checker.design.equipment import Equipment
from checker.quantities.condensate import POINT_UNITS, Trap, drains, drains_a_coil, sources, trap
from checker.rule import Finding, Meets, Num, Rule

SLACK = 1.0 - 1e-9


def is_under_suction(case: Case, drain: CondensateDrain) -> bool:
    """No ducted unit of it draws air through its coil."""
    kinds = {source.kind for source in sources(case, drain) if isinstance(source, Equipment)}
    if not drains_a_coil(case, drain) or kinds <= POINT_UNITS | {"dehumidifier"}:
        return False
    stated = case.maybe(drain, "coil")
    if stated is not None:
        return bool(stated == "draw-through")
    if kinds <= {"furnace"}:
        return False
    if drain.trap is None:
        raise Missing(path_of(drain, "coil"))
    return True


def check(drain: CondensateDrain, drawn: Trap | None) -> Meets | Finding:
    """Seal and drop against what the suction or the maker asks for."""
    if drawn is None:
        return Finding(
            f"the pan of {drain.name} is under suction, and its drain has no trap",
            at="trap",
            help="show a trap at the unit, of the maker's depth, with a cleanout and a vent after it",
        )
    for field, found, least in (
        ("depth", drawn.depth, drawn.least_depth),
        ("drop", drawn.drop, drawn.least_drop),
    ):
        if found is not None and found < least * SLACK:
            what = "seal" if field == "depth" else "drop from the pan"
            return Finding(
                f"the trap of {drain.name} has a {what} of {{found}}, less than {{least}}",
                at=f"trap.{field}",
                help=f"give the trap a {what} of {{least}} or more, or the maker's figure",
                numbers={"found": Num(found, "length"), "least": Num(least, "length")},
            )
    return Meets()


RULE = Rule(
    code="COND-17", name="trap-missing-or-shallow", severity="caution", since="0.1",
    over=drains, when=is_under_suction, needs=(trap,), cites=("condensate-trap",), check=check,
    nothing="no condensate drain is drawn", answers=("J17",),
)  # fmt: skip
