"""With all exhausts on, the house is drawn lower than the most sensitive burner bears.

A burner that takes its air from the house needs its vent to draw harder than the fans do. Below a few pascals a draft
hood spills: carbon monoxide and moisture come into the house, unseen and without smell.

The worst case is that of a field test: every exhaust at its highest setting with the dryer on, supply fans off unless an
interlock runs them. The pressure follows from the leakage of the house and its make-up openings. The limits are those
of published combustion safety tests.

Bring in make-up air that runs with the exhausts, choose smaller exhausts, or replace the burner by a direct-vent or
electric one. This figure does not replace a test: have a licensed contractor test the draft in the worst case, and show
carbon monoxide alarms.
"""

from checker import each
from checker.design import Design
from checker.quantities.spillage import Spillage, spillage
from checker.rule import Finding, Meets, Num, Rule


def check(_design: Design, found: Spillage) -> Meets | Finding:
    """Compare the worst-case pressure with what the most sensitive burner bears."""
    worst, sensitive = found.pressure, found.sensitive
    numbers = {
        "net": Num(worst.combination.net, "airflow"),
        "drawn": Num(max(0.0, -worst.value), "house_pressure"),
        "bears": Num(sensitive.limit, "house_pressure"),
        "make_up": Num(found.make_up, "airflow"),
    }
    if not found.spills:
        return Meets(numbers)
    winter = ""
    if found.stack is not None:
        numbers["stack"] = Num(found.stack, "house_pressure")
        winter = "; winter buoyancy draws the lowest floor down by {stack} more"
    more = "more than " if worst.beyond else ""
    return Finding(
        f"with {worst.combination.name} running, {{net}} more goes out than comes in: the house stands "
        f"{more}{{drawn}} below outdoors; {sensitive.name} bears {{bears}}",
        at=sensitive.path,
        help="bring in {make_up} of make-up air that runs with these fans, or choose a direct-vent appliance; carbon monoxide can "
        f"spill: have a licensed contractor test the draft in the worst case, and show carbon monoxide alarms{winter}",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-13", name="house-drawn-below-burner-limit", severity="correction", since="0.1",
    over=each.design, needs=(spillage,),
    cites=("make-up-air-for-burners", "depressurization-natural-draft"), check=check,
    answers=("C13", "C14", "C15", "C16", "C17"),
)  # fmt: skip
