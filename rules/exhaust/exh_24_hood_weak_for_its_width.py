"""A hood moves less air than its width over the cooking top needs at the least.

Trade guidance gives at least 40 cfm for each foot of range to a hood against a wall, and 50 cfm to an island hood,
which is open on all sides. Its usual advice is more than twice that, which a tight house can rarely let in.

The usual cause is the smallest model of a wide series. Choose a stronger one, or a deeper hood that catches more
with less air. What a hood takes out has to come in again: look at make-up air and at fuel-burning appliances first.
"""

from checker.case import Case, NotApplicable, given, quantity
from checker.design.hoods import Hood
from checker.quantities.exhaust_duct import highest_flow
from checker.quantities.exhaust_end import ducted_hoods
from checker.rule import Finding, Meets, Num, Rule

CFM_PER_FOOT = 0.3048**2 / 60.0


def over_known_widths(case: Case) -> list[Hood]:
    """Ducted hoods over a cooking top whose width is stated or left open."""
    return [
        hood
        for hood in ducted_hoods(case)
        if hood.mount not in ("downdraft", "ceiling")
        and hood.cooking is not None
        and (hood.cooking.width is not None or f"{hood.cooking.path}.width" in case.design.tbd)
    ]


@quantity("airflow", "width of the cooking top x airflow per foot")
def least_for_width(case: Case, hood: Hood) -> float:
    """What the guidance gives at the least."""
    if case.get(hood, "mount") == "over-the-range microwave":
        raise NotApplicable("a microwave over the range is rated with its own small hood")
    key = "island-hood-per-width" if hood.mount == "island" else "wall-hood-per-width"
    return float(case.limit(key) * CFM_PER_FOOT * case.get(hood.cooking, "width"))


def check(hood: Hood, width: float, flow: float, least: float) -> Meets | Finding:
    """Compare the highest speed with the least."""
    numbers = {"name": Num(hood.name), "top": Num(width, "diameter")}
    if flow >= least * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "{name} moves {highest_flow} at most over a cooking top of {top}, less than {least_for_width}",
        at="settings", help="choose a hood that moves {least_for_width} or more, make-up air considered",
        numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-24", name="hood-weak-for-its-width", severity="caution", since="0.1",
    over=over_known_widths, needs=(given("cooking.width", "cooktop_width"), highest_flow, least_for_width),
    cites=("wall-hood-per-width", "island-hood-per-width"), check=check,
    nothing="no ducted hood hangs over a cooking top of known width", answers=("B26", "B27"),
)  # fmt: skip
