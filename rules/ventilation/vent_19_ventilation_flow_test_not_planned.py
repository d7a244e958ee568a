"""No test of the installed ventilation flows is planned.

Fans move what their ducts let them, and that is often half of what the box says. Since 2021 the energy chapter
asks that the installed flows be tested and reported in writing. Only a hood with a short, wide duct is let off.

Plan the test with a flow hood, a powered hood or the unit's own flow stations, and name who does it.
"""

from checker import each
from checker.case import Case, quantity
from checker.codebook import converted
from checker.design import Design
from checker.design.hoods import Hood
from checker.quantities.ventilation import SLACK
from checker.quantities.ventilation_controls import Told, test_state
from checker.quantities.whole_house import needed
from checker.rule import Finding, Meets, Rule


def must_be_tested(case: Case, design: Design) -> bool:
    """A hood with a short wide duct needs no test, and nothing else ventilates the house."""
    terms = case.limit("flow-test-exempt-hood")
    hoods = [part.device for part in needed(case, design)]
    return not all(isinstance(device, Hood) and is_let_off(device, terms) for device in hoods)


def is_let_off(hood: Hood, terms: dict[str, object]) -> bool:
    """Whether a hood's duct is stated to be wide, straight and short enough."""
    duct = hood.duct
    if duct is None or duct.size is None:
        return False
    if duct.size.hydraulic_diameter < converted(terms["size"], "diameter") * (1 - SLACK):
        return False
    turns = sum(count for piece, count in duct.pieces.items() if piece.startswith(("elbow-90", "flat-elbow", "elbow-180")))
    if "length" in terms and (duct.length is None or duct.length > converted(terms["length"], "length") * (1 + SLACK)):
        return False
    return turns <= float(str(terms["elbows"]))


@quantity()
def flow_test(case: Case, _design: Design) -> Told:
    """Whether the flows are or will be tested."""
    return test_state(case, "ventilation-flow")


def check(_design: Design, test: Told) -> Meets | Finding:
    """The test must be planned or done."""
    if test.so:
        return Meets()
    return Finding(
        "no test of the installed ventilation flows is planned",
        at=test.path,
        help="plan a test of each whole-house flow with a written report",
    )


RULE = Rule(
    code="VENT-19", name="ventilation-flow-test-not-planned", severity="correction", since="0.1",
    over=each.design, when=must_be_tested, needs=(flow_test,), cites=("ventilation-flow-test",), check=check,
    answers=("A17",),
)  # fmt: skip
