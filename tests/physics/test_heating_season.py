"""Bins of the heating season by climate region, and a heat pump's winter against an independent sum."""

import numpy as np
import pytest

from checker.physics.heat_pump import PerformancePoint, load_line, seasonal_energy
from checker.physics.heating_season import BASE, design_temperature, nearest_region, season_bins

BTUH = 0.29307107017
REGIONS = ("I", "II", "III", "IV", "V", "VI")


def kelvin(fahrenheit: float) -> float:
    return (fahrenheit + 459.67) / 1.8


@pytest.mark.parametrize("region", REGIONS)
def test_the_shares_of_a_region_are_all_the_hours(region: str) -> None:
    shares = [share for _, share in season_bins(region)]
    assert sum(shares) == pytest.approx(1.0, abs=5e-4)
    assert season_bins(region)[0][0] == pytest.approx(kelvin(62))


# AHRI 210/240: heating load hours of the regions, which are the shares weighted by (65 - t) / (65 - design), times all hours
@pytest.mark.parametrize(
    ("region", "load_hours", "all_hours"),
    [("I", 750, 1826), ("II", 1250, 3148), ("III", 1750, 4453), ("IV", 2250, 5643), ("V", 2750, 6956), ("VI", 2750, 6258)],
)
def test_heating_load_hours(region: str, load_hours: float, all_hours: float) -> None:
    lift = sum((BASE - t) / (BASE - design_temperature(region)) * share for t, share in season_bins(region))
    assert load_hours / lift == pytest.approx(all_hours, rel=0.005)


def test_the_nearest_region() -> None:
    assert nearest_region(kelvin(5), False) == ("IV", pytest.approx(0.0, abs=1e-9))
    assert nearest_region(kelvin(20), False)[0] == "III"
    assert nearest_region(kelvin(28), True)[0] == "VI"
    assert nearest_region(kelvin(28), False)[0] == "II"
    assert nearest_region(kelvin(-40), False) == ("V", pytest.approx(30 / 1.8))


def test_degree_days_set_the_length() -> None:
    bins = season_bins("III", 5000 * 48000.0)
    assert sum((BASE - t) * time for t, time in bins) == pytest.approx(5000 * 48000.0)
    lift = sum((3 + 5 * place) * share for place, (_, share) in enumerate(season_bins("III")))
    assert sum(time for _, time in bins) / 3600 == pytest.approx(5000 * 24 / lift)


@pytest.mark.parametrize("region", ["III", "IV"])
@pytest.mark.parametrize("load", [18_000, 30_000, 45_000])
def test_a_winter_against_an_independent_sum(region: str, load: float) -> None:
    outdoor, capacity, power = (-8, 5, 17, 47, 65), (20e3, 24e3, 27e3, 36e3, 40e3), (2800, 2900, 3000, 3200, 3300)
    least = (9e3, 10e3, 11e3, 13e3, 14e3)
    points = [
        PerformancePoint(kelvin(t), c * BTUH, p, m * BTUH)
        for t, c, p, m in zip(outdoor, capacity, power, least, strict=True)
    ]
    bins = season_bins(region, 6000 * 48000.0)
    found = seasonal_energy(points, load_line(load * BTUH, kelvin(5), kelvin(65)), bins)

    t = np.array([temperature * 1.8 - 459.67 for temperature, _ in bins])
    hours = np.array([time for _, time in bins]) / 3600
    wanted = load * (65 - t) / 60
    offered, watts, floor = (np.interp(t, outdoor, row) for row in (capacity, power, least))
    given = np.minimum(wanted, offered)
    factor = 1 - 0.25 * (1 - np.minimum(1, given / floor))
    assert found.heat / 3600 / BTUH == pytest.approx(float(np.sum(wanted * hours)), rel=1e-9)
    assert found.backup / 3600 / BTUH == pytest.approx(float(np.sum((wanted - given) * hours)), rel=1e-9, abs=1e-6)
    assert found.compressor / 3600 == pytest.approx(float(np.sum(watts * given / offered / factor * hours)), rel=1e-9)


def test_impossible_degree_days() -> None:
    with pytest.raises(ValueError, match="must"):
        season_bins("IV", -1.0)
    with pytest.raises(ValueError, match="must"):
        nearest_region(-5.0, False)
