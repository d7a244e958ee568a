"""People cannot override the whole-house ventilation by hand.

Smoke from a wildfire, a spray-painted fence or a chemical spill next door: there are hours when outdoor air
must stay out. The code therefore asks for a control by which people can switch the system, even one that
otherwise runs all day.

Show a switch or wall control for it. A breaker in the panel is no control that people use.
"""

from checker import each
from checker.design import Design
from checker.quantities.ventilation_controls import Told, override
from checker.rule import Finding, Meets, Rule


def check(_design: Design, told: Told) -> Meets | Finding:
    """No control of the system may refuse."""
    if told.so:
        return Meets()
    return Finding(
        "the control of the whole-house ventilation cannot be overridden by hand",
        at=told.path,
        help="show a switch or wall control by which people can override it",
    )


RULE = Rule(
    code="VENT-08", name="no-manual-override", severity="correction", since="0.1",
    over=each.design, needs=(override,), cites=("manual-override",), check=check, answers=("A08",),
)  # fmt: skip
