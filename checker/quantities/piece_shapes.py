"""What the stated shape of a piece says of its loss: elbows by radius, pieces and angle, transitions by their sizes, entries.

Two bounds on the duct's own velocity. A tabulated coefficient may be off by a fifth; in a rectangular elbow a small duct
at low speed takes up to 1.8 times the tabulated one, which holds for large ones.
"""

from math import degrees
from typing import Any

from checker.case import Case, path_of
from checker.design.airway import Airway
from checker.design.pieces import Fitting
from checker.physics.fittings import (
    COEFFICIENTS,
    contraction_coefficient,
    elbow_angle_factor,
    expansion_coefficient,
    gored_elbow_coefficient,
    on_other_section,
    rectangular_elbow_coefficient,
    smooth_elbow_coefficient,
)
from checker.sizes import Size

Bounds = tuple[float, float]
LEAST, MOST, MOST_SMALL = 0.8, 1.2, 1.8
GORES = (3, 4, 5)
SQUARE = "elbow, round, mitred, 90 degrees"
VANED: Bounds = (0.2, 0.53)
"""Mitered with single or double vanes; HVAC Systems - Duct Design (SMACNA), Table 14-10 H."""
ENTRIES = {
    "flush": "entry, flush with a wall",
    "projecting": "entry, sharp projecting duct",
    "bellmouth": "entry, bellmouth, r/D 0.2",
}
GRADUAL = 0.1
"""Share of the loss of an abrupt transition that a gradual one of the same sizes takes at best (common practice)."""


def shaped(fitting: Fitting, piece: str, duct: Airway, size: Size, table: dict[str, Any]) -> Bounds | None:
    """Loss coefficient of one piece at best and at worst by its own shape; None where nothing is said of it."""
    if f"{piece} over elbow-90" in table:
        quarter = elbow(fitting, duct, size, table)
        if quarter is None and fitting.angle is None:
            return None
        low, high = quarter or table[elbow_kind(duct, size)]
        least, most = table[f"{piece} over elbow-90"]
        if fitting.angle is not None:
            least = most = elbow_angle_factor(min(degrees(fitting.angle), 180.0))
        return low * least, high * most
    if piece == "entry" and fitting.made in ENTRIES:
        return margin(COEFFICIENTS[ENTRIES[fitting.made]].value)
    if piece in ("reducer", "expansion") and fitting.size is not None:
        return transition(piece, size, fitting.size)
    return None


def bounds_of(table: dict[str, Any], row: str) -> Bounds:
    """A row of the table of pieces."""
    low, high = table[row]
    return float(low), float(high)


def margin(value: float) -> Bounds:
    """What a tabulated coefficient may be."""
    return value * LEAST, value * MOST


def elbow(fitting: Fitting, duct: Airway, size: Size, table: dict[str, Any]) -> Bounds | None:
    """Loss coefficient of a turn of 90 degrees by radius and make; None where neither is said."""
    ratio, made = fitting.radius_ratio, fitting.made
    if fitting.vanes:
        return VANED
    if made == "mitered":
        return bounds_of(table, "elbow-90-mitered")
    if duct.material == "flexible" or (ratio is None and fitting.gores is None):
        return bounds_of(table, "elbow-90 smooth") if made == "smooth" and duct.material != "flexible" else None
    if size.shape != "round" and ratio is not None:
        return rectangular(ratio, size)
    return round_elbow(ratio, made, fitting.gores)


def round_elbow(ratio: float | None, made: str | None, gores: int | None) -> Bounds:
    """A round elbow: by its radius where it is stated, of the pieces it is made of or of any number."""
    ratios = (0.75, 2.0) if ratio is None else (ratio,)
    values = [smooth_elbow_coefficient(within(each, 0.5, 2.5)).value for each in ratios] if made != "segmented" and (
        gores is None) else []  # fmt: skip
    if made != "smooth":
        kinds = GORES if gores is None else (min(max(gores, GORES[0]), GORES[-1]),)
        values += [gored_elbow_coefficient(within(each, 0.75, 2.0), kind).value for each in ratios for kind in kinds]
    low, high = min(values) * LEAST, max(values) * MOST
    # A tighter bend than any table has comes near a mitered one.
    return low, max(high, COEFFICIENTS[SQUARE].value * MOST) if min(ratios) < 0.5 else high


def rectangular(ratio: float, size: Size) -> Bounds:
    """A rectangular elbow; which of its sides lies in the plane of the bend is not said."""
    aspects = (size.height / size.width, size.width / size.height)
    values = [rectangular_elbow_coefficient(within(ratio, 0.5, 2.0), within(each, 0.25, 8.0)).value for each in aspects]
    return min(values) * LEAST, max(values) * MOST_SMALL


def within(value: float, least: float, most: float) -> float:
    """A value at the nearest end of a range that it lies beyond."""
    return min(max(value, least), most)


def transition(piece: str, size: Size, other: Size) -> Bounds:
    """A change of size from abrupt, at worst, to gradual; on the duct's own velocity, whichever end it is."""
    small, large = sorted((size.area, other.area))
    abrupt = contraction_coefficient(large, small) if piece == "reducer" else expansion_coefficient(small, large)
    own = on_other_section(abrupt.value, small, size.area)
    return GRADUAL * own, own * MOST


def elbow_kind(duct: Airway, size: Size) -> str:
    """Row of the coefficient table for a plain elbow of a duct."""
    if duct.elbow_radius is not None:
        return f"elbow-90 {duct.elbow_radius}"
    if duct.material == "flexible":
        return "elbow-90 flexible"
    return "elbow-90 round" if size.shape == "round" else "elbow-90 rectangular"


def uncounted_pieces(case: Case, duct: Airway) -> list[str]:
    """Paths that would tell how many pieces of a kind there are, where the file leaves that open."""
    return [
        each.path if each.path in case.design.tbd else path_of(each, "count")
        for each in duct.fittings.values()
        if each.count is None
    ]
