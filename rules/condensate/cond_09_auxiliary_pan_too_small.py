"""The auxiliary pan is too shallow, too narrow or too thin.

The pan has to catch what drips from the whole coil and its insulation, and hold it until the drain or the switch acts. The
code wants it 1 1/2 in deep, 3 in longer and wider than the unit or coil, of galvanized steel of 24 gage or plastic of
1/16 in.

A pan drawn to the size of the unit misses the drip at its edges. Choose the next size up.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.condensate import AuxiliaryPan, CondensateDrain
from checker.quantities.condensate import catches_by, drains
from checker.quantities.parts import first_wrong, known
from checker.rule import Finding, Meets, Num, Rule
from checker.units import parse

SAYS = {
    "depth": "{found} deep, less than {auxiliary_pan_depth}",
    "larger_by": "{found} longer and wider than the unit, less than {auxiliary_pan_margin}",
    "thickness": "of sheet {found} thick, less than {sheet}",
}


def sheet_needed(case: Case, pan: AuxiliaryPan | None, path: str) -> float:
    """Least thickness of the sheet; 0 where its material has none. Raises Missing for the material."""
    material = None if pan is None else case.maybe(pan, "material")
    if material is None:
        raise Missing(f"{path}.material")
    least: dict[str, str] = case.limit("auxiliary-pan-sheet")
    return parse(least[material], "length") if material in least else 0.0


@quantity()
def wrong_part(case: Case, drain: CondensateDrain) -> str:
    """What of the pan is too small, "" where nothing is; a wrong part does not wait for the others."""
    pan, path = drain.pan, path_of(drain, "pan")

    def is_thin() -> bool:
        needed = sheet_needed(case, pan, path)
        return needed > 0.0 and known(case, pan, path, "thickness") < needed

    return first_wrong([
        ("depth", lambda: known(case, pan, path, "depth") < case.codebook.compared("auxiliary-pan-depth")),
        ("larger_by", lambda: known(case, pan, path, "larger_by") < case.codebook.compared("auxiliary-pan-margin")),
        ("thickness", is_thin),
    ])  # fmt: skip


@quantity("length")
def sheet(case: Case, drain: CondensateDrain) -> float | None:
    """Thickness that a too thin sheet should have; None where that is not what is wrong."""
    thin = wrong_part(case, drain) == "thickness"
    return sheet_needed(case, drain.pan, path_of(drain, "pan")) if thin else None


def check(
    drain: CondensateDrain, wrong: str, _sheet: float | None, _depth: float, _margin: float
) -> Meets | Finding:
    """Depth, size and sheet of the pan."""
    if not wrong:
        return Meets()
    least = SAYS[wrong].rpartition(" ")[2]
    return Finding(
        f"the auxiliary pan is {SAYS[wrong]}",
        at=f"pan.{wrong}",
        help=f"choose a pan with {least} or more there",
        numbers={"found": Num(getattr(drain.pan, wrong), "length")},
    )


RULE = Rule(
    code="COND-09", name="auxiliary-pan-too-small", severity="correction", since="0.1",
    over=drains, when=catches_by("pan with drain", "pan with switch", "pan"), needs=(wrong_part, sheet),
    limits=("auxiliary-pan-depth", "auxiliary-pan-margin"), cites=("auxiliary-pan-sheet",), check=check,
    nothing="no condensate drain is drawn", answers=("J05", "J07"),
)  # fmt: skip
