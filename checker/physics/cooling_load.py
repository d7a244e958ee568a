"""Sensible and latent cooling load by the residential load factor method.

Source throughout: ASHRAE Handbook - Fundamentals 2021, chapter 17. Units: K, m2, m2 K/W, W/(m2 K), W/m2, W,
degrees of latitude.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated

from checker.physics.arguments import require_finite, require_fraction, require_not_negative
from checker.physics.solar import LEAST_LATITUDE, METHOD, MOST_LATITUDE
from checker.physics.validity import OutOfRange
from checker.record import Record

HIGHEST_ELEVATION = 2000.0
MOST_GLASS_OF_A_FACADE = 0.15
MOST_GLASS = 0.30

ROOF_ABSORPTANCE = {
    "dark shingles": 0.92, "medium shingles": 0.85, "light shingles": 0.75, "white shingles": 0.75, "dark tile": 0.80,
    "medium tile": 0.80, "light tile": 0.40, "white tile": 0.30, "dark metal": 0.90, "medium metal": 0.70,
    "light metal": 0.50, "white metal": 0.35, "white coating": 0.30,
}  # fmt: skip
"""Table 8: share of the sun that a roof takes up."""


class OpaqueFactor(Record):
    """Factors of the design temperature difference, in K, and of the daily range (Table 7)."""

    difference: float
    offset: float
    range: float


def opaque_factor(kind: str, absorptance: float = 0.92) -> OpaqueFactor:
    """Factors of an opaque surface; `kind` one of the keys below, `absorptance` of the roof (Table 7)."""
    require_fraction(absorptance=absorptance)
    return {
        "below attic": OpaqueFactor(0.62, 14.3 * absorptance - 4.5, -0.19),
        "roof": OpaqueFactor(1.0, 38.3 * absorptance - 7.0, -0.36),
        "sunlit wall": OpaqueFactor(1.0, 8.2, -0.36),
        "shaded wall": OpaqueFactor(1.0, 0.0, -0.36),
        "floor over outdoors": OpaqueFactor(1.0, 0.0, -0.06),
        "floor over crawl space": OpaqueFactor(0.33, 0.0, -0.28),
    }[kind]


def opaque_gain(u: float, factor: OpaqueFactor, difference: float, daily_range: float) -> float:
    """Cooling load of an opaque surface, W/m2: U (OFt dT + OFb + OFr DR), equation 21."""
    require_not_negative(u=u, daily_range=daily_range)
    require_finite(difference=difference)
    return u * (factor.difference * difference + factor.offset + factor.range * daily_range)


def window_gain(
    u: float, difference: float, daily_range: float, irradiance: float, gain: float, attenuation: float, factor: float
) -> float:
    """Cooling load of a window, W/m2: U (dT - 0.46 DR) + PXI x SHGC x IAC x FF, equation 25.

    `irradiance` W/m2 at the glass, `gain` its solar heat gain coefficient, `attenuation` of inside shades,
    `factor` by exposure (Table 13).
    """
    require_not_negative(u=u, daily_range=daily_range, irradiance=irradiance)
    require_fraction(gain=gain, attenuation=attenuation, factor=factor)
    return u * (difference - 0.46 * daily_range) + irradiance * gain * attenuation * factor


def internal_sensible(floor_area: float, people: int) -> float:
    """Sensible heat of people, lights and appliances of a dwelling, W: 136 + 2.2 A + 22 N, equation 30."""
    require_not_negative(floor_area=floor_area, people=people)
    return 136.0 + 2.2 * floor_area + 22.0 * people


def internal_latent(floor_area: float, people: int) -> float:
    """Latent heat of people and appliances of a dwelling, W: 20 + 0.22 A + 12 N, equation 31."""
    require_not_negative(floor_area=floor_area, people=people)
    return 20.0 + 0.22 * floor_area + 12.0 * people


def require_method_applies(
    latitude: float, elevation: float, outdoor: float, indoor: float, daily_range: float
) -> None:
    """OutOfRange where climate or place lies outside the method (Table 1).

    `latitude` degrees north, `elevation` m, design temperatures and daily range K.
    """
    require_finite(latitude=latitude, elevation=elevation)
    if not LEAST_LATITUDE <= latitude <= MOST_LATITUDE:
        raise OutOfRange(METHOD, f"latitude {latitude:g} is outside 20 to 60 degrees north")
    if elevation >= HIGHEST_ELEVATION:
        raise OutOfRange(METHOD, f"elevation {elevation:.0f} m is 2,000 m or more")
    if outdoor - daily_range / 2.0 <= indoor:
        raise OutOfRange(METHOD, "the design day is on average no warmer than the rooms")


class GlassShare(Record):
    """Share of the floor area that windows have: in all, and on the facade with the most."""

    total: Annotated[float, "share"]
    facade: Annotated[float, "share"]
    faces: str


def glass_share(area_by_facade: Mapping[str, float], floor_area: float) -> GlassShare:
    """Window area over floor area; `sky` counts in the total only. Areas m2. ValueError for no floor."""
    if floor_area <= 0.0:
        raise ValueError("floor area must be positive")
    facades = {faces: area for faces, area in area_by_facade.items() if faces != "sky"}
    most = max(sorted(facades), key=lambda faces: facades[faces], default="")
    return GlassShare(
        sum(area_by_facade.values()) / floor_area, facades.get(most, 0.0) / floor_area if most else 0.0, most
    )
