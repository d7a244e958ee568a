"""A hood moves less air than trade guidance gives to the gas burners below it.

The guidance reckons about 100 cfm for each 10,000 Btu/h of burner input with everything lit, which few people do. It was
written for professional-style ranges; an ordinary household range is not held to it.
It is a note, not a demand: in a tight house a strong hood needs make-up air and can pull flue gas back into the
house, so a deep hood with a good catch and a moderate flow is often the better answer.

The usual cause is a professional-style range under a common hood. Weigh the range, the hood and the make-up air
together, with the makers' instructions and whoever is licensed for the gas work.
"""

from checker.case import Case, given, quantity
from checker.design.hoods import Hood
from checker.quantities.exhaust_duct import highest_flow
from checker.quantities.exhaust_end import ducted_hoods
from checker.rule import Finding, Meets, Num, Rule


def over_burners(case: Case) -> list[Hood]:
    """Ducted hoods over gas burners whose input is stated or left open."""
    return [
        hood
        for hood in ducted_hoods(case)
        if hood.cooking is not None
        and hood.cooking.fuel in ("gas", "propane")
        and (hood.cooking.input is not None or f"{hood.cooking.path}.input" in case.design.tbd)
    ]


def is_large(case: Case, hood: Hood) -> bool:
    """The guidance speaks of ranges with more burner input than an ordinary household one."""
    return bool(case.get(hood.cooking, "input") > case.limit("ordinary-range-input") * (1 + 1e-9))


@quantity("airflow", "burner input x airflow per input")
def flow_for_burners(case: Case, hood: Hood) -> float:
    """What the guidance gives to the burners."""
    return float(case.limit("hood-per-burner-input") * case.get(hood.cooking, "input"))


def check(hood: Hood, heat: float, flow: float, advised: float) -> Meets | Finding:
    """Compare the highest speed with the advice."""
    numbers = {"name": Num(hood.name), "heat": Num(heat, "heat_rate")}
    if flow >= advised * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "{name} moves {highest_flow} at most over burners of {heat}, less than the {flow_for_burners} of the guidance",
        at="settings",
        help="weigh a smaller range against a hood of {flow_for_burners} with make-up air, or a deeper hood",
        numbers=numbers,
    )


RULE = Rule(
    code="EXH-25", name="hood-weak-for-its-burners", severity="note", since="0.1",
    over=over_burners, when=is_large, needs=(given("cooking.input", "burner_input"), highest_flow, flow_for_burners),
    cites=("hood-per-burner-input", "ordinary-range-input"), check=check, nothing="no hood hangs over gas burners of known input",
    answers=("B28",),
)  # fmt: skip
