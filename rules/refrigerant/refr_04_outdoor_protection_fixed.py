"""The shield of outdoor pipe insulation cannot be taken off far enough from the unit.

Whoever services the unit needs to reach the valves and joints. A shield that is glued or strapped on for good gets
cut open and stays open. From 2024 the code asks that it can be removed for 6 ft from the equipment.

Screwed or snap-on line covers meet this; show a joint at that distance.
"""

from checker.case import Case, given
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines, runs_outdoors
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


def has_a_shield(case: Case, line: RefrigerantLine) -> bool:
    """No cover or jacket is drawn on it."""
    return runs_outdoors(case, line) and case.maybe(line, "protection") in ("cover", "jacket")


def check(line: RefrigerantLine, removable: float, limit: float) -> Meets | Finding:
    """Compare the removable length with the least one."""
    if removable >= limit:
        return Meets()
    return Finding(
        f"the shield of {line.name} comes off over {{protection_removable}} at the outdoor unit, less than {{limit}}",
        at="protection_removable",
        help="show the cover or jacket removable for {limit} from the outdoor unit",
    )


RULE = Rule(
    code="REFR-04", name="outdoor-protection-fixed", severity="correction", since="0.1",
    over=drawn_lines, when=due("protection_removable", when=has_a_shield, on_site=True), needs=(given("protection_removable"),),
    limits=("outdoor-protection-removable",), check=check, nothing="no refrigerant line is drawn",
    answers=("I02",),
)  # fmt: skip
