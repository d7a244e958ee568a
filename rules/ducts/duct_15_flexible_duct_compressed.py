"""Flexible duct is compressed more than its natural few per cent.

Flexible duct that is not pulled out to its full length has a liner in folds. By the handbook's equation 15 %
compression makes the friction of an 8 in duct four times that of the stretched duct, 30 % seven times.

Stretch it, cut it to length, and state what the drawing asks for: 4 % or less.
"""

from checker.case import Case, quantity
from checker.design.airway import Airway
from checker.physics.flexible import compression_factor
from checker.physics.validity import OutOfRange
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_scope import ducts
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import equivalent_diameter


def told(case: Case) -> list[Airway]:
    """Flexible ducts about whose compression the file says something."""
    return [
        duct
        for duct in ducts(case)
        if duct.material == "flexible" and (duct.compression is not None or f"{duct.path}.compression" in case.design.tbd)
    ]


@quantity("share")
def compression(case: Case, duct: Airway) -> float:
    """How far it is from fully stretched."""
    return float(case.get(duct, "compression"))


@quantity()
def times(case: Case, duct: Airway) -> str:
    """How many times the friction of the stretched duct, in words; nothing outside the range of the equation."""
    if duct.size is None:
        return ""
    try:
        factor = compression_factor(equivalent_diameter(duct.size), case.get(duct, "compression"))
    except OutOfRange:
        return ""
    return f", which makes its friction {factor:.1f} times that of stretched duct"


def check(duct: Airway, share: float, factor: str, limit: float) -> Meets | Finding:
    """Compare with the limit."""
    numbers = {"duct": Num(duct_label(duct)), "times": Num(factor)}
    if share <= limit * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        "flexible duct {duct} is {compression} short of fully stretched, more than {limit}{times}",
        at="compression",
        help="note on the drawing that it is pulled tight, within {limit}, and cut to length",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-15", name="flexible-duct-compressed", severity="caution", since="0.1",
    over=told, needs=(compression, times), limits=("flexible-compression",), check=check, answers=("F53",),
    nothing="the file says of no flexible duct how far it is stretched",
)  # fmt: skip
