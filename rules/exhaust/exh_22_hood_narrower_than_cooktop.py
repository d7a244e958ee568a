"""A hood is narrower than the cooking top below it.

The plume of a front or side burner then rises past the hood, however strong its fan is. Over an island nothing
guides the plume, so the hood has to reach beyond the cooking top on each side.

The usual cause is a hood that follows the cabinet's width, not the range's. Choose a hood at least as wide as the
cooking top; over an island 3 in wider on each side.
"""

from checker.case import Case, given
from checker.design.hoods import Hood
from checker.rule import Finding, Meets, Num, Rule


def overhead(case: Case) -> list[Hood]:
    """Hoods over a cooking top of which any width is stated."""
    return [
        hood
        for hood in case.design.hoods.values()
        if hood.mount not in ("downdraft", "ceiling")
        and (hood.width is not None or (hood.cooking is not None and hood.cooking.width is not None))
    ]


def check(hood: Hood, width: float, cooktop: float, overhang: float) -> Meets | Finding:
    """Compare the widths; an island hood by the overhang on both sides."""
    asked = cooktop + (2.0 * overhang if hood.mount == "island" else 0.0)
    numbers = {
        "name": Num(hood.name), "hood": Num(width, "diameter"), "top": Num(cooktop, "diameter"),
        "asked": Num(asked, "diameter"),
    }  # fmt: skip
    if width >= asked * (1 - 1e-9):
        return Meets(numbers)
    message = "{name} is {hood} wide over a cooking top of {top}"
    if hood.mount == "island":
        message = "the island hood {name} is {hood} wide over a cooking top of {top}, less than {asked}"
    return Finding(message, at="width", help="choose a hood of {asked} or more in width", numbers=numbers)


RULE = Rule(
    code="EXH-22", name="hood-narrower-than-cooktop", severity="caution", since="0.1",
    over=overhead, needs=(given("width"), given("cooking.width", "cooktop_width")),
    limits=("island-hood-overhang",), check=check, nothing="no width of a hood or cooking top is stated",
    answers=("B30",),
)  # fmt: skip
