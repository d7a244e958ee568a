"""Heat pumps: capacity, balance point, backup, seasonal energy."""

import pytest
from scipy.optimize import brentq

from checker.physics.heat_pump import (
    LoadLine,
    PerformancePoint,
    backup_at,
    balance_points,
    capacity_at,
    load_line,
    part_load_factor,
    seasonal_energy,
    value_at,
    values_beside,
)
from checker.physics.heating_season import season_bins
from checker.physics.validity import OutOfRange

BTUH = 0.29307107017


def kelvin(fahrenheit: float) -> float:
    return (fahrenheit + 459.67) / 1.8


def fahrenheit(temperature: float) -> float:
    return temperature * 1.8 - 459.67


TWO = [PerformancePoint(kelvin(47), 36_000 * BTUH, 3300.0), PerformancePoint(kelvin(17), 24_000 * BTUH, 3000.0)]
HOUSE = load_line(30_000 * BTUH, kelvin(5), kelvin(70))


def test_one_balance_point() -> None:
    assert len(balance_points(TWO, HOUSE)) == 1


def test_balance_point_is_where_a_root_finder_sees_it() -> None:
    root = brentq(lambda t: capacity_at(TWO, t) - HOUSE.at(t), kelvin(15), kelvin(60), xtol=1e-12)
    assert balance_points(TWO, HOUSE)[0] == pytest.approx(root, abs=1e-9)


def test_no_balance_point_either_way() -> None:
    assert balance_points(TWO, load_line(5_000 * BTUH, kelvin(5), kelvin(70))) == ()  # never short
    assert balance_points(TWO, LoadLine(900_000 * BTUH, kelvin(5), kelvin(70))) == ()  # short up to 65 F
    with pytest.raises(ValueError):
        balance_points(TWO[:1], HOUSE)


def test_several_crossings_are_all_told() -> None:
    dip = [PerformancePoint(kelvin(t), q * BTUH) for t, q in ((47, 20_000), (35, 12_000), (17, 24_000), (-5, 26_000))]
    line = load_line(30_000 * BTUH, kelvin(-5), kelvin(70))
    found = [fahrenheit(each) for each in balance_points(dip, line)]
    assert len(found) == 3 and found == sorted(found)
    for each in found:
        assert capacity_at(dip, kelvin(each)) == pytest.approx(line.at(kelvin(each)), rel=1e-9)


def test_capacity_between_below_and_above_the_table() -> None:
    assert capacity_at(TWO, kelvin(32)) / BTUH == pytest.approx(30_000)
    assert capacity_at(TWO, kelvin(12)) / BTUH == pytest.approx(22_000)  # 5 F below the coldest point at most
    with pytest.raises(OutOfRange):
        capacity_at(TWO, kelvin(11))
    assert capacity_at(TWO, kelvin(80)) == capacity_at(TWO, kelvin(65))
    assert capacity_at(TWO, kelvin(20), lowest_operating=kelvin(25)) == 0.0
    with pytest.raises(OutOfRange):
        value_at([(kelvin(47), 1.0)], kelvin(17))
    with pytest.raises(ValueError):
        value_at([(300.0, 1.0), (300.0, 2.0)], 300.0)
    with pytest.raises(ValueError):
        value_at([], 300.0)


def test_backup_and_load_line() -> None:
    assert backup_at(30_000 * BTUH, 19_200 * BTUH) == pytest.approx(3165, rel=1e-3)
    assert backup_at(5.0, 9.0) == 0.0
    assert HOUSE.at(kelvin(75)) == 0.0
    with pytest.raises(ValueError):
        load_line(1.0, 300.0, 300.0)


def test_region_iv_fractions() -> None:
    # AHRI 210/240, climate region IV: the fractions sum to 1.000, without the two warmest bins to 0.757.
    bins = season_bins("IV")
    assert sum(share for _, share in bins) == pytest.approx(1.000, abs=5e-4)
    assert sum(share for _, share in bins[2:]) == pytest.approx(0.757, abs=5e-4)
    assert [round(fahrenheit(t)) for t, _ in bins] == list(range(62, -9, -5))


def test_seasonal_energy_by_hand() -> None:
    # One bin of an hour at 47 F: load 10,615 Btu/h of 36,000: run share 0.2949, factor 0.8237.
    one = seasonal_energy(TWO, HOUSE, [(kelvin(47), 3600.0)])
    assert one.heat / 3600 / BTUH == pytest.approx(10_615, rel=1e-3)
    assert one.compressor / 3600 == pytest.approx(3300 * 0.29487 / 0.82372, rel=1e-3)
    assert one.backup == 0.0
    # A unit that turns down to that load does not cycle.
    deep = [each._replace(least=5_000 * BTUH) for each in TWO]
    assert seasonal_energy(deep, HOUSE, [(kelvin(47), 3600.0)]).compressor / 3600 == pytest.approx(
        3300 * 0.29487, rel=1e-3
    )


def test_backup_in_the_cold_bins() -> None:
    cold = seasonal_energy(TWO, HOUSE, [(kelvin(12), 3600.0)])
    assert cold.backup / 3600 / BTUH == pytest.approx(30_000 * 58 / 65 - 22_000, rel=1e-6)
    stopped = seasonal_energy(TWO, HOUSE, [(kelvin(12), 3600.0)], lowest_operating=kelvin(15))
    assert stopped.compressor == 0.0 and stopped.backup == stopped.heat
    assert stopped.performance == pytest.approx(1.0)
    with pytest.raises(ValueError):
        seasonal_energy(TWO, HOUSE, [(kelvin(72), 3600.0)])


def test_part_load_factor() -> None:
    assert part_load_factor(1.0) == 1.0
    assert part_load_factor(0.0) == 0.75  # AHRI 210/240 default degradation
    with pytest.raises(ValueError):
        part_load_factor(1.2)


def test_a_table_with_one_temperature_twice_has_no_balance_point() -> None:
    twice = [PerformancePoint(280.0, 9000.0), PerformancePoint(280.0, 8000.0), PerformancePoint(265.0, 6000.0)]
    with pytest.raises(ValueError, match="two performance points"):
        balance_points(twice, HOUSE)


def test_values_beside_a_temperature_are_those_of_the_points() -> None:
    table = [(258.0, 3000.0), (265.0, 4000.0), (265.0, 4200.0), (281.0, 6000.0)]
    assert values_beside(table, 265.0) == [4000.0, 4200.0]
    assert values_beside(table, 260.0) == [3000.0, 4000.0, 4200.0]
    assert values_beside(table, 255.0) == [3000.0]
    assert values_beside(table, 290.0) == [6000.0]
    with pytest.raises(ValueError, match="no performance point"):
        values_beside([], 265.0)
