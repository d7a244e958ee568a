"""What takes pressure along a duct: friction, fittings, filters, grilles and other parts, each between two bounds.

What a sketch leaves open (how far flexible duct is stretched, how elbows are made) becomes a lower and an
upper bound, so that a verdict never rests on a guess. Pressures in standard air: fan and duct thin out alike
at elevation.
"""

from collections.abc import Sequence
from math import inf
from typing import Any

from checker.case import CannotJudge, Case, path_of, quantity
from checker.design.airway import Airway, Run
from checker.design.openings import Opening
from checker.physics.fittings import opening_coefficient
from checker.physics.flexible import (
    CARELESS_COMPRESSION,
    EXHAUST_TABLE_ROUGHNESS,
    LARGEST_COMPRESSION,
    SMALLEST_DIAMETER,
    STRETCHED_ROUGHNESS,
    compression_factor,
    flexible_friction_bounds,
    with_sag,
)
from checker.physics.friction import ROUGHNESS_BY_MATERIAL, friction_per_meter
from checker.physics.losses import Duct, Part, Resistance
from checker.physics.validity import OutOfRange
from checker.quantities.duct_flow import duct_label
from checker.quantities.piece_shapes import elbow_kind, shaped, uncounted_pieces
from checker.record import Record
from checker.sizes import Size, equivalent_diameter

DISCHARGE = 0.61
_METALS = ("galvanized steel", "galvanized steel, many joints")
_SMOOTH = ("drawn aluminum", "galvanized steel")
ROUGHNESS_BOUNDS: dict[str, tuple[str, str]] = {
    "galvanized steel": _METALS, "unknown metal": _METALS, "stainless steel": _SMOOTH, "copper": _SMOOTH,
    "aluminum": _SMOOTH, "rigid plastic": _SMOOTH, "pvc": _SMOOTH,
    "duct board": ("rigid duct board", "rigid duct board"),
    "lined steel": ("fibrous liner, faced", "fibrous liner, sprayed"),
    "semi-rigid aluminum": ("non-metallic flexible, stretched", "metallic corrugated flexible"),
}  # fmt: skip
ELBOWS = frozenset({"elbow-90", "elbow-45", "elbow-30", "elbow-180"})
TERMINALS = frozenset({"wall-cap", "roof-cap", "louver", "entry"})


class Item(Record):
    """One thing that takes pressure: parts at best and at worst (None: no bound), and the key that would tell."""

    name: str
    low: tuple[Part, ...]
    high: tuple[Part, ...] | None
    ask: str = ""

    def bounds(self, flow: float) -> tuple[float, float]:
        """Least and greatest loss in Pa at an airflow in m3/s."""
        return loss_of(self.low, flow), inf if self.high is None else loss_of(self.high, flow)


def loss_of(parts: Sequence[Part], flow: float) -> float:
    """Loss of parts in series, Pa, at an airflow in m3/s."""
    return sum(part.loss(flow)[0] for part in parts)


@quantity()
def duct_items(case: Case, duct: Airway) -> list[Item]:
    """Friction and fittings of one duct. Raises Missing for size and length, CannotJudge for building cavities."""
    size, length = case.all(duct, "size", "length")
    return items_at_size(case, duct, size, length)


def items_at_size(case: Case, duct: Airway, size: Size, length: float) -> list[Item]:
    """What a duct takes if it had this size. Errors as `duct_items`."""
    diameter = equivalent_diameter(size)
    if isinstance(duct, Run) and duct.declared_equivalent_length is not None:
        return [friction_item(case, duct, diameter, length + duct.declared_equivalent_length)]
    found = [friction_item(case, duct, diameter, length)] if length > 0.0 else []
    return [*found, *fitting_items(case, duct, size)]


def friction_item(case: Case, duct: Airway, diameter: float, length: float) -> Item:
    """Friction of a straight length."""
    label = f"friction in {duct_label(duct)}"
    material = case.maybe(duct, "material")
    try:
        if material == "flexible":
            (low, times_low), (high, times_high), ask = flexible_bounds(case, duct, diameter)
        elif material is None:
            low, times_low = ROUGHNESS_BY_MATERIAL["drawn aluminum"].value, 1.0
            high, times_high = flexible_worst(diameter)
            ask = path_of(duct, "material")
        elif material in ROUGHNESS_BOUNDS:
            low, high = (ROUGHNESS_BY_MATERIAL[name].value for name in ROUGHNESS_BOUNDS[material])
            times_low = times_high = 1.0
            ask = ""
        else:
            raise CannotJudge(f"{duct_label(duct)} is a {material} duct, whose friction no formula gives")
        return Item(
            label, (Duct(diameter, length, low, times_low),), (Duct(diameter, length, high, times_high),), ask
        )
    except OutOfRange as problem:
        raise CannotJudge(f"{duct_label(duct)}: {problem.reason}") from None


def flexible_worst(diameter: float) -> tuple[float, float]:
    """Roughness and multiplier of flexible duct that is installed without care."""
    bounds = flexible_friction_bounds(0.05, diameter)
    return STRETCHED_ROUGHNESS, bounds.upper / friction_per_meter(0.05, diameter, STRETCHED_ROUGHNESS)


def flexible_bounds(
    case: Case, duct: Airway, diameter: float
) -> tuple[tuple[float, float], tuple[float, float], str]:
    """(roughness, multiplier) at best and at worst, and the key that would tell."""
    compression = case.maybe(duct, "compression")
    worst = flexible_worst(diameter)
    ask = path_of(duct, "compression")
    if compression is None:
        return (EXHAUST_TABLE_ROUGHNESS, 1.0), worst, ask
    reckoned = with_sag(compression, case.maybe(duct, "sag") or 0.0)
    if diameter < SMALLEST_DIAMETER and reckoned <= LARGEST_COMPRESSION:
        # The effect grows as ducts get smaller, in proportion to the compression: the factor lies between that of
        # the smallest duct of the equation and the equation carried on.
        edge = compression_factor(SMALLEST_DIAMETER, reckoned)
        carried_on = 1.0 + (worst[1] - 1.0) * reckoned / CARELESS_COMPRESSION
        return (STRETCHED_ROUGHNESS, edge), (STRETCHED_ROUGHNESS, max(edge, carried_on)), ""
    try:
        factor = compression_factor(diameter, reckoned)
    except OutOfRange:
        if reckoned > CARELESS_COMPRESSION:
            raise
        return (STRETCHED_ROUGHNESS, 1.0), worst, ""
    return (STRETCHED_ROUGHNESS, factor), (STRETCHED_ROUGHNESS, factor), ""


def fitting_items(case: Case, duct: Airway, size: Size) -> list[Item]:
    """Elbows and other pieces of a duct; where no duct of its system lists any, four elbows are the upper bound."""
    table: dict[str, Any] = case.limit("fitting-loss-coefficients")
    label = f"fittings of {duct_label(duct)}"
    if not duct.fittings and not pieces_are_told(case, duct):
        worst = 4.0 * table[elbow_kind(duct, size)][1]
        return [Item(label, (), (Resistance(worst, size.area),), path_of(duct, "pieces"))]
    uncounted = uncounted_pieces(case, duct)
    if uncounted:
        return [Item(label, (), None, uncounted[0])]
    low = high = 0.0
    ask = ""
    if case.maybe(duct, "balancing_damper") and "damper" not in duct.fittings:
        low, high = (float(each) for each in table["damper"])
    for piece, fitting in duct.fittings.items():
        bounds = shaped(fitting, piece, duct, size, table)
        if bounds is None and piece in ELBOWS and duct.elbow_radius is None:
            ask = path_of(duct, "elbow_radius")
        least, most = bounds or piece_bounds(table, duct, piece, size)
        low += duct.pieces[piece] * least
        high += duct.pieces[piece] * most
    if high == 0.0:
        return []
    parts = (Resistance(low, size.area),) if low > 0.0 else ()
    return [Item(label, parts, (Resistance(high, size.area),), ask)]


def pieces_are_told(case: Case, duct: Airway) -> bool:
    """Whether a duct without pieces is a straight one: it says `none`, or other runs of its system list theirs."""
    if path_of(duct, "pieces") in case.design.stated_none:
        return True
    return isinstance(duct, Run) and any(run.pieces for run in duct.up.runs.values())


def piece_bounds(table: dict[str, Any], duct: Airway, piece: str, size: Size) -> tuple[float, float]:
    """Loss coefficient of a piece at best and at worst, on the duct's own velocity."""
    if piece in ELBOWS:
        low, high = table[elbow_kind(duct, size)]
        least, most = table[f"{piece} over elbow-90"]
        return low * least, high * most
    low, high = table[piece]
    return float(low), float(high)


def opening_item(case: Case, opening: Opening, size: Size | None) -> Item:
    """An outdoor opening that air is drawn through: by its free area, else no more than that of the duct."""
    coefficient = opening_coefficient(DISCHARGE)
    area = case.maybe(opening, "free_area")
    label = f"opening {opening.name}"
    if area:
        part = (Resistance(coefficient, area),)
        return Item(label, part, part)
    ask = path_of(opening, "free_area")
    return Item(label, (), None if size is None else (Resistance(coefficient, size.area),), ask)

