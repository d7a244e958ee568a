"""An electronic air cleaner makes ozone.

Ozone irritates lungs at small concentrations and reacts with what is in the air to form other irritants. Devices
that make it on purpose do not clean air at concentrations people can live with. Devices listed under UL 867 or
UL 2998 are tested for how little they give off.

Leave the device out, or choose one that is listed for its ozone. A deeper filter of higher MERV does the work
without it.
"""

from checker import each
from checker.case import Case, given
from checker.design.filters import Filter
from checker.rule import Finding, Meets, Rule


def is_electronic(case: Case, filter_: Filter) -> bool:
    """Nothing says that it is an electronic air cleaner."""
    return case.maybe(filter_, "ozone") is not None


def check(filter_: Filter, ozone: str) -> Meets | Finding:
    """Whether it makes ozone."""
    if ozone != "produces ozone":
        return Meets()
    return Finding(
        f"the air cleaner {filter_.name} makes ozone",
        at="ozone",
        help="leave it out, or choose one listed for its ozone; a filter of higher MERV cleans without ozone",
    )


RULE = Rule(
    code="FILT-12", name="air-cleaner-makes-ozone", severity="caution", since="0.1",
    over=each.filter, when=is_electronic, needs=(given("ozone"),), cites=("air-cleaner-ozone",), check=check,
    nothing="no filter is named", answers=("G12",),
)  # fmt: skip
