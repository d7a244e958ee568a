"""The refrigerant is not named by its standard designation.

The designation (R-32, R-454B, R-410A) tells the safety group, the pressure and the law that applies. A trade word or a
general term leaves all of that open, and the wrong gas in a system can burst or ignite.

Write the R-number that stands on the nameplate. The tool reads its safety group from it and judges the room, the
listing and the label accordingly.
"""

import re

from checker.quantities.refrigerant import System, designation, systems
from checker.rule import Finding, Meets, Rule


def check(system: System, found: str) -> Meets | Finding:
    """A designation is R, up to four figures and letters after them."""
    if re.fullmatch(r"R\d{1,4}[A-Z]{0,3}(?:\([EZ]\))?", found):
        return Meets()
    return Finding(
        f"the refrigerant of {system.name} is called {{designation}}, which is no designation of ASHRAE Standard 34",
        at="refrigerant",
        help="write the R-number from the nameplate, such as `R-32`",
    )


RULE = Rule(
    code="REFR-09", name="refrigerant-without-designation", severity="note", since="0.1",
    over=systems, needs=(designation,), cites=("refrigerant-designation",), check=check,
    nothing="no refrigerant line is drawn", answers=("I09",),
)  # fmt: skip
