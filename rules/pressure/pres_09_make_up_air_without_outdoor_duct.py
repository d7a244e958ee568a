"""Make-up air has no duct from outdoors.

From 2024 on required make-up air comes by at least one outdoor-air duct with a damper. Air borrowed from a garage, an
attic or a crawl space brings their dust, fumes and moisture along; a hole in the wall behind the refrigerator has no
place for a damper that can be serviced.

Show the duct from its outdoor opening to the room that it enters, with its size and its damper.
"""

from checker.quantities.make_up_air import Exhauster, with_record
from checker.quantities.make_up_entry import has_outdoor_duct
from checker.rule import Finding, Meets, Rule


def check(device: Exhauster, ducted: bool) -> Meets | Finding:
    """A duct is shown."""
    if ducted:
        return Meets()
    return Finding(
        f"the make-up air of {device.name} has no duct from outdoors",
        at="make_up_air.duct",
        help="show a duct from an outdoor opening, with its size, its damper and the room it enters",
    )


RULE = Rule(
    code="PRES-09", name="make-up-air-without-outdoor-duct", severity="correction", since="0.1",
    over=with_record, needs=(has_outdoor_duct,), cites=("make-up-air-outdoor-duct",), check=check,
    nothing="no required make-up air without a fan of its own is shown", answers=("C04",),
)  # fmt: skip
