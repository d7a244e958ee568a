"""A system with a mildly flammable refrigerant has no label with its installer, charge and refrigerant.

Whoever opens the system next must know that the gas can burn, how much there is, and whom to ask. From 2024 the code
wants this written on the maker's markable label.

Note on the drawing that the label is filled in at start-up, after the charge was weighed in by a certified technician.
"""

from checker.case import Case, quantity
from checker.quantities.refrigerant import System, is_mildly_flammable, of_system, systems
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


@quantity()
def labeled(case: Case, system: System) -> bool:
    """Whether the label is planned."""
    return bool(of_system(case, system, "label"))


def check(system: System, found: bool) -> Meets | Finding:
    """The label must be there."""
    if found:
        return Meets()
    return Finding(
        f"{system.name} holds a mildly flammable refrigerant without a label of installer, charge and refrigerant",
        at="label",
        help="note that the maker's label is filled in with installer, charge and refrigerant number",
    )


RULE = Rule(
    code="REFR-21", name="a2l-label-missing", severity="correction", since="0.1",
    over=systems, when=due("label", when=is_mildly_flammable, on_site=True), needs=(labeled,), cites=("a2l-label",), check=check,
    nothing="no refrigerant line is drawn", answers=("I11", "Q10"),
)  # fmt: skip
