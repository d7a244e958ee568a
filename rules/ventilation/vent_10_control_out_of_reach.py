"""The control of the whole-house ventilation is out of people's reach.

The ventilation standard wants an on-off switch or override that people can readily reach. Recalled from its
text: check it there. A switch on the unit in the attic, or behind a screwed cover, will not be used when
smoke is in the air, and the person who silenced the fan will not find it again either.

Move the control to a hall or living space.
"""

from checker import each
from checker.design import Design
from checker.quantities.ventilation_controls import Told, accessible
from checker.rule import Finding, Meets, Rule


def check(_design: Design, told: Told) -> Meets | Finding:
    """Each control must be within reach."""
    if told.so:
        return Meets()
    return Finding(
        "the control of the whole-house ventilation is not readily accessible",
        at=told.path,
        help="move the control to a hall or living space, or add a wall switch there",
    )


RULE = Rule(
    code="VENT-10", name="control-out-of-reach", severity="caution", since="0.1",
    over=each.design, needs=(accessible,), cites=("standard-control",), check=check, answers=("A26",),
)  # fmt: skip
