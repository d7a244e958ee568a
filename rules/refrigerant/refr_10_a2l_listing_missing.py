"""A system with a mildly flammable refrigerant is not listed to the standard made for it.

Refrigerants of group A2L, such as R-32 and R-454B, can burn. UL/CSA 60335-2-40 tests leaks, sources of ignition and
detectors for them; the older UL 1995 does not. From 2024 the code names the newer standard for such systems.

Choose equipment with that listing, and never fill such a refrigerant into equipment made for another. The choice and
the charging belong to a certified technician.
"""

import re

from checker.case import Case, quantity
from checker.quantities.refrigerant import System, is_mildly_flammable, of_system, systems
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


@quantity()
def listing(case: Case, system: System) -> str:
    """Safety standard that the system is listed to."""
    return str(of_system(case, system, "listing"))


def check(system: System, found: str) -> Meets | Finding:
    """The listing must be to UL/CSA 60335-2-40."""
    if "60335240" in re.sub(r"\D", "", found):
        return Meets()
    return Finding(
        f"{system.name} holds a mildly flammable refrigerant and is listed to {{listing}}, not to UL/CSA 60335-2-40",
        at="listing",
        help="choose equipment listed to UL/CSA 60335-2-40 for this refrigerant",
    )


RULE = Rule(
    code="REFR-10", name="a2l-listing-missing", severity="correction", since="0.1",
    over=systems, when=due("listing", when=is_mildly_flammable), needs=(listing,), cites=("a2l-listing",), check=check,
    nothing="no refrigerant line is drawn", answers=("I08",),
)  # fmt: skip
