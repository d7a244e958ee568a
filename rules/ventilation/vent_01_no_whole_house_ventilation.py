"""Nothing in the design ventilates the whole house.

A tight house gets too little air through its cracks to carry off moisture, smells and what furnishings give
off. The code therefore asks for fans that change its air all day, or in short turns: in the earlier editions
where the blower door shows five air changes or less, in the later ones in every dwelling.

Local fans may do it: a bath fan that runs slowly all day, a recovery unit, a supply fan, or an outdoor-air
duct with a damper on the return side of an air handler. Mark the fan with `whole_house: yes` and name the
setting that runs all day `continuous`.
"""

from checker import each
from checker.case import Case
from checker.design import Design
from checker.quantities.ventilation import ventilation_required
from checker.quantities.whole_house import is_ventilated
from checker.rule import Finding, Meets, Rule


def is_asked_for(case: Case, design: Design) -> bool:
    """The edition asks for it only in a tight house, and this one leaks more."""
    return is_ventilated(case, design) or ventilation_required(case, design)


def check(_design: Design, ventilated: bool) -> Meets | Finding:
    """Something for the whole house must be there."""
    if ventilated:
        return Meets()
    return Finding(
        "no fan, hood or outdoor-air duct runs all day or by a timer to ventilate the whole house",
        at="fans",
        help="show a whole-house fan with its rate (`whole_house: yes`, a setting that is `continuous` or cycles)",
    )


RULE = Rule(
    code="VENT-01", name="no-whole-house-ventilation", severity="correction", since="0.1",
    over=each.design, when=is_asked_for, needs=(is_ventilated,),
    cites=("whole-house-ventilation",), check=check, answers=("A01", "A07"),
)  # fmt: skip
