"""Heat loss at winter design, and what ducts outside the shell add."""

import pytest

from checker.physics.distribution_loss import distribution_loss_factor
from checker.physics.heating_load import (
    air_loss,
    buffer_temperature,
    edge_loss,
    require_winter,
    transmission_loss,
)
from checker.physics.validity import OutOfRange


def test_totals_of_the_example_house() -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, example: 0.13 and 0.27 of the load in the ducts."""
    heating = distribution_loss_factor("attic", "furnace", 1, 1.4, 0.05) * (4674 + 2235)
    cooling = distribution_loss_factor("attic", "cooling", 1, 1.4, 0.05) * (1900 + 672 + 654)

    assert (heating, cooling) == (pytest.approx(898, abs=1), pytest.approx(871, abs=1))
    assert 4674 + 2235 + heating == pytest.approx(7807, rel=1e-3)
    assert 1900 + 672 + 654 + cooling == pytest.approx(4096, rel=1e-3)


def test_outdoor_air_of_the_example_house() -> None:
    """Same example: 36 L/s of infiltration and 43 L/s of ventilation, 2,235 W at 23 K, with the factor 1.23
    W/(L/s K); standard dry air gives 1.211, hence 1.6 % less."""
    assert air_loss(0.079, 294.15, 271.15) == pytest.approx(2235, rel=0.02)


@pytest.mark.parametrize(
    ("place", "use", "stories", "insulation", "leakage", "published"),
    [
        ("attic", "cooling", 1, 0.0, 0.11, 1.26), ("attic", "heat pump", 1, 0.7, 0.11, 0.37),
        ("crawl space", "furnace", 1, 1.4, 0.05, 0.13), ("basement", "furnace", 2, 0.7, 0.11, 0.17),
        ("attic", "cooling", 2, 1.4, 0.05, 0.25), ("crawl space", "cooling", 2, 0.0, 0.05, 0.08),
    ],
)  # fmt: skip
def test_distribution_loss_factors(
    place: str, use: str, stories: float, insulation: float, leakage: float, published: float
) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 6."""
    assert distribution_loss_factor(place, use, stories, insulation, leakage) == pytest.approx(published)  # type: ignore[arg-type]


def test_distribution_loss_between_steps() -> None:
    assert distribution_loss_factor("attic", "furnace", 1, 1.05, 0.08) == pytest.approx((0.27 + 0.145) / 2)
    assert distribution_loss_factor("attic", "furnace", 1, 5.0, 0.30) == pytest.approx(0.25)


def test_wrong_published_loss_of_a_basement() -> None:
    """A public note prints 2,924 Btu/h for 43 Btu/(h F) x (68 - 5) F; the product is 2,709."""
    conductance = 43 * 0.2930711 * 1.8  # W/K
    loss = transmission_loss(conductance, 1.0, 293.15, 258.15) / 0.2930711

    assert loss == pytest.approx(2709, abs=1)
    assert loss != pytest.approx(2924, rel=0.05)


def test_wall_of_a_textbook() -> None:
    """Cengel, Heat and Mass Transfer: 100 m2 of U 0.449 between 22 and -2 C, 1,078 W."""
    assert transmission_loss(0.4494, 100.0, 295.15, 271.15) == pytest.approx(1078, rel=2e-3)


def test_recovery_saves_its_share() -> None:
    assert air_loss(0.03, 294.0, 264.0, 0.75) == pytest.approx(0.25 * air_loss(0.03, 294.0, 264.0))


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
