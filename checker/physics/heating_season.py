"""The heating season by temperature bins where the site states none: six climate regions of the rating standard.

Units: K; shares of the hours of the heating season.
"""

from __future__ import annotations

from checker.physics.arguments import require_not_negative, require_positive

WARMEST = 289.8166666666667
"""62 F, the middle of the first bin; each next one is 5 F colder."""
STEP = 5.0 / 1.8
BASE = 291.4833333333333
"""65 F, to which degree days are counted."""
MARINE = "VI"

# design temperature in F and shares of the hours from 62 F down, by AHRI 210/240-2017
_REGIONS: dict[str, tuple[float, tuple[float, ...]]] = {
    "I": (37.0, (0.291, 0.239, 0.194, 0.129, 0.081, 0.041, 0.019, 0.005, 0.001)),
    "II": (27.0, (0.215, 0.189, 0.163, 0.143, 0.112, 0.088, 0.056, 0.024, 0.008, 0.002)),
    "III": (17.0, (0.153, 0.142, 0.138, 0.137, 0.135, 0.118, 0.092, 0.047, 0.021, 0.009, 0.005, 0.002, 0.001)),
    "IV": (5.0, (0.132, 0.111, 0.103, 0.093, 0.100, 0.109, 0.126, 0.087, 0.055, 0.036, 0.026, 0.013, 0.006, 0.002, 0.001)),
    "V": (
        -10.0,
        (0.106, 0.092, 0.086, 0.076, 0.078, 0.087, 0.102, 0.094, 0.074, 0.055, 0.047, 0.038, 0.029, 0.018, 0.010,
         0.005, 0.002, 0.001),
    ),
    "VI": (30.0, (0.113, 0.206, 0.215, 0.204, 0.141, 0.076, 0.034, 0.008, 0.003)),
}  # fmt: skip


def design_temperature(region: str) -> float:
    """Design temperature in K of a region `I` to `VI`. Source: AHRI 210/240-2017, table of the regions."""
    return (_REGIONS[region][0] + 459.67) / 1.8


def nearest_region(design: float, marine: bool) -> tuple[str, float]:
    """(region, K between its design temperature and this one): `VI` for a marine climate, else the nearest.

    ValueError for an impossible temperature. Source: AHRI 210/240-2017; the choice common practice.
    """
    require_positive(design=design)
    names = [MARINE] if marine else [name for name in _REGIONS if name != MARINE]
    name = min(names, key=lambda each: abs(design_temperature(each) - design))
    return name, abs(design_temperature(name) - design)


def season_bins(region: str, degree_days: float = 0.0) -> tuple[tuple[float, float], ...]:
    """(outdoor K, time) from 62 F down. The times are shares, or seconds such that they make up the degree days.

    `degree_days` K s to 65 F; nothing leaves the shares. ValueError below zero.
    Source: AHRI 210/240-2017, fractional bin hours; scaling by degree days common practice.
    """
    require_not_negative(degree_days=degree_days)
    bins = [(WARMEST - place * STEP, share) for place, share in enumerate(_REGIONS[region][1])]
    lift = sum((BASE - temperature) * share for temperature, share in bins)
    scale = degree_days / lift if degree_days > 0.0 else 1.0
    return tuple((temperature, share * scale) for temperature, share in bins)
