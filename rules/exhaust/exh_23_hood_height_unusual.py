"""A hood hangs too low or too high above the cooking top.

Too low, it is in the way of heads and pans and gets hotter than it was tested for; too high, the plume spreads
past its edge before it arrives. The maker's height wins; where the maker says nothing, 24 to 36 in is usual.

The usual cause is a hood set to the line of the cabinets. Hang it at the height in its instructions. Over a gas
top the instructions of both the hood and the top count, and the larger least height holds.
"""


from checker.case import Case, given, quantity
from checker.design.fields import Length
from checker.design.hoods import Hood
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Heights(Record):
    """Least and greatest height, m, and whose word they are."""

    least: Length
    greatest: Length
    whose: str


def overhead(case: Case) -> list[Hood]:
    """Hoods of which a mounting height is stated or left open."""
    return [
        hood
        for hood in case.design.hoods.values()
        if hood.mount not in ("downdraft", "ceiling")
        and (hood.mounting_height is not None or f"{hood.path}.mounting_height" in case.design.tbd)
    ]


@quantity()
def heights(case: Case, hood: Hood) -> Heights:
    """The maker's heights, else the usual ones."""
    least, greatest = case.limit("hood-height-least"), case.limit("hood-height-greatest")
    maker = hood.by_maker
    if maker is None:
        return Heights(least, greatest, "the usual")
    own = (case.maybe(maker, "least_height"), case.maybe(maker, "greatest_height"))
    if own == (None, None):
        return Heights(least, greatest, "the usual")
    return Heights(own[0] if own[0] is not None else 0.0, own[1] if own[1] is not None else greatest, "its maker's")


def check(hood: Hood, height: float, heights: Heights) -> Meets | Finding:
    """Between least and greatest."""
    numbers = {
        "name": Num(hood.name), "height": Num(height, "diameter"), "least": Num(heights.least, "diameter"),
        "greatest": Num(heights.greatest, "diameter"),
    }  # fmt: skip
    if heights.least * (1 - 1e-9) <= height <= heights.greatest * (1 + 1e-9):
        return Meets(numbers)
    low = height < heights.least
    side = "lower than {least}" if low else "higher than {greatest}"
    return Finding(
        f"{{name}} hangs {{height}} above the cooking top, {side}, {heights.whose} limit",
        at="mounting_height", help=f"{'raise' if low else 'lower'} it to {{{'least' if low else 'greatest'}}}",
        numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-23", name="hood-height-unusual", severity="caution", since="0.1",
    over=overhead, needs=(given("mounting_height"), heights),
    cites=("hood-height-least", "hood-height-greatest"), check=check,
    nothing="no mounting height of a hood is stated", answers=("B30",),
)  # fmt: skip
