"""An exhaust duct in a cold space does not fall toward its wall terminal.

Some water condenses in every cold exhaust duct. With a fall to the outside it drips out at the hood; without one it
runs back to the fan or stands in the duct.

The usual cause is a duct that climbs over a joist and sags behind it. Give it an even fall to the terminal, held by
straps. A duct that rises to a roof cap cannot fall outward and is not asked for it.
"""

from checker.case import Case, Missing, NotApplicable, quantity
from checker.quantities.exhaust_duct import cold_sections, exhaust_line
from checker.quantities.exhaust_end import ends, exhausts
from checker.quantities.local_exhaust import Exhauster
from checker.rule import Finding, Meets, Num, Rule


def sloped(case: Case) -> list[Exhauster]:
    """Exhausts of which a slope is stated or left open on some section of the duct."""
    found = []
    for device in exhausts(case):
        try:
            sections = exhaust_line(case, device).sections
        except (Missing, NotApplicable):
            continue
        if any(each.slope is not None or f"{each.path}.slope" in case.design.tbd for each in sections):
            found.append(device)
    return found


@quantity("slope")
def fall(case: Case, device: Exhauster) -> float:
    """The least fall of the sections in the cold, toward a terminal that is not on the roof."""
    cold = cold_sections(case, exhaust_line(case, device))
    if not cold:
        raise NotApplicable("its duct does not run through a cold space")
    on_roof = any(end.name == "roof" or (end.opening is not None and end.opening.on == "roof") for end in ends(case, device))
    if on_roof or any("roof-cap" in each.pieces for each in cold):
        raise NotApplicable("its duct rises to the roof")
    return min(float(case.get(each, "slope")) for each in cold)


def check(device: Exhauster, fall: float, least: float) -> Meets | Finding:
    """Compare with the usual fall."""
    numbers = {"name": Num(device.name)}
    if fall >= least * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "the duct of {name} falls {fall} toward its terminal, less than {limit}",
        help="give the duct an even fall of {limit} toward the outside", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-34", name="exhaust-duct-without-fall", severity="note", since="0.1",
    over=sloped, needs=(fall,), limits=("exhaust-duct-fall",), check=check,
    nothing="no slope of an exhaust duct is stated", answers=("B33",),
)  # fmt: skip
