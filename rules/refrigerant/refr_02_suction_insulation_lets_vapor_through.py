"""The insulation of a suction line lets too much water vapor through to the cold pipe.

Open insulation soaks: damp air reaches the cold pipe, condenses there and stays. The insulation then insulates no
more, and the pipe corrodes. The code therefore limits the permeance of the outer surface.

Closed-cell foam with its skin meets the limit in the usual thicknesses, or a jacket does; the permeance stands on
the data sheet. Fiber without a sealed jacket does not.
"""

from checker.case import Case, given
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


def is_insulated(case: Case, line: RefrigerantLine) -> bool:
    """The line is bare, which is judged by itself."""
    return bool(case.maybe(line, "insulation") != 0.0)


def check(line: RefrigerantLine, permeance: float, limit: float) -> Meets | Finding:
    """Compare the permeance of the surface with the greatest one."""
    if permeance <= limit:
        return Meets()
    return Finding(
        f"the insulation of {line.name} has a surface of {{insulation_permeance}}, more than {{limit}}",
        at="insulation_permeance",
        help="choose closed-cell insulation or a sealed jacket of {limit} or less",
    )


RULE = Rule(
    code="REFR-02", name="suction-insulation-lets-vapor-through", severity="correction", since="0.1",
    over=drawn_lines, when=due("insulation_permeance", when=is_insulated), needs=(given("insulation_permeance"),),
    limits=("suction-line-permeance",), check=check, nothing="no refrigerant line is drawn", answers=("I01",),
)  # fmt: skip
