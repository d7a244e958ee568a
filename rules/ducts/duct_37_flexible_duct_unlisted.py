"""Flexible duct is not listed as a duct.

Hose made for other uses, or duct of no known origin, may burn, shrink or shed its liner. Factory-made duct is
listed and labeled by UL 181 (air duct; air connectors are limited in length and place) and installed by its
maker's instructions.

Write the listing with the run: `listing: UL 181`.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.airway import Airway
from checker.quantities.duct_sets import DuctSet, answered, below, duct_sets, flawed, listed
from checker.rule import Finding, Meets, Num, Rule

FACTORY_MADE = ("flexible", "semi-rigid aluminum")


@quantity()
def without_listing(case: Case, of: DuctSet) -> tuple[Airway, ...]:
    """Factory-made ducts whose listing is another one or none. Raises Missing where nothing is said."""
    made = [duct for duct in of.ducts if duct.material in FACTORY_MADE]
    if not made:
        raise NotApplicable("none of its ducts is flexible")
    bad = flawed(made, lambda duct: duct.listing is not None and "181" not in duct.listing)
    answered(case, made, "listing", bad)
    return bad


def check(of: DuctSet, bad: tuple[Airway, ...]) -> Meets | Finding:
    """All flexible duct is listed."""
    if not bad:
        return Meets()
    return Finding(
        "flexible duct ({ducts}) has the listing `{listing}`, not UL 181",
        at=below(of, bad[0], "listing"),
        help="use flexible duct that is listed and labeled by UL 181, or rigid metal",
        numbers={"ducts": Num(listed(bad)), "listing": Num(bad[0].listing or "none")},
    )


RULE = Rule(
    code="DUCT-37", name="flexible-duct-unlisted", severity="correction", since="0.1",
    over=duct_sets, needs=(without_listing,), cites=("factory-made-duct",), check=check, nothing="no duct is drawn",
    answers=("F03",),
)  # fmt: skip
