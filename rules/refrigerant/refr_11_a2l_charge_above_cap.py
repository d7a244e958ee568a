"""A system holds more of a mildly flammable refrigerant than a house may have in one system.

From 2024 the code caps the charge of group A2L refrigerants at 34.5 lb in one system, whatever the room. A leak of so
much gas can reach a mixture that burns.

Split the load among several systems, each with its own outdoor unit. Design and charging belong to certified
technicians; the maker's table may set a lower limit still.
"""

from checker.quantities.refrigerant import System, charge, is_mildly_flammable, systems
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


def check(system: System, held: float, limit: float) -> Meets | Finding:
    """Compare the charge with the cap."""
    if held <= limit:
        return Meets()
    return Finding(
        f"{system.name} holds {{charge}} of a mildly flammable refrigerant, more than {{limit}}",
        at="charge",
        help="split the load among systems of {limit} or less each",
    )


RULE = Rule(
    code="REFR-11", name="a2l-charge-above-cap", severity="correction", since="0.1",
    over=systems, when=due("charge", when=is_mildly_flammable), needs=(charge,), limits=("a2l-charge-cap",), check=check,
    nothing="no refrigerant line is drawn", answers=("I10",),
)  # fmt: skip
