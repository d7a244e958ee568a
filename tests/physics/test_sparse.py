"""Sparse elimination against a dense solver."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from checker.physics.sparse import SymmetricPattern
from checker.physics.validity import NoSolution


@given(st.integers(1, 12), st.data())
def test_grounded_networks_against_numpy(size: int, data: st.DataObject) -> None:
    every = [(i, j) for i in range(size) for j in range(i + 1, size)]
    pairs = data.draw(st.lists(st.sampled_from(every), unique=True)) if every else []
    links = [data.draw(st.floats(0.1, 10.0)) for _ in pairs]
    ground = [data.draw(st.floats(0.1, 1.0)) for _ in range(size)]
    right = [data.draw(st.floats(-5.0, 5.0)) for _ in range(size)]
    matrix = np.diag(ground)
    for (i, j), link in zip(pairs, links, strict=True):
        matrix[i, i] += link
        matrix[j, j] += link
        matrix[i, j] -= link
        matrix[j, i] -= link
    answer = SymmetricPattern(size, pairs).solve(list(np.diag(matrix)), [-link for link in links], right)
    assert answer == pytest.approx(list(np.linalg.solve(matrix, right)), rel=1e-9, abs=1e-9)


def test_a_pattern_is_used_again() -> None:
    pattern = SymmetricPattern(3, [(0, 1), (1, 2), (0, 2)])
    for scale in (1.0, 2.0):
        answer = pattern.solve([3.0 * scale] * 3, [-scale] * 3, [1.0, 1.0, 1.0])
        assert answer == pytest.approx([1.0 / scale] * 3)


def test_singular_matrix_is_refused() -> None:
    with pytest.raises(NoSolution, match="positive definite"):
        SymmetricPattern(2, [(0, 1)]).solve([1.0, 1.0], [-1.0], [1.0, -1.0])
