"""Fans share a duct or terminal, and not each of them has a backdraft damper.

When one fan runs, part of its air takes the other branch and comes out in the other bath, with its smells. A
damper at each fan keeps it on its way; a terminal for each does it better.

The usual cause is a second bath fan that was tied into the duct of the first. Show a damper at each fan, or give
each its own terminal.
"""

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.fans import Fan
from checker.quantities.exhaust_duct import exhaust_line
from checker.quantities.exhaust_end import exhausts, sharers
from checker.rule import Finding, Meets, Num, Rule


def exhaust_fans(case: Case) -> list[Fan]:
    """Exhaust fans that share their way out with something."""
    return [
        each for each in exhausts(case) if isinstance(each, Fan) and each.role == "exhaust" and others(case, each)
    ]


@quantity()
def others(case: Case, fan: Fan) -> str:
    """Names of what it shares its duct or terminal with; an empty text for nothing."""
    named: list[str] = []
    try:
        for section in exhaust_line(case, fan).sections:
            named += section.shared_with
    except (Missing, NotApplicable):
        pass
    return ", ".join(dict.fromkeys([*named, *sharers(case, fan)]))


@quantity()
def has_damper(case: Case, fan: Fan) -> bool:
    """Whether a backdraft damper stands at the fan or in its own duct."""
    words = [case.maybe(fan, "damper")]
    if fan.duct is not None:
        words += [case.maybe(fan.duct, "damper"), True if "backdraft-damper" in fan.duct.pieces else None]
    if True in words:
        return True
    if words[0] is None:
        raise Missing(path_of(fan, "damper"))
    return False


def check(fan: Fan, others: str, has_damper: bool) -> Meets | Finding:
    """A damper at the fan keeps the air of the others out."""
    numbers = {"name": Num(fan.name)}
    if has_damper:
        return Meets(numbers)
    return Finding(
        "{name} shares its way out with {others} and has no backdraft damper",
        at="damper", help="show a backdraft damper at each fan, or give each its own duct and terminal",
        numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-35", name="exhausts-share-a-way-out", severity="caution", since="0.1",
    over=exhaust_fans, needs=(others, has_damper), cites=("shared-terminal-dampers",), check=check,
    nothing="no exhaust fan shares its way out",
)  # fmt: skip
