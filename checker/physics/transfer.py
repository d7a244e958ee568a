"""Air paths between a closed room and the rest of the house: pressure, free area and undercut.

Units: Pa, m3/s, m, m2, kg/m3.
"""

from __future__ import annotations

from math import sqrt

from checker.physics.arguments import require_not_negative, require_positive

TRANSFER_COEFFICIENT = 1.07 * (0.3048**3 / 60.0) / 0.0254**2
"""m3/s for each m2 of free area and root of a pascal; the trade's 1.07 cfm per square inch (a discharge
coefficient of 0.607 in standard air)."""


def closed_door_pressure(flow: float, free_area: float) -> float:
    """Pressure in Pa of a closed room against the house when `flow` m3/s must leave by a free area in m2.

    ValueError for a negative flow or no free area. Source: as `transfer_flow`.
    """
    require_not_negative(flow=flow)
    require_positive(free_area=free_area)
    return (flow / (TRANSFER_COEFFICIENT * free_area)) ** 2


def transfer_area(flow: float, pressure: float, other_area: float = 0.0) -> float:
    """Free area in m2 still needed to pass `flow` m3/s at a pressure in Pa beside an `other_area` in m2.

    Never negative. ValueError for impossible input. Source: as `transfer_flow`; parallel areas add.
    """
    require_not_negative(flow=flow, other_area=other_area)
    require_positive(pressure=pressure)
    return max(0.0, flow / (TRANSFER_COEFFICIENT * sqrt(pressure)) - other_area)


def undercut_area(door_width: float, undercut: float, carpet: float = 0.0) -> float:
    """Free area in m2 under a door: width times undercut less the carpet's height, all m; never negative.

    ValueError for impossible input. Source: common practice.
    """
    require_positive(door_width=door_width)
    require_not_negative(undercut=undercut, carpet=carpet)
    return door_width * max(0.0, undercut - carpet)
