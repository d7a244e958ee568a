"""A booster fan stands in a dryer's exhaust duct.

An ordinary booster fan collects lint on its wheel and motor. It stops unnoticed or catches fire, and the dryer
then blows against it.

The usual cause is a duct that is too long. Take the booster out and shorten the duct, or use a power ventilator
that is listed for dryers.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import is_vented
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def boosters(case: Case, dryer: Dryer) -> list[str]:
    """Names of booster fans in the dryer's duct, or its own mark; what is not drawn is not there."""
    marked = [dryer.name] if case.maybe(dryer, "booster") else []
    ends = {dryer.to, dryer.name} - {None}
    fans = [fan for fan in case.design.fans.values() if fan.role == "booster"]
    return [*(fan.name for fan in fans if ends & {*fan.to, *fan.from_} & set(case.design.openings)), *marked]


def check(_dryer: Dryer, names: list[str]) -> Meets | Finding:
    """No booster is allowed."""
    if not names:
        return Meets()
    return Finding(
        "a booster fan stands in the exhaust duct of {name}", at="booster",
        help="take the booster out, and shorten the duct or use a power ventilator listed for dryers",
        numbers={"name": Num(_dryer.name)},
    )  # fmt: skip


RULE = Rule(
    code="DRY-16", name="dryer-booster-fan", severity="correction", since="0.1",
    over=each.dryer, when=is_vented, needs=(boosters,), cites=("dryer-booster",), check=check,
    nothing="the design has no clothes dryer", answers=("E14",),
)  # fmt: skip
