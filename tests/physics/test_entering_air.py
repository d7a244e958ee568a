"""Heating points by entering temperature; the table is invented."""

import pytest

from checker.physics.entering_air import at_entering
from checker.physics.heat_pump import PerformancePoint
from checker.physics.validity import OutOfRange


def kelvin(fahrenheit: float) -> float:
    return (fahrenheit + 459.67) / 1.8


def row(
    outdoor: float, entering: float | None, capacity: float, least: float | None = None
) -> tuple[float | None, PerformancePoint]:
    point = PerformancePoint(kelvin(outdoor), capacity, capacity / 3.0, least)
    return (None if entering is None else kelvin(entering), point)


TABLE = [row(17, 60, 5200.0), row(17, 70, 5000.0), row(47, 60, 7400.0, 1900.0), row(47, 70, 7000.0, 2000.0)]


def test_between_two_entering_temperatures() -> None:
    cold, mild = at_entering(TABLE, kelvin(68))
    assert (cold.temperature, mild.temperature) == (kelvin(17), kelvin(47))
    assert cold.capacity == pytest.approx(5040.0)
    assert mild == pytest.approx((kelvin(47), 7080.0, 2360.0, 1980.0))
    assert cold.least is None


def test_carried_on_five_degrees() -> None:
    assert at_entering(TABLE, kelvin(75))[1].capacity == pytest.approx(6800.0)
    with pytest.raises(OutOfRange, match="indoor temperature"):
        at_entering(TABLE, kelvin(75.1))


def test_one_entering_temperature_is_taken_as_it_is() -> None:
    assert at_entering([row(17, 70, 5000.0), row(47, 70, 7000.0)], kelvin(68))[0].capacity == 5000.0


def test_a_row_twice() -> None:
    with pytest.raises(ValueError, match="two performance points"):
        at_entering([row(17, 70, 5000.0), row(17, 70, 5100.0)], kelvin(70))
