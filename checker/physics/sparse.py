"""Sparse symmetric positive definite systems, solved by elimination in a fill-saving order.

The order is worked out once for a pattern and used for many right-hand sides and values. A tree has no fill:
leaves go first and the work is proportional to its size. Source: minimum-degree elimination, any text on
sparse matrices.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from heapq import heapify, heappop, heappush

from checker.physics.validity import NoSolution


class SymmetricPattern:
    """Which off-diagonal places of a symmetric matrix are filled, and the order to eliminate them in.

    `pairs` are the distinct places (row, column) above or below the diagonal.
    """

    __slots__ = ("_places", "_steps", "size")

    def __init__(self, size: int, pairs: Sequence[tuple[int, int]]) -> None:
        self.size = size
        neighbors: list[set[int]] = [set() for _ in range(size)]
        places: dict[tuple[int, int], int] = {}
        for number, (row, column) in enumerate(pairs):
            neighbors[row].add(column)
            neighbors[column].add(row)
            places[_ordered(row, column)] = number
        self._steps = _elimination(neighbors, places)
        self._places = len(places)

    def solve(
        self, diagonal: Sequence[float], off_diagonal: Sequence[float], right: Sequence[float]
    ) -> list[float]:
        """Solution of the system with these values; `off_diagonal` follows the pairs of the pattern.

        NoSolution when the matrix is not positive definite.
        """
        pivot = list(diagonal)
        answer = list(right)
        value = list(off_diagonal) + [0.0] * (self._places - len(off_diagonal))
        for row, others, updates in self._steps:
            over = pivot[row]
            if not over > 0.0:
                raise NoSolution("sparse elimination", "the matrix is not positive definite")
            known = answer[row]
            for column, place in others:
                share = value[place] / over
                pivot[column] -= share * value[place]
                answer[column] -= share * known
            for first, second, target in updates:
                value[target] -= value[first] * value[second] / over
        for row, others, _ in reversed(self._steps):
            rest = answer[row]
            for column, place in others:
                rest -= value[place] * answer[column]
            answer[row] = rest / pivot[row]
        return answer


@lru_cache(maxsize=8)
def pattern_of(size: int, pairs: tuple[tuple[int, int], ...]) -> SymmetricPattern:
    """The pattern, worked out once for networks that differ in nothing but their values."""
    return SymmetricPattern(size, pairs)


_Step = tuple[int, list[tuple[int, int]], list[tuple[int, int, int]]]


def _elimination(neighbors: list[set[int]], places: dict[tuple[int, int], int]) -> list[_Step]:
    queue = [(len(around), row) for row, around in enumerate(neighbors)]
    heapify(queue)
    gone = [False] * len(neighbors)
    steps: list[_Step] = []
    while queue:
        degree, row = heappop(queue)
        if gone[row] or degree != len(neighbors[row]):
            continue
        gone[row] = True
        around = sorted(neighbors[row])
        updates: list[tuple[int, int, int]] = []
        for index, column in enumerate(around):
            own = places[_ordered(row, column)]
            for later in around[index + 1 :]:
                target = places.setdefault(_ordered(column, later), len(places))
                updates.append((own, places[_ordered(row, later)], target))
            near = neighbors[column]
            near.update(around)
            near.discard(column)
            near.discard(row)
            heappush(queue, (len(near), column))
        steps.append((row, [(column, places[_ordered(row, column)]) for column in around], updates))
    return steps


def _ordered(row: int, column: int) -> tuple[int, int]:
    return (row, column) if row < column else (column, row)
