"""Slabs with heating pipes in them, insulated underneath and at the edge."""

import pytest

from checker.physics.assemblies import R_UNIT
from checker.physics.ground import F_UNIT, edge_factor
from checker.physics.validity import OutOfRange


@pytest.mark.parametrize(("r", "published"), [(0, 0.84), (5, 0.74), (10, 0.55), (15, 0.44), (20, 0.39), (30, 0.32), (40, 0.32)])
def test_heated_slab_fully_insulated(r: float, published: float) -> None:
    """Washington State Energy Code, WAC 51-11C-61061, Table A106.1, Btu/(h ft F); held beyond R-30."""
    assert edge_factor("full", r * R_UNIT, heated=True) / F_UNIT == pytest.approx(published)


@pytest.mark.parametrize("r", [1, 7.5, 12, 25])
def test_a_heated_slab_loses_more(r: float) -> None:
    assert edge_factor("full", r * R_UNIT, heated=True) > edge_factor("full", r * R_UNIT)


@pytest.mark.parametrize("place", ["vertical 2 ft", "vertical 4 ft", "horizontal 2 ft"])
def test_a_heated_slab_insulated_at_its_edge_only(place: str) -> None:
    with pytest.raises(OutOfRange, match="edge only"):
        edge_factor(place, 10 * R_UNIT, heated=True)
