"""A duct outdoors or above the roof is not protected against the weather.

Rain gets into joints and insulation, sun ages tape and jackets, and wet insulation is worth nothing. A duct that
crosses a roof needs a weathertight jacket, sealed joints and supports that let water run off under it.

The usual cause is an indoor kind of duct led over a flat roof because the attic was full. Show the jacket and the
slope of its top, or bring the duct inside. Work on roofs needs fall protection.
"""

from checker.case import Case, given
from checker.design.airway import Airway
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_scope import ducts
from checker.rule import Finding, Meets, Num, Rule

WEATHER = frozenset({"outdoors", "roof"})


def outdoors(case: Case) -> list[Airway]:
    """Ducts that run outdoors or above the roof."""
    return [duct for duct in ducts(case) if WEATHER & set(duct.location)]


def check(duct: Airway, protected: bool) -> Meets | Finding:
    """It is, or it is not."""
    if protected:
        return Meets()
    return Finding(
        "{duct} runs outdoors without protection against the weather",
        at="weather_protected",
        help="show a weathertight jacket that sheds water, or bring the duct inside",
        numbers={"duct": Num(duct_label(duct))},
    )


RULE = Rule(
    code="DUCT-77", name="outdoor-duct-unprotected", severity="correction", since="0.1",
    over=outdoors, needs=(given("weather_protected"),), cites=("outdoor-duct-protection",), check=check,
    nothing="no duct runs outdoors or above the roof",
)  # fmt: skip
