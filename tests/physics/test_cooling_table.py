"""Cooling capacity by outdoor temperature and entering wet bulb; the table is invented."""

import pytest

from checker.physics.cooling_table import CoolingPoint, cooling_at
from checker.physics.validity import OutOfRange


def kelvin(fahrenheit: float) -> float:
    return (fahrenheit + 459.67) / 1.8


def point(outdoor: float, wet: float | None, total: float, sensible: float | None = None) -> CoolingPoint:
    return CoolingPoint(kelvin(outdoor), total, sensible, None if wet is None else kelvin(wet))


TABLE = [
    point(85, 63, 6000.0, 4800.0), point(105, 63, 5200.0, 4600.0),
    point(85, 67, 6500.0, 4300.0), point(105, 67, 5700.0, 4100.0),
]  # fmt: skip


def test_a_point_of_the_table_is_read_as_it_stands() -> None:
    assert cooling_at(TABLE, kelvin(105), kelvin(67)) == pytest.approx((5700.0, 4100.0))


def test_between_the_points_in_both_directions() -> None:
    # halfway outdoors: 5600 and 6100; three quarters of the way between the wet bulbs: 5975, and 4325 sensible
    assert cooling_at(TABLE, kelvin(95), kelvin(66)) == pytest.approx((5975.0, 4325.0))


def test_held_below_the_coolest_and_carried_on_a_little_above_the_hottest() -> None:
    assert cooling_at(TABLE, kelvin(70), kelvin(63)).total == pytest.approx(6000.0)
    assert cooling_at(TABLE, kelvin(110), kelvin(63)).total == pytest.approx(5000.0)
    with pytest.raises(OutOfRange, match="above the hottest"):
        cooling_at(TABLE, kelvin(110.1), kelvin(63))


def test_carried_on_two_degrees_beyond_the_wet_bulbs() -> None:
    assert cooling_at(TABLE, kelvin(85), kelvin(61)).total == pytest.approx(5750.0)
    with pytest.raises(OutOfRange, match="wet bulb"):
        cooling_at(TABLE, kelvin(85), kelvin(60.9))


def test_one_point_answers_for_its_own_conditions_only() -> None:
    single = [point(95, 63, 5000.0)]
    assert cooling_at(single, kelvin(95.5), kelvin(63)) == (5000.0, None)
    with pytest.raises(OutOfRange, match="one performance point"):
        cooling_at(single, kelvin(90), kelvin(63))


def test_a_table_without_wet_bulbs_holds_for_any() -> None:
    plain = [point(85, None, 6000.0), point(105, None, 5200.0)]
    assert cooling_at(plain, kelvin(95), kelvin(55)).total == pytest.approx(5600.0)


def test_the_sensible_part_never_exceeds_the_total_and_needs_every_point() -> None:
    dry = [point(85, 55, 5000.0, 5000.0), point(85, 63, 6000.0, 4800.0)]
    found = cooling_at(dry, kelvin(85), kelvin(53.5))
    assert found.sensible == found.total
    assert cooling_at([*TABLE[:3], point(105, 67, 5700.0)], kelvin(95), kelvin(66)).sensible is None


def test_impossible_tables() -> None:
    with pytest.raises(ValueError, match="no performance point"):
        cooling_at([], kelvin(95), kelvin(63))
    with pytest.raises(ValueError, match="two performance points"):
        cooling_at([point(85, 63, 1.0), point(85, 63, 2.0)], kelvin(85), kelvin(63))
