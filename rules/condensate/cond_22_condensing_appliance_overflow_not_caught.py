"""A condensing appliance stands where its overflow would damage the house, and nothing catches it.

Its drain stops up like any other, and its water is acid. The code wants an auxiliary pan where stoppage would damage the
building, unless the appliance shuts itself down.

Show a pan, or state the device that stops the appliance when its drain backs up (`secondary: switch`). Work on fuel-burning
appliances is for licensed people.
"""

from checker.case import Case
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import drains, drains_a_coil, drains_an_appliance, methods, would_do_damage
from checker.rule import Finding, Meets, Rule


def could_do_damage(case: Case, drain: CondensateDrain) -> bool:
    """It drains no condensing appliance, or its overflow would harm nothing, or a coil's rule judges it."""
    return drains_an_appliance(case, drain) and not drains_a_coil(case, drain) and would_do_damage(case, drain)


def check(drain: CondensateDrain, found: frozenset[str]) -> Meets | Finding:
    """A pan or a device that stops the appliance."""
    if found & {"pan with drain", "pan with switch", "switch"}:
        return Meets()
    return Finding(
        f"nothing catches the acid water of {drain.name} when its drain stops up, and it would damage the house",
        at="secondary",
        help="show an auxiliary pan with drain, or the device that stops the appliance",
    )


RULE = Rule(
    code="COND-22", name="condensing-appliance-overflow-not-caught", severity="correction", since="0.1",
    over=drains, when=could_do_damage, needs=(methods,), cites=("condensing-appliance-pan",), check=check,
    nothing="no condensate drain is drawn", answers=("J15",),
)  # fmt: skip
