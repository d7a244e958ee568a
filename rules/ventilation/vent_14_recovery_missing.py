"""A house in a cold climate zone has no heat or energy recovery.

In the coldest zones the energy chapter asks for balanced ventilation with heat or energy recovery: the air
that leaves warms the air that comes in. Zones 7 and 8 since 2021, zone 6 too since 2024.

Show a recovery unit with its two airflows, its sensible recovery and how it keeps from freezing. Where the
climate zone on the drawing is wrong, correct `site.climate_zone`.
"""

from checker import each
from checker.case import Case, Missing, quantity
from checker.design import Design
from checker.quantities.climate import zone_number
from checker.rule import Finding, Meets, Rule


def is_compulsory(case: Case, design: Design) -> bool:
    """The edition does not ask for recovery in this climate zone."""
    return zone_number(case, design) in case.limit("recovery-zones")


@quantity()
def has_recovery(case: Case, design: Design) -> bool:
    """Whether the design shows a recovery unit."""
    if not case.stated("fans"):
        raise Missing("fans")
    roles = [fan.role or case.get(fan, "role") for fan in design.fans.values()]
    return "recovery" in roles


def check(_design: Design, zone: int, recovery: bool) -> Meets | Finding:
    """A recovery unit must be there."""
    if recovery:
        return Meets()
    return Finding(
        "climate zone {zone_number} asks for heat or energy recovery, and no recovery unit is shown",
        at="fans",
        help="show a balanced recovery unit with its airflows and its sensible recovery at 32 degF",
    )


RULE = Rule(
    code="VENT-14", name="recovery-missing", severity="correction", since="0.1",
    over=each.design, when=is_compulsory, needs=(zone_number, has_recovery),
    cites=("recovery-zones",), check=check, answers=("A12",),
)  # fmt: skip
