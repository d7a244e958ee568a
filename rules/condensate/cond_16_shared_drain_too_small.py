"""A drain shared by several units is too small for them together.

Units that share a pipe share its stoppage. The code wants the pipe sized by an approved method; a table of the
mechanical code goes by the cooling capacity on the pipe.

In a house 3/4 in serves up to 20 tons, so the size rarely fails; a separate trap for each unit matters more.
"""

from checker.case import Case, given, quantity
from checker.design.condensate import CondensateDrain
from checker.physics.condensate import drain_size
from checker.quantities.condensate import cooling_drained, drains, drains_a_coil, sources
from checker.rule import Finding, Meets, Num, Rule
from checker.units import parse


def is_shared(case: Case, drain: CondensateDrain) -> bool:
    """It does not drain several units that cool."""
    return len(drain.from_) > 1 and len(sources(case, drain)) > 1 and drains_a_coil(case, drain)


@quantity("length", source="IMC Table 307.2.2")
def size_needed(case: Case, drain: CondensateDrain) -> float:
    """Size for the cooling capacity on the pipe."""
    rows = case.limit("condensate-pipe-table")
    return drain_size(
        cooling_drained(case, drain), [(parse(most, "heat_rate"), parse(size, "length")) for most, size in rows]
    )


def check(drain: CondensateDrain, size: float, needed: float, _cooling: float) -> Meets | Finding:
    """Compare the pipe with the table."""
    if size >= needed:
        return Meets()
    return Finding(
        f"the shared drain {drain.name} is {{found}}, less than the {{size_needed}} for {{cooling_drained}} of cooling",
        at="size",
        help="use a pipe of {size_needed} or more after the units join",
        numbers={"found": Num(size, "length")},
    )


RULE = Rule(
    code="COND-16", name="shared-drain-too-small", severity="caution", since="0.1",
    over=drains, when=is_shared, needs=(given("size"), size_needed, cooling_drained),
    cites=("condensate-shared-pipe", "condensate-pipe-table"), check=check,
    nothing="no condensate drain is drawn", answers=("J16",),
)  # fmt: skip
