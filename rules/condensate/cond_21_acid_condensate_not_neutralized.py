"""Acid condensate of a condensing appliance runs into metal drains or a septic system.

The water of a condensing furnace, boiler or water heater is about as sour as vinegar. It eats copper and cast iron and can
harm the life in a septic tank. Makers and many places ask for a neutralizer.

Show a cartridge with limestone in the drain, where it can be refilled, or lead the drain in plastic to plastic.
"""

from checker.case import Case, quantity
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import drains, drains_an_appliance
from checker.rule import Finding, Meets, Rule


@quantity()
def is_harmless(case: Case, drain: CondensateDrain) -> bool:
    """Whether the acid is neutralized, or meets neither metal nor a septic system."""
    if case.maybe(drain, "neutralizer"):
        return True
    return not case.get(drain, "metal_or_septic") or bool(case.get(drain, "neutralizer"))


def check(drain: CondensateDrain, harmless: bool) -> Meets | Finding:
    """Neutralized, or nothing to harm."""
    if harmless:
        return Meets()
    return Finding(
        f"the acid condensate of {drain.name} runs into metal drains or a septic system without a neutralizer",
        at="neutralizer",
        help="show a neutralizer in the drain, where it can be refilled",
    )


RULE = Rule(
    code="COND-21", name="acid-condensate-not-neutralized", severity="caution", since="0.1",
    over=drains, when=drains_an_appliance, needs=(is_harmless,), cites=("condensate-neutralizer",), check=check,
    nothing="no condensate drain is drawn", answers=("J18",),
)  # fmt: skip
