"""Refusals of impossible numbers, worded alike in every formula."""

from math import inf, isfinite


def require_finite(**values: float) -> None:
    """ValueError naming the first argument that is not a finite number."""
    for name, value in values.items():
        if not isfinite(value):
            raise ValueError(f"{_spoken(name)} must be a finite number, got {value}")


def require_positive(**values: float) -> None:
    """ValueError naming the first argument that is not finite and above zero."""
    for name, value in values.items():
        if not 0.0 < value < inf:
            require_finite(**values)
            raise ValueError(f"{_spoken(name)} must be positive, got {value:g}")


def require_not_negative(**values: float) -> None:
    """ValueError naming the first argument that is not finite and zero or above."""
    for name, value in values.items():
        if not 0.0 <= value < inf:
            require_finite(**values)
            raise ValueError(f"{_spoken(name)} must not be negative, got {value:g}")


def require_fraction(**values: float) -> None:
    """ValueError naming the first argument outside 0 to 1."""
    for name, value in values.items():
        if not 0.0 <= value <= 1.0:
            require_finite(**values)
            raise ValueError(f"{_spoken(name)} must lie between 0 and 1, got {value:g}")


def _spoken(name: str) -> str:
    return name.replace("_", " ")
