"""A figure on the energy certificate is not that of the design.

The certificate is what remains when the drawings are gone. It is often filled in from the plans of another house, or
before a window or a heat pump was changed.

Correct the certificate or the design, whichever is out of date. For each part it states the figure that covers most
of the area; for windows the mean by area serves as well.
"""

from typing import Any

from checker.codebook import converted
from checker.quantities.certificate import WORDS
from checker.quantities.certificate_figures import (
    DIMENSIONS,
    MEASURED,
    Figure,
    Own,
    figures,
    of_the_design,
    stated_figure,
)
from checker.rule import Finding, Meets, Num, Rule


def check(figure: Figure, stated: float | str, own: Own, rounding: dict[str, Any]) -> Meets | Finding:
    """Agreement within rounding; words must be the same."""
    slack = float(converted(rounding["measured" if figure.field in MEASURED else "product"], "share"))
    dimension = DIMENSIONS.get(figure.field, "")
    numbers = {"what": Num(WORDS[figure.field]), "stated": Num(stated, dimension), "own": Num(own.values[0], dimension)}
    if any(agrees(stated, value, slack) for value in own.values):
        return Meets(numbers)
    return Finding(
        "the energy certificate gives {stated} as {what}; by the design it is {own}",
        help="correct the certificate or the design, whichever is out of date", numbers=numbers,
    )  # fmt: skip


def agrees(stated: float | str, own: float | str, slack: float) -> bool:
    """Whether two words are the same, or two numbers within rounding."""
    if isinstance(stated, str) or isinstance(own, str):
        return stated == own
    return abs(stated - own) <= slack * own * (1 + 1e-9)


RULE = Rule(
    code="CTRL-12", name="energy-certificate-differs", severity="caution", since="0.1",
    over=figures, needs=(stated_figure, of_the_design), limits=("certificate-rounding",), cites=("energy-certificate",),
    check=check, nothing="the papers hold no energy certificate", answers=("Q09",),
)  # fmt: skip
