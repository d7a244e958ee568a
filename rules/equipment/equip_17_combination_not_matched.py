"""The ratings are not those of this combination of outdoor and indoor unit.

Capacity and efficiency belong to a pair. The same outdoor unit with another coil or air handler has other figures,
and often no certified ones; the minimum efficiency is then not shown, and rebates are refused.

Take the figures of the combination from its certificate, and put its reference number on the equipment schedule.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import COMPRESSOR_KINDS
from checker.rule import Finding, Meets, Num, Rule


def rated_splits(case: Case) -> list[Equipment]:
    """Heat pumps, air conditioners and air handlers that state seasonal ratings."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.ratings is not None
        and (unit.kind in COMPRESSOR_KINDS or unit.kind == "air handler")
        and unit.kind != "packaged unit"
        and any(getattr(unit.ratings, each) is not None for each in ("seer2", "hspf2", "eer2", "seer", "hspf", "matched"))
    ]


@quantity()
def is_matched(case: Case, unit: Equipment) -> bool:
    """Whether the ratings are those of the combination: said so, or its reference number is given."""
    ratings = unit.ratings
    stated = case.maybe(ratings, "matched")
    if stated is not None:
        return bool(stated)
    case.get(ratings, "combination")
    return True


def check(unit: Equipment, matched: bool) -> Meets | Finding:
    """Ratings of another pair are the finding."""
    if matched:
        return Meets()
    return Finding(
        "the ratings of {unit} are not those of the combination that is to be installed",
        at="ratings",
        help="show the certified ratings and reference number of this outdoor and indoor combination",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-17", name="combination-not-matched", severity="note", since="0.1",
    over=rated_splits, needs=(is_matched,), cites=("matched-combination",), check=check,
    nothing="no split equipment states ratings", answers=("H19",),
)  # fmt: skip
