"""No pressure test is planned for lines with a mildly flammable refrigerant.

A joint that leaks lets out a gas that can burn. From 2024 the code wants such pipe tested by the maker's instructions
and the listing: nitrogen at the stated pressure, held for the stated time, before any refrigerant goes in.

Plan the test and keep its record. Only certified technicians pressurize, evacuate and charge the lines.
"""

from checker.case import Case, quantity
from checker.quantities.refrigerant import System, is_mildly_flammable, of_system, systems
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


@quantity()
def pressure_test(case: Case, system: System) -> str:
    """Whether the lines are tested: planned, done or none."""
    return str(of_system(case, system, "pressure_test"))


def check(system: System, state: str) -> Meets | Finding:
    """A test must be planned or done."""
    if state != "none":
        return Meets()
    return Finding(
        f"the lines of {system.name} hold a mildly flammable refrigerant, and no pressure test is planned",
        at="pressure_test",
        help="plan the pressure test of the maker's instructions, by a certified technician, and keep its record",
    )


RULE = Rule(
    code="REFR-18", name="a2l-piping-untested", severity="correction", since="0.1",
    over=systems, when=due("pressure_test", when=is_mildly_flammable), needs=(pressure_test,),
    cites=("a2l-pipe-test",), check=check, nothing="no refrigerant line is drawn", answers=("I12",),
)  # fmt: skip
