"""The damper of make-up air cannot be reached.

Dampers stick, motors fail, screens clog. A make-up damper buried behind a ceiling fails unseen: closed, it starves the
hood and draws flue gas down; open, it lets winter in. The code asks that it can be inspected, repaired and replaced
without removing permanent construction or other ducts.

Move the damper to a place that can be reached, or show an access panel beside it.
"""

from checker.case import Case
from checker.quantities.make_up_air import Exhauster, damper_of, with_make_up_air
from checker.quantities.make_up_entry import damper_access
from checker.rule import Finding, Meets, Rule


def has_damper(case: Case, device: Exhauster) -> bool:
    """Its make-up air has no damper to reach."""
    return damper_of(case, device) != "none"


def check(device: Exhauster, access: bool) -> Meets | Finding:
    """The damper can be reached."""
    if access:
        return Meets()
    return Finding(
        f"the make-up damper of {device.name} cannot be reached without taking something apart",
        at="make_up_air.damper_access" if device.make_up_air is not None else "",
        help="show an access panel at the damper, or move the damper to where it can be reached",
    )


RULE = Rule(
    code="PRES-06", name="make-up-damper-out-of-reach", severity="correction", since="0.1",
    over=with_make_up_air, when=has_damper, needs=(damper_access,), cites=("make-up-air-damper-access",), check=check,
    nothing="no exhaust with required make-up air is shown", answers=("C06",),
)  # fmt: skip
