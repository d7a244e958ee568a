"""Residential load factors against the handbook's example house."""

import pytest

from checker.physics.cooling_load import (
    ROOF_ABSORPTANCE,
    glass_share,
    internal_latent,
    internal_sensible,
    opaque_factor,
    opaque_gain,
    require_method_applies,
    window_gain,
)
from checker.physics.solar import Irradiance, exterior_irradiance, peak_irradiance
from checker.physics.validity import OutOfRange

DIFFERENCE, RANGE = 9.1, 9.3  # K: ASHRAE Handbook - Fundamentals 2021, chapter 17, example house at 33.64 north


@pytest.mark.parametrize(
    ("u", "gain", "transmission", "beam", "diffuse", "shaded", "factor", "published"),
    [
        (2.21, 0.31, 0.64, 570, 164, 0.73, 0.56, 40.3),  # west, operable, screened
        (2.01, 0.36, 1.0, 570, 164, 0.73, 0.56, 63.5),  # west, fixed
        (2.01, 0.36, 1.0, 203, 188, 0.0, 0.47, 65.3),  # south, fixed
        (2.21, 0.31, 0.64, 570, 164, 0.73, 0.31, 27.1),  # east, operable
    ],
)
def test_windows_of_the_example_house(
    u: float, gain: float, transmission: float, beam: float, diffuse: float, shaded: float, factor: float, published: float
) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, example: W/m2 of window, IAC 0.84."""
    sun = exterior_irradiance(Irradiance(beam + diffuse, diffuse), transmission, shaded)

    assert window_gain(u, DIFFERENCE, RANGE, sun, gain, 0.84, factor) == pytest.approx(published, rel=3e-3)


@pytest.mark.parametrize(
    ("kind", "u", "published"),
    [("below attic", 0.18, 2.08), ("sunlit wall", 0.51, 7.12), ("shaded wall", 0.51, 2.93), ("sunlit wall", 2.3, 32.09)],
)
def test_opaque_surfaces_of_the_example_house(kind: str, u: float, published: float) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, example: W/m2; roof of medium shingles."""
    factor = opaque_factor(kind, ROOF_ABSORPTANCE["medium shingles"])

    assert opaque_gain(u, factor, DIFFERENCE, RANGE) == pytest.approx(published, rel=3e-3)


def test_sun_of_the_example_house() -> None:
    """Same example, which reads the row of 35 degrees: west 164 diffuse and 570 beam, south 188 and 203 W/m2."""
    west, south = peak_irradiance("west", 35.0), peak_irradiance("south", 35.0)

    assert (west.diffuse, west.total - west.diffuse) == pytest.approx((164, 570), abs=1)
    assert (south.diffuse, south.total - south.diffuse) == pytest.approx((188, 203), abs=1)


def test_internal_gain_of_the_example_house() -> None:
    """Equations 30 and 31: 195.3 m2 and 4 people, 654 and 111 W."""
    assert internal_sensible(195.3, 4) == pytest.approx(654, abs=0.5)
    assert internal_latent(195.3, 4) == pytest.approx(111, abs=0.5)


def test_latent_total_of_the_example_is_a_misprint() -> None:
    """The example prints 752 W in all; its own terms, 3,010 x 60 L/s x 0.0050 and 111 W, make 1,014 W."""
    air = 3010 * 60 * 0.0050

    assert air + internal_latent(195.3, 4) == pytest.approx(1014, abs=1)
    assert air + internal_latent(195.3, 4) != pytest.approx(752, rel=0.2)


def test_window_on_the_west() -> None:
    """Same equations at 33.6 north, U 2.87, dT 9.2, DR 11, SHGC 0.57, IAC 0.6, FF 0.56, worked out apart."""
    sun = peak_irradiance("west", 33.6).total

    assert sun == pytest.approx(730.1, abs=0.1)
    assert window_gain(2.87, 9.2, 11.0, sun, 0.57, 0.6, 0.56) == pytest.approx(151.72, rel=1e-3)


@pytest.mark.parametrize(
    ("latitude", "elevation", "outdoor", "daily_range", "reason"),
    [
        (15.0, 0.0, 308.0, 10.0, "latitude"), (40.0, 2000.0, 308.0, 10.0, "elevation"),
        (40.0, 0.0, 300.0, 10.0, "no warmer"), (40.0, 0.0, 302.0, 10.0, "no warmer"),
    ],
)  # fmt: skip
def test_outside_the_method(latitude: float, elevation: float, outdoor: float, daily_range: float, reason: str) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 1; rooms at 297 K."""
    with pytest.raises(OutOfRange, match=reason):
        require_method_applies(latitude, elevation, outdoor, 297.0, daily_range)


def test_inside_the_method() -> None:
    require_method_applies(40.0, 1999.0, 303.0, 297.0, 11.9)


def test_share_of_glass() -> None:
    share = glass_share({"south": 12.0, "west": 6.0, "sky": 2.0}, 100.0)

    assert share == (pytest.approx(0.20), pytest.approx(0.12), "south")
