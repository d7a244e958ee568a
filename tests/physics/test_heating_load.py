"""Heat loss at winter design, and what ducts outside the shell add."""

import pytest

from checker.physics.distribution_loss import distribution_loss_factor
from checker.physics.heating_load import (
    buffer_temperature,
    edge_loss,
    require_winter,
)
from checker.physics.validity import OutOfRange


def test_distribution_loss_between_steps() -> None:
    assert distribution_loss_factor("attic", "furnace", 1, 1.05, 0.08) == pytest.approx((0.27 + 0.145) / 2)
    assert distribution_loss_factor("attic", "furnace", 1, 5.0, 0.30) == pytest.approx(0.25)


def test_edge() -> None:
    assert edge_loss(1.0, 12.0, 294.0, 264.0) == pytest.approx(360.0)


def test_buffer_by_heat_balance() -> None:
    """(20 x 294 + 60 x 264) / 80, by hand."""
    assert buffer_temperature(20.0, 294.0, 60.0, 264.0) == pytest.approx(271.5)
    assert buffer_temperature(20.0, 294.0, 30.0, 264.0, 30.0) == pytest.approx(271.5)
    with pytest.raises(ValueError, match="must be positive"):
        buffer_temperature(0.0, 294.0, 0.0, 264.0)


@pytest.mark.parametrize("outdoor", [290.0, 233.0])
def test_outside_the_range(outdoor: float) -> None:
    with pytest.raises(OutOfRange, match="5 to 60 K"):
        require_winter(294.0, outdoor)
