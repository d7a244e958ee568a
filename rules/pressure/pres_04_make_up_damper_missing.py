"""Required make-up air has no damper.

Without a damper the make-up opening is a hole in the house: it lets cold air in all winter. The code asks for at least
one damper, closed when the exhaust is off: a gravity damper, or a powered one that opens with the exhaust.

Show the damper and its kind. A gravity damper has to be one that passes the flow at a very low pressure.
"""

from checker.quantities.make_up_air import Exhauster, damper_of, with_make_up_air
from checker.rule import Finding, Meets, Rule


def check(device: Exhauster, damper: str) -> Meets | Finding:
    """Some damper is shown."""
    if damper != "none":
        return Meets()
    return Finding(
        f"the make-up air of {device.name} has no damper",
        at="make_up_air.damper" if device.make_up_air is not None else "",
        help="show a powered damper that opens with the exhaust, or a gravity damper rated for the flow at 3 Pa",
    )


RULE = Rule(
    code="PRES-04", name="make-up-damper-missing", severity="correction", since="0.1",
    over=with_make_up_air, needs=(damper_of,), cites=("make-up-air-damper",), check=check,
    nothing="no exhaust with required make-up air is shown", answers=("C04",),
)  # fmt: skip
