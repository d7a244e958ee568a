"""The ventilation standard wants the whole-house flow measured, and no measurement is planned.

The standard takes no nameplate for the flow of the whole-dwelling system: it is measured once the fan and its
ducts are in. For local fans a rating with short ducts may do instead. Recalled from its text: check it there.

Plan the measurement, and leave a straight piece of duct or a grille that a flow hood fits over.
"""

from checker import each
from checker.case import Case, NotApplicable, quantity
from checker.design import Design
from checker.quantities.ventilation_controls import Told, test_state
from checker.quantities.whole_house import needed
from checker.rule import Finding, Meets, Rule


@quantity()
def flow_measurement(case: Case, design: Design) -> Told:
    """Whether the flows are or will be measured. NotApplicable where the code's own test is judged."""
    needed(case, design)
    try:
        case.codebook.require("ventilation-flow-test")
    except NotApplicable:
        return test_state(case, "ventilation-flow")
    raise NotApplicable("the code of this edition asks for the test itself")


def check(_design: Design, test: Told) -> Meets | Finding:
    """The measurement must be planned or done."""
    if test.so:
        return Meets()
    return Finding(
        "no measurement of the whole-house flow is planned, and the standard takes no nameplate for it",
        at=test.path,
        help="plan a measurement of the installed whole-house flow",
    )


RULE = Rule(
    code="VENT-20", name="standard-wants-measured-flow", severity="caution", since="0.1",
    over=each.design, needs=(flow_measurement,), cites=("standard-measured-flow",), check=check, answers=("A27",),
)  # fmt: skip
