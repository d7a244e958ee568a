"""A static pressure budget on paper: every component with its drop, its share of the whole and where the drop comes from."""

from math import inf
from typing import TYPE_CHECKING

from checker.units import show

if TYPE_CHECKING:
    from checker.quantities.duct_ways import Share
    from checker.quantities.static_budget import Budget
    from checker.quantities.static_offer import Offer

SOURCES = (
    ("friction in ", "Darcy-Weisbach, Colebrook"),
    ("fittings of ", "loss coefficients"),
    ("filter ", "stated, by its power law"),
    ("outlet ", "stated, or the allowance"),
    ("grille of ", "the allowance"),
    ("its grille", "the allowance"),
    ("opening ", "orifice, free area"),
)


def pressure(value: float, system: str) -> str:
    """A pressure, or that nothing bounds it."""
    return "no bound" if value == inf else show(value, "pressure", system)


def source_of(name: str) -> str:
    """Where a component's drop comes from, by what it is called."""
    return next((source for start, source in SOURCES if name.startswith(start)), "stated")


def budget_lines(budget: "Budget", system: str) -> list[str]:
    """The lines of a budget in trade or metric units."""
    flow = show(budget.airflow, "airflow", system)
    low, high = pressure(budget.low, system), pressure(budget.high, system)
    lines = [f"{budget.name} at {flow}: needs {low} at best, {high} at worst; offers {offer_text(budget.offer, system)}"]
    if budget.shares == budget.open_shares:
        lines += rows_of(budget.shares, budget.low, system)
    else:
        lines += ["the way that takes most at best:", *rows_of(budget.shares, budget.low, system)]
        lines += ["the way that takes most at worst:", *rows_of(budget.open_shares, budget.low, system)]
    return lines


def rows_of(shares: "tuple[Share, ...]", whole: float, system: str) -> list[str]:
    """The components of one way: at best and at worst, share of the whole at best, source, what would tell."""
    rows = [("component", "at best", "at worst", "share", "source of the drop")]
    for share in shares:
        part = f"{100.0 * share.low / whole:.0f} %" if whole > 0.0 else ""
        rows.append((share.name, pressure(share.low, system), pressure(share.high, system), part, source_of(share.name)))
    widths = [max(len(row[place]) for row in rows) for place in range(len(rows[0]))]
    lines = []
    opens = ["", *(each.ask if each.high > each.low else "" for each in shares)]
    for row, ask in zip(rows, opens, strict=True):
        lines.append("  " + "  ".join(cell.ljust(wide) for cell, wide in zip(row, widths, strict=True)).rstrip())
        lines += [f"    open: {ask}"] if ask else []
    return lines


def offer_text(offer: "Offer", system: str) -> str:
    """What a mover offers, and on what that rests."""
    low = show(offer.low, "pressure", system)
    if offer.high == inf:
        return f"{low} or more, {offer.words}"
    if offer.high > offer.low:
        return f"{low} to {show(offer.high, 'pressure', system)}, {offer.words}"
    return f"{low}, {offer.words}"
