"""Flexible duct is supported too seldom or hangs too low between its supports.

Flexible duct that hangs in swags has more length, more bends and a crumpled liner: its friction can double, and
water collects in the low points of a cold run. Its trade standard asks for a support every 4 ft, no more than
half an inch of sag for each foot between them, and straps at least an inch and a half wide; a connection counts
as a support.

Add supports, pull the duct tight, and cut off what is left over.
"""

from checker.case import Case, Missing, quantity
from checker.design.airway import Airway
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_scope import ducts
from checker.rule import Finding, Meets, Num, Rule


def flexible(case: Case) -> list[Airway]:
    """Flexible ducts whose support the file tells; where it tells of none, the first, so that it is asked for once."""
    found = [duct for duct in ducts(case) if duct.material == "flexible"]
    keys = ("support_spacing", "sag")
    told = [
        duct
        for duct in found
        if any(getattr(duct, key) is not None or f"{duct.path}.{key}" in case.design.tbd for key in keys)
    ]
    return told or found[:1]


@quantity()
def support(case: Case, duct: Airway) -> tuple[float, float]:
    """(support spacing in m, sag in m per m), zero for the one that is not stated."""
    spacing, sag = case.maybe(duct, "support_spacing"), case.maybe(duct, "sag")
    if spacing is None and sag is None:
        raise Missing(f"{duct.path}.support_spacing")
    return spacing or 0.0, sag or 0.0


def check(duct: Airway, stated: tuple[float, float], spacing_limit: float, sag_limit: float) -> Meets | Finding:
    """Compare both with the standard."""
    spacing, sag = stated
    numbers = {"duct": Num(duct_label(duct)), "spacing": Num(spacing, "length"), "sag": Num(sag, "slope")}
    if spacing > spacing_limit:
        return Finding(
            "flexible duct {duct} is supported every {spacing}; the standard asks for every {flexible_support}",
            at="support_spacing",
            help="hang it every {flexible_support} with wide straps",
            numbers=numbers,
        )
    if sag > sag_limit:
        return Finding(
            "flexible duct {duct} sags {sag} between supports; the standard allows {flexible_sag}",
            at="sag",
            help="pull it tight and add supports until it sags {flexible_sag} or less",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="DUCT-13", name="flexible-duct-sags", severity="caution", since="0.1",
    over=flexible, needs=(support,), limits=("flexible-support", "flexible-sag"), check=check, answers=("F51",),
    nothing="no flexible duct is described",
)  # fmt: skip
