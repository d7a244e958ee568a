"""A recirculating hood is the only ventilation of its kitchen.

A hood that blows back into the room keeps some grease in its filter; steam, heat and the gases of burners stay.
The code lets a listed one pass only where mechanical or natural ventilation is otherwise provided.

The usual cause is an inner wall without a way for the duct. Exhaust the kitchen by a fan or a recovery unit,
give it an openable window, or find the hood a duct.
"""

from checker.case import Case
from checker.design.hoods import Hood
from checker.quantities.kitchen_air import other_ventilation
from checker.rule import Finding, Meets, Num, Rule


def recirculating_hoods(case: Case) -> list[Hood]:
    """Hoods that blow back into the room."""
    return [hood for hood in case.design.hoods.values() if hood.recirculating]


def check(hood: Hood, other: str) -> Meets | Finding:
    """Whether anything else airs the room."""
    numbers = {"name": Num(hood.name), "other": Num(other)}
    if other:
        return Meets(numbers)
    return Finding(
        "{name} blows back into the room, and nothing else ventilates the kitchen",
        at="recirculating",
        help="duct the hood to outdoors, or give the kitchen an exhaust fan or an openable window", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-11", name="recirculating-hood-alone", severity="correction", since="0.1",
    over=recirculating_hoods, needs=(other_ventilation,), cites=("ductless-hood",), check=check,
    nothing="no hood blows back into the room", answers=("B13",),
)  # fmt: skip
