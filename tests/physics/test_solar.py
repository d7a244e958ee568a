"""Sun on windows against the handbook's tables and a sky model."""

import pytest

from checker.physics.solar import (
    exterior_irradiance,
    interior_attenuation,
    peak_irradiance,
    shade_line_factor,
    shaded_share,
)
from checker.physics.validity import OutOfRange

LATITUDES = (25, 30, 35, 40, 45, 50, 55, 60)
# ASHRAE Handbook - Fundamentals 2021, chapter 17, Tables 9 and 10, W/m2
PUBLISHED = {
    "sky": (958, 960, 952, 935, 909, 875, 831, 778), "north": (203, 183, 172, 169, 174, 187, 208, 237),
    "northeast": (590, 582, 575, 571, 568, 568, 570, 574), "west": (702, 719, 734, 748, 761, 773, 783, 792),
    "southeast": (492, 542, 589, 632, 673, 710, 744, 775), "south": (218, 306, 391, 471, 547, 619, 686, 749),
}  # fmt: skip
DIFFUSE = {
    25: (97, 149, 178, 193, 197), 40: (65, 124, 159, 178, 185), 60: (34, 100, 141, 164, 175),
}  # fmt: skip
POINTS = ("north", "northeast", "east", "southeast", "south")


@pytest.mark.parametrize("faces", PUBLISHED)
def test_peak_irradiance_of_the_handbook(faces: str) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 10."""
    totals = [peak_irradiance(faces, latitude).total for latitude in LATITUDES]

    assert totals == pytest.approx(PUBLISHED[faces], abs=1.0)


@pytest.mark.parametrize("latitude", DIFFUSE)
def test_diffuse_part_of_the_handbook(latitude: int) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 10."""
    parts = [peak_irradiance(faces, latitude).diffuse for faces in POINTS]

    assert parts == pytest.approx(DIFFUSE[latitude], abs=1.0)


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


@pytest.mark.parametrize(
    ("faces", "latitude", "published"),
    [("south", 40, 3.3), ("south", 60, 1.4), ("west", 35, 1.1), ("southeast", 50, 1.4), ("north", 25, 2.1)],
)
def test_shade_line_factors(faces: str, latitude: float, published: float) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 12."""
    assert shade_line_factor(faces, latitude) == pytest.approx(published)


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
