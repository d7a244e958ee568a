"""Flexible duct is bent more sharply than its own diameter.

A tight bend folds the liner of flexible duct flat on the inside and closes part of it. Its trade standard asks
for a centerline radius of at least one diameter, and for a straight piece of a diameter before the bend.

Use a wider bend, or a rigid elbow where there is no room for one.
"""

from checker.case import Case, quantity
from checker.design.airway import Airway
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_scope import ducts
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import equivalent_diameter

INCH = 0.0254


def bent(case: Case) -> list[Airway]:
    """Flexible ducts whose bends the file describes."""
    return [
        duct
        for duct in ducts(case)
        if duct.material == "flexible"
        and (duct.elbow_radius is not None or f"{duct.path}.elbow_radius" in case.design.tbd)
    ]


@quantity("diameter", source="a tight or mitered bend has half a diameter, a smooth one a diameter and a half")
def bend_radius(case: Case, duct: Airway) -> float:
    """Centerline radius of the bends."""
    diameter = equivalent_diameter(case.get(duct, "size"))
    words = {"mitered": 0.5, "tight": 0.5, "smooth": 1.5}
    stated: str = case.get(duct, "elbow_radius")
    if stated in words:
        return words[stated] * diameter
    return float(stated.partition(" ")[0]) * INCH


@quantity("diameter")
def diameter(case: Case, duct: Airway) -> float:
    """Diameter of the duct."""
    return equivalent_diameter(case.get(duct, "size"))


def check(duct: Airway, radius: float, across: float, limit: float) -> Meets | Finding:
    """Compare the radius with the diameter."""
    numbers = {"duct": Num(duct_label(duct)), "least": Num(limit * across, "diameter")}
    if radius >= limit * across * (1.0 - 1e-9):
        return Meets(numbers)
    return Finding(
        "flexible duct {duct} is bent to a radius of {bend_radius}, less than its diameter of {diameter}",
        at="elbow_radius",
        help="bend it to {least} or more, or put in a rigid elbow",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-16", name="flexible-bend-too-tight", severity="caution", since="0.1",
    over=bent, needs=(bend_radius, diameter), limits=("flexible-bend-radius",), check=check, answers=("F52",),
    nothing="the file describes the bends of no flexible duct",
)  # fmt: skip
