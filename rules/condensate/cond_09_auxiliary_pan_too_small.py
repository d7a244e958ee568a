"""The auxiliary pan is too shallow, too narrow or too thin.

The pan has to catch what drips from the whole coil and its insulation, and hold it until the drain or the switch acts. The
code wants it 1 1/2 in deep, 3 in longer and wider than the unit or coil, of galvanized steel of 24 gage or plastic of
1/16 in.

A pan drawn to the size of the unit misses the drip at its edges. Choose the next size up.
"""

from checker.case import Case, given, quantity
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import catches_by, drains
from checker.rule import Finding, Meets, Num, Rule
from checker.units import parse


@quantity("length")
def sheet_needed(case: Case, drain: CondensateDrain) -> float | None:
    """Least thickness of the sheet; None where the material has none."""
    least: dict[str, str] = case.limit("auxiliary-pan-sheet")
    material = case.get(drain.pan, "material")
    return parse(least[material], "length") if material in least else None


@quantity("length")
def sheet(case: Case, drain: CondensateDrain) -> float | None:
    """Thickness of the sheet; None where its material has no least one."""
    return None if sheet_needed(case, drain) is None else float(case.get(drain.pan, "thickness"))


def check(
    _drain: CondensateDrain, depth: float, margin: float, needed: float | None, thickness: float | None,
    least_depth: float, least_margin: float,
) -> Meets | Finding:  # fmt: skip
    """Depth, size and sheet of the pan."""
    if depth < least_depth:
        return wrong("{depth} deep, less than {least}", "depth", least_depth)
    if margin < least_margin:
        return wrong("{larger_by} longer and wider than the unit, less than {least}", "larger_by", least_margin)
    if needed is not None and thickness is not None and thickness < needed:
        return wrong("of sheet {sheet} thick, less than {least}", "thickness", needed)
    return Meets()


def wrong(what: str, field: str, least: float) -> Finding:
    """What of the pan is too small."""
    return Finding(
        f"the auxiliary pan is {what}",
        at=f"pan.{field}",
        help="choose a pan with {least} or more there",
        numbers={"least": Num(least, "length")},
    )


RULE = Rule(
    code="COND-09", name="auxiliary-pan-too-small", severity="correction", since="0.1",
    over=drains, when=catches_by("pan with drain", "pan with switch", "pan"),
    needs=(given("pan.depth"), given("pan.larger_by"), sheet_needed, sheet),
    limits=("auxiliary-pan-depth", "auxiliary-pan-margin"), cites=("auxiliary-pan-sheet",), check=check,
    nothing="no condensate drain is drawn", answers=("J05", "J07"),
)  # fmt: skip
