"""Sun on windows against a sky model; the handbook's tables are in tests/published."""

import pytest

from checker.physics.solar import (
    exterior_irradiance,
    interior_attenuation,
    peak_irradiance,
    shade_line_factor,
    shaded_share,
)
from checker.physics.validity import OutOfRange


def test_both_sides_of_the_meridian_are_alike() -> None:
    assert peak_irradiance("east", 40) == peak_irradiance("west", 40)
    assert peak_irradiance("northwest", 40) == peak_irradiance("northeast", 40)


@pytest.mark.parametrize("latitude", [19.9, 60.1, -35.0])
def test_outside_the_method(latitude: float) -> None:
    with pytest.raises(OutOfRange, match="20 to 60 degrees"):
        peak_irradiance("south", latitude)


def test_against_a_clear_sky_model() -> None:
    """pvlib: Ineichen with Linke turbidity 3, Perez, albedo 0.2, 21 July at 40 north, peak of the day."""
    pandas = pytest.importorskip("pandas")
    pvlib = pytest.importorskip("pvlib")
    times = pandas.date_range("2021-07-21 00:00", "2021-07-21 23:50", freq="10min", tz="Etc/GMT")
    site = pvlib.location.Location(40.0, 0.0, "Etc/GMT", 0.0)
    sun = site.get_solarposition(times)
    sky = site.get_clearsky(times, model="ineichen", linke_turbidity=3.0)
    extra = pvlib.irradiance.get_extra_radiation(times)
    air_mass = site.get_airmass(times)["airmass_relative"]
    for faces, (tilt, azimuth) in {
        "sky": (0, 180), "north": (90, 0), "northeast": (90, 45), "east": (90, 90), "southeast": (90, 135),
        "south": (90, 180),
    }.items():  # fmt: skip
        plane = pvlib.irradiance.get_total_irradiance(
            tilt, azimuth, sun["apparent_zenith"], sun["azimuth"], sky["dni"], sky["ghi"], sky["dhi"],
            dni_extra=extra, airmass=air_mass, albedo=0.2, model="perez",
        )["poa_global"].max()  # fmt: skip

        # the handbook's peaks lie up to a fifth below this sky on the north, equal to it on the south
        assert peak_irradiance(faces, 40.0).total == pytest.approx(plane, rel=0.20), faces


def test_shade_line_between_latitudes() -> None:
    assert shade_line_factor("south", 42.5) == pytest.approx(3.0)


def test_overhang() -> None:
    """Equation 28: (3.3 x 0.6 - 0.3) / 1.2 is beyond the glass; none of it without an overhang."""
    assert shaded_share("south", 40, 0.6, 0.3, 1.2) == 1.0
    assert shaded_share("west", 40, 0.6, 0.3, 1.2) == pytest.approx(0.3)
    assert shaded_share("west", 40, 0.1, 0.5, 1.2) == 0.0


def test_irradiance_behind_screen_and_overhang() -> None:
    """Example house of chapter 17: 0.64 x (164 + 0.27 x 570) = 203.5 W/m2."""
    from checker.physics.solar import Irradiance

    assert exterior_irradiance(Irradiance(734, 164), 0.64, 0.73) == pytest.approx(203.5, abs=0.1)


@pytest.mark.parametrize(
    ("glass", "shade", "published"),
    [("double clear", "white blinds", 0.74), ("double clear", "translucent roller", 0.55), ("single clear", "light drape", 0.45),
     ("low-e low-solar", "medium blinds", 0.88), ("double tinted", "dark drape", 0.82)],
)  # fmt: skip
def test_inside_shades(glass: str, shade: str, published: float) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 14."""
    assert interior_attenuation(glass, shade, 1.0) == pytest.approx(published)
    assert interior_attenuation(glass, shade, 0.5) == pytest.approx((1 + published) / 2)
    assert interior_attenuation(glass, "none", 0.5) == 1.0
