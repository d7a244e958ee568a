"""Walls, roofs and floors against published U-values."""

import pytest

from checker.physics.assemblies import (
    FILM_INSIDE,
    FILM_OUTSIDE,
    MEMBER_DEPTH,
    R_UNIT,
    USUAL_BOARDS,
    WALL_FRAMING_SHARE,
    WOOD_PER_METRE,
    greatest_cavity,
    u_framed,
    u_of_layers,
    u_parallel,
)

U_UNIT = 1 / R_UNIT


@pytest.mark.parametrize(
    ("insulation", "published"),
    [(0, 1.282), (1, 0.562), (5, 0.173), (10, 0.093), (20, 0.048), (30, 0.032), (40, 0.025), (60, 0.016)],
)
def test_roofs_with_insulation_above_the_deck(insulation: float, published: float) -> None:
    """ASHRAE 90.1, appendix A, Table A2.2: films outside 0.17 and inside 0.61 h ft2 F/Btu."""
    u = u_of_layers([FILM_OUTSIDE, insulation * R_UNIT, FILM_INSIDE["up"]])

    # printed to 0.001; the rows with R-1 and more include the deck in the table's own rounding
    assert u / U_UNIT == pytest.approx(published, abs=0.0005)


@pytest.mark.parametrize(
    ("insulation", "depth", "published"), [(19, 5.5, 0.055), (30, 9.25, 0.036), (21, 5.5, 0.052)]
)
def test_single_rafter_roofs(insulation: float, depth: float, published: float) -> None:
    """ASHRAE 90.1, appendix A, Table A2.4.2: films 0.46 and 0.61, board 0.56, a tenth of rafters."""
    across = (0.46 + 0.56 + 0.61) * R_UNIT
    u = u_framed(insulation * R_UNIT, depth * 0.0254, 0.10, across)

    assert u / U_UNIT == pytest.approx(published, abs=0.001)


def test_framed_wall_of_a_textbook() -> None:
    """Cengel, Heat and Mass Transfer, wood-frame wall with 25 % studs: U 0.449 W/(m2 K), 1,078 W."""
    across = 0.030 + 0.14 + 0.23 + 0.079 + 0.12
    u = u_parallel([(0.75, 2.45 + across), (0.25, 0.63 + across)])

    assert u == pytest.approx(0.4494, rel=2e-3)
    assert u * 50 * 2.5 * 0.8 * 24 == pytest.approx(1078, rel=2e-3)


def test_wall_of_r_21_between_studs() -> None:
    """Washington State Energy Code, WAC 51-11-0530, Table 5-1: R-21 wall U 0.057, framing of WAC 51-11-1005."""
    across = FILM_OUTSIDE + USUAL_BOARDS["wall"] + FILM_INSIDE["wall"]
    u = u_framed(21 * R_UNIT, MEMBER_DEPTH["2x6"], WALL_FRAMING_SHARE, across)

    assert u / U_UNIT == pytest.approx(0.057, rel=0.02)


def test_films() -> None:
    """Washington State Energy Code, WAC 51-11-0526."""
    assert pytest.approx(0.17) == FILM_OUTSIDE / R_UNIT
    assert [FILM_INSIDE[way] / R_UNIT for way in ("up", "down", "wall")] == pytest.approx([0.61, 0.92, 0.68])


def test_one_inch_of_softwood() -> None:
    """ASHRAE 90.1, appendix A: R-1.25 for each inch of wood."""
    assert pytest.approx(1.25) == WOOD_PER_METRE * 0.0254 / R_UNIT


def test_shares_must_sum_to_one() -> None:
    with pytest.raises(ValueError, match="sum to 1"):
        u_parallel([(0.75, 1.0), (0.20, 1.0)])


def test_no_resistance_at_all_is_refused() -> None:
    with pytest.raises(ValueError, match="must be positive"):
        u_of_layers([0.0])


def test_cavity_of_a_two_by_four() -> None:
    """Seven per inch times 3.5 in."""
    assert greatest_cavity(0.0889) / R_UNIT == pytest.approx(24.5)
