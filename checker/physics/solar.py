"""Sun on windows at the cooling peak: irradiance, overhangs, inside shades, by the residential load factor method.

Source throughout: ASHRAE Handbook - Fundamentals 2021, chapter 17. Units: degrees of latitude, W/m2, m,
shares 0 to 1. Valid from 20 to 60 degrees north.
"""

from __future__ import annotations

from bisect import bisect_right

from checker.physics.arguments import require_fraction, require_not_negative, require_positive
from checker.physics.validity import OutOfRange
from checker.record import Record

METHOD = "residential load factor method"
LEAST_LATITUDE, MOST_LATITUDE = 20.0, 60.0

AZIMUTH = {
    "north": 0.0, "northeast": 45.0, "east": 90.0, "southeast": 135.0, "south": 180.0, "southwest": 135.0,
    "west": 90.0, "northwest": 45.0,
}  # fmt: skip
"""Angle from north in degrees, the same to either side."""

FENESTRATION_FACTOR = {
    "north": 0.44, "northeast": 0.21, "east": 0.31, "southeast": 0.37, "south": 0.47, "southwest": 0.58,
    "west": 0.56, "northwest": 0.46, "sky": 0.58,
}  # fmt: skip
"""Table 13, detached houses: share of the peak irradiance that is load at the peak of the house."""

ONE_EXPOSURE_FACTOR = {
    "north": 0.27, "northeast": 0.43, "east": 0.56, "southeast": 0.54, "south": 0.53, "southwest": 0.61,
    "west": 0.65, "northwest": 0.57, "sky": 0.73,
}  # fmt: skip
"""Table 13, multifamily dwellings with one exposure."""

SCREEN = {"none": 1.0, "outside": 0.64, "inside": 0.88}
"""Table 11: transmission of an insect screen; the one inside is from memory."""

_SHADE_LATITUDES = (20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 55.0, 60.0)
_SHADE_LINE_FACTORS = {
    180.0: (20.0, 14.0, 6.9, 4.7, 3.3, 2.7, 2.1, 1.7, 1.4),
    135.0: (2.1, 1.8, 2.0, 1.7, 1.5, 1.6, 1.4, 1.2, 1.1),
    90.0: (1.2, 1.2, 1.1, 1.1, 1.1, 1.0, 1.0, 0.9, 0.8),
    45.0: (1.4, 1.5, 1.6, 1.2, 1.3, 1.3, 0.9, 0.9, 0.8),
    0.0: (2.8, 2.1, 1.4, 1.5, 1.7, 1.0, 0.8, 0.9, 0.8),
}  # Table 12, by angle from north

_SHADES = (
    "open drape", "dark drape", "light drape", "dark roller", "white roller", "translucent roller", "medium blinds",
    "white blinds",
)  # fmt: skip
_INTERIOR_ATTENUATION = {
    "single clear": (0.64, 0.71, 0.45, 0.64, 0.34, 0.44, 0.74, 0.66),
    "single tinted": (0.68, 0.72, 0.50, 0.67, 0.40, 0.49, 0.76, 0.69),
    "double clear": (0.72, 0.81, 0.57, 0.76, 0.48, 0.55, 0.82, 0.74),
    "low-e high-solar": (0.76, 0.86, 0.64, 0.82, 0.57, 0.62, 0.86, 0.79),
    "low-e low-solar": (0.79, 0.88, 0.68, 0.85, 0.60, 0.66, 0.88, 0.82),
    "double tinted": (0.73, 0.82, 0.59, 0.77, 0.51, 0.58, 0.83, 0.76),
}  # Table 14


class Irradiance(Record):
    """Peak irradiance on a surface, W/m2: in all, and its diffuse part."""

    total: float
    diffuse: float


def peak_irradiance(faces: str, latitude: float) -> Irradiance:
    """Peak irradiance in W/m2 on a vertical surface by its compass point, or on a horizontal one (`sky`).

    OutOfRange beyond 20 to 60 degrees north. Source: Tables 9 and 10 and their equations.
    """
    if not LEAST_LATITUDE <= latitude <= MOST_LATITUDE:
        raise OutOfRange(METHOD, f"latitude {latitude:g} is outside 20 to 60 degrees north")
    square = latitude * latitude
    if faces == "sky":
        total = 816.2 + 10.20 * latitude - 0.1806 * square
        return Irradiance(total, min(total, 170.0))
    phi = AZIMUTH[faces] / 180.0
    total = (
        423.5 + 1240.0 * phi - 5143.0 * phi**3 + 3191.0 * phi**4 + 35.25 * phi * latitude + 0.1427 * phi * square
        - 12.89 * latitude - 0.6172 * square + 0.7802 * square / (phi + 1.0)
    )  # fmt: skip
    quarter = float(latitude**0.25)
    diffuse = 356.3 - 37.73 * phi * phi + 0.3022 * phi * latitude - 115.9 * quarter / (phi + 1.0)
    return Irradiance(total, min(total, diffuse))


def shade_line_factor(faces: str, latitude: float) -> float:
    """Depth of shadow below an overhang for each m that it juts out, -, linear between latitudes (Table 12)."""
    if not LEAST_LATITUDE <= latitude <= MOST_LATITUDE:
        raise OutOfRange(METHOD, f"latitude {latitude:g} is outside 20 to 60 degrees north")
    values = _SHADE_LINE_FACTORS[AZIMUTH[faces]]
    above = min(bisect_right(_SHADE_LATITUDES, latitude), len(values) - 1)
    low, high = _SHADE_LATITUDES[above - 1], _SHADE_LATITUDES[above]
    return values[above - 1] + (values[above] - values[above - 1]) * (latitude - low) / (high - low)


def shaded_share(faces: str, latitude: float, depth: float, drop: float, height: float) -> float:
    """Share of the glass in the shadow of an overhang, 0 to 1: equation 28.

    `depth` m it juts out, `drop` m from it down to the glass, `height` m of the glass.
    """
    require_not_negative(depth=depth, drop=drop)
    require_positive(height=height)
    shadow = shade_line_factor(faces, latitude) * depth - drop
    return min(1.0, max(0.0, shadow / height))


def exterior_irradiance(sun: Irradiance, transmission: float, shaded: float) -> float:
    """Irradiance in W/m2 that reaches the glass through screens and past an overhang (PXI).

    `transmission` of a screen outside and `shaded` share, both 0 to 1.
    """
    require_fraction(transmission=transmission, shaded=shaded)
    return transmission * (sun.diffuse + (1.0 - shaded) * (sun.total - sun.diffuse))


def interior_attenuation(glass: str, shade: str, closed: float) -> float:
    """Share of the sun that is load behind an inside shade, 1 without one: 1 + closed x (table - 1), Table 14."""
    require_fraction(closed=closed)
    if shade == "none":
        return 1.0
    return 1.0 + closed * (_INTERIOR_ATTENUATION[glass][_SHADES.index(shade)] - 1.0)
