"""The numbers of a static pressure budget, named for messages."""

from collections.abc import Mapping
from math import inf

from checker.quantities.duct_ways import Share
from checker.quantities.static_budget import Budget
from checker.rule import Num
from checker.sizes import Size, show_size


def budget_numbers(budget: Budget, size: Size | None = None, moved: float | None = None) -> Mapping[str, Num]:
    """Numbers of a budget: pressures in Pa, airflows in m3/s, and what takes most."""
    numbers = {
        "fan": Num(budget.name),
        "airflow": Num(budget.airflow, "airflow"),
        "needed": Num(budget.low, "pressure"),
        "offered": Num(budget.offer.high if budget.offer.high < inf else budget.offer.low, "pressure"),
        "excess": Num(max(budget.low - budget.offer.high, 0.0), "pressure"),
    }
    if budget.shares:
        numbers["largest"] = Num(budget.largest.name)
        numbers["largest_drop"] = Num(budget.largest.low, "pressure")
    if size is not None:
        numbers["size"] = Num(show_size(size))
    if moved is not None:
        numbers["moved"] = Num(moved, "airflow")
    return numbers


def help_for(size: Size | None, heavy: Share | None = None) -> str:
    """The change that would help most; `heavy` is a filter that takes too much by itself."""
    filter_first = "" if heavy is None else "fit a filter of less drop (more face, more depth or lower MERV), and "
    if size is not None:
        return f"{filter_first}make the duct {{size}} or larger, or give the fan {{excess}} more at this airflow"
    if heavy is not None:
        return f"{filter_first}take {{excess}} off in all, or choose a fan that offers it"
    return "start with {largest}, which takes {largest_drop}; {excess} must come off, or the fan must offer it"
