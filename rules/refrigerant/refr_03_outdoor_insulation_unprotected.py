"""The insulation of a refrigerant line stands in the weather without a shield.

Sun makes bare foam brittle within a few years; birds, trimmers and frost do the rest. Then the suction line drips and
the unit loses capacity. The code asks for a shield against sun, moisture and damage, and does not count tape.

Show a line cover, a jacket or a coating made for it on everything outdoors, up to the service valves.
"""

from checker.case import Case, given
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines, runs_outdoors
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule

UNSHIELDED = {"none": "nothing", "tape": "tape only"}


def stands_in_the_weather(case: Case, line: RefrigerantLine) -> bool:
    """No insulation of it stands in the weather."""
    return case.maybe(line, "insulation") != 0.0 and runs_outdoors(case, line)


def check(line: RefrigerantLine, protection: str) -> Meets | Finding:
    """A cover, jacket or coating counts; tape does not."""
    if protection not in UNSHIELDED:
        return Meets()
    return Finding(
        f"{UNSHIELDED[protection]} shields the insulation of {line.name} from sun and damage outdoors",
        at="protection",
        help="show a line cover, jacket or coating made for outdoors over the insulation",
    )


RULE = Rule(
    code="REFR-03", name="outdoor-insulation-unprotected", severity="correction", since="0.1",
    over=drawn_lines, when=due("protection", when=stands_in_the_weather), needs=(given("protection"),),
    cites=("outdoor-line-protection",), check=check, nothing="no refrigerant line is drawn", answers=("I02",),
)  # fmt: skip
