"""A ducted system with a large mildly flammable charge has no leak detector that starts its blower.

A ducted unit can carry a leak into several rooms, and while its blower stands the gas pools in the cabinet and ducts.
The safety standards therefore want a detector that starts the blower once the charge is above 6 m3 times the lower
flammable limit (about 4 lb of R-32).

Choose an indoor unit or coil with the maker's detector, and show its wiring. A coil added to another maker's furnace
needs the matching kit; a certified technician installs and tests it.
"""

from checker.case import Case, quantity
from checker.quantities.refrigerant import (
    System,
    charge,
    free_charge,
    indoor_units,
    is_ducted,
    is_mildly_flammable,
    of_system,
    systems,
)
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


def is_ducted_and_can_burn(case: Case, system: System) -> bool:
    """Its refrigerant is not of group A2L, or none of its units is ducted."""
    units = [unit for line in system.lines for unit in indoor_units(case, line)]
    return is_ducted(units) and is_mildly_flammable(case, system)


def has_several_lines(_case: Case, system: System) -> bool:
    """Whether it serves several indoor units, whose charge adds up."""
    return len(system.lines) > 1


@quantity()
def detected(case: Case, system: System) -> bool:
    """Whether a detector starts the blower; asked only for a charge that needs it."""
    if charge(case, system) <= free_charge(case, system) * (1.0 + 1e-9):
        return True
    return bool(of_system(case, system, "leak_detection"))


def check(system: System, held: float, free: float, found: bool) -> Meets | Finding:
    """A charge above the free one needs a detector."""
    if found:
        return Meets()
    return Finding(
        f"{system.name} holds {{charge}} in a ducted system, more than {{free_charge}}, without a leak detector",
        at="leak_detection",
        help="show the maker's refrigerant detector, wired to start the blower",
    )


RULE = Rule(
    code="REFR-13", name="a2l-leak-undetected", severity="correction", since="0.1",
    over=systems, when=due("charge", "leak_detection", when=is_ducted_and_can_burn, early=has_several_lines),
    needs=(charge, free_charge, detected), cites=("leak-detection",), check=check,
    nothing="no refrigerant line is drawn", answers=("I13",),
)  # fmt: skip
