"""The hood over an open-top broiler is too thin, too narrow, or too close to something that burns.

An open-top broiler flares up. The code asks for a metal hood of 28 gauge or heavier that covers the whole broiler,
with a gap to combustible material above the hood and a clear height above the cooking surface.

The usual cause is a kitchen hood that was drawn before the broiler was chosen. Use the hood that the broiler's
maker names, and keep cabinets and ceilings away from it.
"""


from checker.case import Case, Missing, path_of, quantity
from checker.design.hoods import Hood
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Measure(Record):
    """One measure of a broiler hood: where it stands, and which it is."""

    path: str
    name: str
    hood: Hood


def measures(case: Case) -> list[Measure]:
    """The four measures of each hood over an open-top broiler."""
    hoods = [
        hood
        for hood in case.design.hoods.values()
        if hood.cooking is not None and hood.cooking.kind == "open-top broiler"
    ]
    fields = ("thickness", "gap_to_combustibles", "cooking.combustible_clearance", "width")
    return [Measure(f"{hood.path}.{field}", field, hood) for hood in hoods for field in fields]


@quantity("length")
def measured(case: Case, measure: Measure) -> float:
    """The measure as drawn."""
    cooking = measure.hood.cooking
    assert cooking is not None
    if measure.name == "cooking.combustible_clearance":
        return float(case.get(cooking, "combustible_clearance"))
    return float(case.get(measure.hood, measure.name))


@quantity("length")
def least(case: Case, measure: Measure) -> float:
    """What the code asks of it; the broiler's own width for the hood's."""
    cooking = measure.hood.cooking
    assert cooking is not None
    if measure.name == "width":
        width = case.maybe(cooking, "width")
        if width is None:
            raise Missing(path_of(cooking, "width"))
        return float(width)
    keys = {
        "thickness": "broiler-hood-thickness", "gap_to_combustibles": "broiler-hood-gap",
        "cooking.combustible_clearance": "broiler-clearance",
    }  # fmt: skip
    return float(case.limit(keys[measure.name]))


SPOKEN = {
    "thickness": "a sheet thickness of", "gap_to_combustibles": "a gap to combustible material above it of",
    "cooking.combustible_clearance": "a clear height below combustible material of", "width": "a width of",
}  # fmt: skip


def check(measure: Measure, drawn: float, asked: float) -> Meets | Finding:
    """One measure against its least."""
    numbers = {
        "name": Num(measure.hood.name), "drawn": Num(drawn, "diameter"), "asked": Num(asked, "diameter"),
    }  # fmt: skip
    if measure.name == "thickness":
        numbers |= {"drawn": Num(drawn / 0.0254), "asked": Num(asked / 0.0254)}
    unit = " in" if measure.name == "thickness" else ""
    if drawn >= asked * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        f"the hood {{name}} over the broiler has {SPOKEN[measure.name]} {{drawn}}{unit}, less than {{asked}}{unit}",
        help=f"provide {{asked}}{unit} or more, as the broiler's listing and instructions ask", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-20", name="broiler-hood-falls-short", severity="correction", since="0.1",
    over=measures, needs=(measured, least),
    cites=("broiler-hood-thickness", "broiler-hood-gap", "broiler-clearance"), check=check,
    nothing="no hood hangs over an open-top broiler", answers=("B16",),
)  # fmt: skip
