"""A hood's duct is not of galvanized steel, stainless steel or copper.

Grease settles in the folds of flexible duct and in plastic, where it feeds a fire and cannot be cleaned off. The
duct of a hood has to be smooth inside and of a metal that stands heat.

The usual cause is flexible duct for the last few feet behind a cabinet. Use smooth metal all the way; where a bend
is tight, use a shorter smooth elbow or move the outlet. Only a downdraft may use schedule 40 PVC, and only under
a slab on grade as the code describes.
"""

from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.hoods import Hood
from checker.quantities.exhaust_duct import exhaust_line
from checker.quantities.exhaust_end import ducted_hoods
from checker.rule import Finding, Meets, Num, Rule

ALLOWED = ("galvanized steel", "stainless steel", "copper")


@quantity()
def materials(case: Case, hood: Hood) -> tuple[str, ...]:
    """What the duct is made of, section by section; a metal without a name does not tell."""
    sections = exhaust_line(case, hood).sections
    absent = [path_of(each, "material") for each in sections if case.maybe(each, "material") in (None, "unknown metal")]
    if absent:
        raise Missing(*absent)
    return tuple(str(case.get(each, "material")) for each in sections)


def check(hood: Hood, materials: tuple[str, ...]) -> Meets | Finding:
    """Every section has to be one of the three metals."""
    wrong = [each for each in materials if each not in ALLOWED]
    numbers = {"name": Num(hood.name), "material": Num((wrong or list(materials))[0])}
    if not wrong:
        return Meets(numbers)
    if hood.mount == "downdraft" and set(wrong) == {"pvc"}:
        raise CannotJudge("PVC is allowed for a downdraft under a slab on grade only, on conditions not in this file")
    return Finding(
        "the duct of {name} is {material}; galvanized steel, stainless steel or copper is asked for",
        at="duct.material" if hood.duct is not None else "",
        help="use smooth duct of galvanized or stainless steel or copper from the hood to the terminal",
        numbers=numbers,
    )


RULE = Rule(
    code="EXH-16", name="hood-duct-material-unfit", severity="correction", since="0.1",
    over=ducted_hoods, needs=(materials,), cites=("hood-duct-material", "hood-discharge"), check=check,
    nothing="the design has no ducted hood", answers=("B12", "B14"),
)  # fmt: skip
