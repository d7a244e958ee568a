"""A ducted hood has no backdraft damper.

Without one cold air falls down the duct all winter, and another exhaust in the house can draw outdoor air and
grease smell in through the hood.

The usual cause is a damper that was left out because the hood's own flap was expected to do. Show one in the
hood, in the duct, or at the terminal.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.hoods import Hood
from checker.quantities.exhaust_duct import exhaust_line
from checker.quantities.exhaust_end import ducted_hoods, ends
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def has_damper(case: Case, hood: Hood) -> bool:
    """Whether a damper stands in the hood, the duct or the terminal."""
    words: list[object] = [case.maybe(hood, "damper")]
    try:
        for section in exhaust_line(case, hood).sections:
            words.append(case.maybe(section, "damper"))
            words.append(True if "backdraft-damper" in section.pieces else None)
    except Missing:
        pass
    try:
        for end in ends(case, hood):
            damper = case.maybe(end.opening, "damper") if end.opening is not None else None
            words.append(None if damper is None else damper != "none")
    except Missing:
        pass
    if True in words:
        return True
    if words[0] is None:
        raise Missing(path_of(hood, "damper"))
    return False


def check(hood: Hood, has_damper: bool) -> Meets | Finding:
    """One damper anywhere on the way is enough."""
    numbers = {"name": Num(hood.name)}
    if has_damper:
        return Meets(numbers)
    return Finding(
        "{name} has no backdraft damper in the hood, its duct or its terminal",
        at="damper", help="show a backdraft damper in the hood, its duct or its terminal", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-17", name="hood-without-backdraft-damper", severity="correction", since="0.1",
    over=ducted_hoods, needs=(has_damper,), cites=("hood-discharge",), check=check,
    nothing="the design has no ducted hood", answers=("B12",),
)  # fmt: skip
