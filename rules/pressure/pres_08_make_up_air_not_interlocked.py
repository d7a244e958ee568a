"""Make-up air does not start or open by itself when the exhaust runs.

A make-up damper that waits for someone to press a second switch stays shut. The code asks for a damper that opens
automatically when the exhaust runs; a make-up fan has to start with it for the same reason.

Show the interlock: a current sensor or pressure switch at the hood, or a common control, that opens the damper or
starts the fan at every speed of the exhaust. An electrician or the hood's maker says how it is wired.
"""

from checker.case import Case
from checker.quantities.make_up_air import Exhauster, damper_of, opens_with_exhaust, with_make_up_air
from checker.rule import Finding, Meets, Rule


def opens_at_all(case: Case, device: Exhauster) -> bool:
    """Its make-up air has no damper that would have to open."""
    return damper_of(case, device) != "none"


def check(device: Exhauster, opens: bool) -> Meets | Finding:
    """The make-up air comes with the exhaust."""
    if opens:
        return Meets()
    return Finding(
        f"the make-up air of {device.name} does not open by itself when {device.name} runs",
        at="make_up_air.interlock" if device.make_up_air is not None else "",
        help="show an interlock that opens the damper, or starts the make-up fan, at every speed of the exhaust",
    )


RULE = Rule(
    code="PRES-08", name="make-up-air-not-interlocked", severity="correction", since="0.1",
    over=with_make_up_air, when=opens_at_all, needs=(opens_with_exhaust,), cites=("make-up-air-opens-with-exhaust",),
    check=check, nothing="no exhaust with required make-up air is shown", answers=("C04", "C09"),
)  # fmt: skip
