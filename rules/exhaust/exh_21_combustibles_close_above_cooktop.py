"""Unprotected combustible material is too close above the cooking top.

A pan fire reaches the cabinet above it. Between the cooking top and unprotected wood there have to be 30 in,
unless a listed hood or microwave stands between and its listing allows less.

The usual cause is a cabinet over the range at the height of its neighbors. Raise the cabinet, or install a hood or
microwave that is listed for the smaller height and follow its instructions and those of the range.
"""

from checker import each
from checker.case import Case, path_of, quantity
from checker.design.hoods import Cooking, Hood
from checker.rule import Finding, Meets, Num, Rule


def above_cooking(case: Case) -> list[Hood]:
    """Hoods over a range or cooktop; for a downdraft or ceiling exhaust only where the height is spoken of."""
    return [hood for hood in case.design.hoods.values() if asked_of(case, hood)]


def asked_of(case: Case, hood: Hood) -> bool:
    """Whether the height above this cooking top has to be known; broilers have a rule of their own."""
    cooking = hood.cooking
    if cooking is not None and cooking.kind == "open-top broiler":
        return False
    spoken = cooking is not None and (
        cooking.combustible_clearance is not None or path_of(cooking, "combustible_clearance") in case.design.tbd
    )
    return spoken or hood.mount not in ("downdraft", "ceiling")


@quantity("length")
def clear_height(case: Case, hood: Hood) -> float:
    """Height from the cooking top to unprotected combustible material."""
    cooking = hood.cooking or each.blank(Cooking, f"{hood.path}.cooking")
    return float(case.get(cooking, "combustible_clearance"))


@quantity("length")
def asked_height(case: Case, hood: Hood) -> float:
    """What the code asks, or less where the listing of the hood says so."""
    listed = case.maybe(hood, "listed_clearance")
    general = float(case.limit("cooktop-clearance"))
    return general if listed is None else min(general, float(listed))


def check(hood: Hood, height: float, asked: float) -> Meets | Finding:
    """Compare the clear height with what is asked."""
    numbers = {
        "name": Num(hood.name), "height": Num(height, "diameter"), "asked": Num(asked, "diameter"),
    }  # fmt: skip
    if height >= asked * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "combustible material is {height} above the cooking top at {name}, closer than {asked}",
        at="cooking.combustible_clearance",
        help="raise it to {asked}, or use a hood whose listing allows the smaller height and state that listing",
        numbers=numbers,
    )


RULE = Rule(
    code="EXH-21", name="combustibles-close-above-cooktop", severity="correction", since="0.1",
    over=above_cooking, needs=(clear_height, asked_height), cites=("cooktop-clearance",), check=check,
    nothing="the design has no hood over a cooking top", answers=("B17",),
)  # fmt: skip
