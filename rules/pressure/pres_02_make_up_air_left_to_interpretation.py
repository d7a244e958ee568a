"""A large exhaust stands beside a burner that some reviewers count, and no make-up air is shown.

Since 2018 the code asks for make-up air where an appliance that is neither direct-vent nor mechanically drafted burns
inside the air barrier. Two common ones are read either way: a gas range, which has no vent at all, and a furnace whose
fan only helps the gases through it while the vent itself drafts by buoyancy.

Ask the building department how it reads the section, and write its answer on the drawing, or show make-up air. In a
tight house it is a good idea in any case: the hood cannot move air that cannot come in.
"""

from checker.case import Case
from checker.quantities.burners import burners_in_question
from checker.quantities.make_up_air import (
    SLACK,
    Exhauster,
    exhausters,
    greatest_exhaust,
    needs_make_up_air,
    way_of,
)
from checker.rule import Finding, Meets, Rule


def is_in_question(case: Case, device: Exhauster) -> bool:
    """The exhaust is not above the threshold, or what burns in the house leaves no doubt."""
    if greatest_exhaust(case, device) <= case.limit("make-up-air-exhaust") * (1 + SLACK):
        return False
    return not needs_make_up_air(case, device) and bool(burners_in_question(case, case.design))


def check(device: Exhauster, exhaust: float, way: str, burners: list[str], _threshold: float) -> Meets | Finding:
    """Make-up air is shown although it is only perhaps required."""
    if way != "none":
        return Meets()
    return Finding(
        f"{device.name} can take out {{greatest_exhaust}}, above {{limit}}, beside {', '.join(burners[:3])}, which some "
        "reviewers count; no make-up air is shown",
        at="make_up_air",
        help="ask the building department whether it counts, or show make-up air of about {greatest_exhaust}",
    )


RULE = Rule(
    code="PRES-02", name="make-up-air-left-to-interpretation", severity="caution", since="0.1",
    over=exhausters, when=is_in_question, needs=(greatest_exhaust, way_of, burners_in_question),
    limits=("make-up-air-exhaust",), cites=("make-up-air-in-question",), check=check,
    nothing="no hood or exhaust fan takes air outdoors", answers=("C02",),
)  # fmt: skip
