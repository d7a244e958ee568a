"""The control of the whole-house ventilation carries no text or symbol that tells what it does.

A switch beside the bath light that nobody can read is switched off within a week, and stays off. Since 2021
the code asks for a text or symbol on it.

Write the text on the drawing, for example WHOLE-HOUSE VENTILATION, or show the symbol.
"""

from checker import each
from checker.design import Design
from checker.quantities.ventilation_controls import Told, label
from checker.rule import Finding, Meets, Rule


def check(_design: Design, told: Told) -> Meets | Finding:
    """A label must be there."""
    if told.so:
        return Meets()
    return Finding(
        "the control of the whole-house ventilation has no text or symbol for its function",
        at=told.path,
        help="show the text on it, for example WHOLE-HOUSE VENTILATION",
    )


RULE = Rule(
    code="VENT-09", name="control-without-label", severity="correction", since="0.1",
    over=each.design, needs=(label,), cites=("control-label",), check=check, answers=("A09", "Q08"),
)  # fmt: skip
