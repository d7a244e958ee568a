"""Reads the register of published values: what a book prints, and how one of our functions is asked for the same.

An entry names the function `by` its dotted name and its arguments `with` values or further calls; `columns` and `rows`
repeat it over a table, `across`, `down` and `table` over one with two ways in. README.md of this folder has the result.
"""

from collections.abc import Callable, Iterator, Mapping
from functools import reduce
from importlib import import_module
from math import isclose
from operator import mul
from pathlib import Path
from typing import Any, NamedTuple

from ruamel.yaml import YAML

from checker.codebook import Codebook
from checker.units import parse
from tests.published.prints import Printed, looks_printed, printed

FOLDER = Path(__file__).parent
READ = ("inputs and result", "inputs", "equation", "recalled")
PLACES = {"checker.physics.": 3, "checker.quantities.": 3, "checker.sizes.": 2}
KEYS = {
    "what", "source", "read", "by", "with", "then", "sum", "difference", "product", "quotient", "limit", "edition",
    "columns", "units", "rows", "across", "down", "table", "published", "within", "misprint", "off_by", "why", "held",
}  # fmt: skip


class Check(NamedTuple):
    """One published value beside ours, both SI; `allowed` is how far they may be apart."""

    subject: str
    what: str
    row: str
    source: str
    read: str
    held: bool
    published: Printed
    as_printed: str
    functions: tuple[str, ...]
    ours: Callable[[], float]
    within: str
    allowed: float
    misprint: Printed | None
    off_by: float
    why: str

    @property
    def name(self) -> str:
        """Subject, entry and row."""
        return f"{self.subject}: {self.what}{f' ({self.row})' if self.row else ''}"


def registers() -> list[Path]:
    """The data files, by name."""
    return sorted(FOLDER.glob("*.yaml"))


def checks(file: Path) -> list[Check]:
    """Every value of a file."""
    data = YAML(typ="safe", pure=True).load(file.read_text(encoding="utf-8"))
    return [check for entry in data["entries"] for check in of_entry(str(data["subject"]), entry)]


def of_entry(subject: str, entry: Mapping[str, Any]) -> Iterator[Check]:
    """The values of an entry, one for each row."""
    unknown = set(entry) - KEYS
    if unknown or entry["read"] not in READ:
        raise ValueError(f"{entry['what']}: unknown {unknown or entry['read']}")
    for row in rows_of(entry):
        of = {**entry, **{key: row[key] for key in ("published", "within") if key in row}}
        target = printed(of["published"])
        misprint = printed(entry["misprint"]) if "misprint" in entry else None
        label = ", ".join(str(value) for key, value in row.items() if key not in ("published", "within"))
        yield Check(
            subject, entry["what"], label, entry["source"], entry["read"], bool(entry.get("held")), target,
            str(of["published"]), tuple(asked(entry)), lambda entry=entry, row=row: float(ours(entry, row)), str(of["within"]),
            allowance(of["within"], target), misprint, amount(entry["off_by"]) if misprint else 0.0, entry.get("why", ""),
        )  # fmt: skip


def rows_of(entry: Mapping[str, Any]) -> list[dict[str, Any]]:
    """Values by column for each row; one empty row for an entry without a table."""
    units = entry.get("units", {})
    if "table" in entry:
        ((across, heads),) = entry["across"].items()
        found = [
            {entry["down"]: down, across: head, "published": cell}
            for down, cells in entry["table"].items()
            for head, cell in zip(heads, cells, strict=True)
            if cell is not None
        ]
    else:
        found = [dict(zip(entry["columns"], row, strict=True)) for row in entry["rows"]] if "rows" in entry else [{}]
    return [{key: with_unit(value, units.get(key, "")) for key, value in row.items()} for row in found]


def with_unit(value: Any, unit: str) -> Any:
    """A bare number with the unit of its column; no limit stays as it is."""
    return f"{value} {unit}" if unit and isinstance(value, int | float) and abs(value) != float("inf") else value


def asked(expression: Any) -> Iterator[str]:
    """Dotted names of all that an expression calls."""
    if isinstance(expression, dict):
        if "by" in expression:
            yield expression["by"]
        expression = list(expression.values())
    if isinstance(expression, list):
        for each in expression:
            yield from asked(each)


def ours(entry: Mapping[str, Any], row: Mapping[str, Any]) -> Any:
    """What our function says of a row."""
    expression = {key: entry[key] for key in KEYS & set(entry) - {"what", "source"}}
    arguments = entry.get("with")
    if "by" in entry and not isinstance(arguments, list):
        direct = {key: f"${key}" for key in row if key not in ("published", "within") and not mentioned(key, entry)}
        expression["with"] = {**direct, **(arguments or {})}
    return value_of(expression, row)


def mentioned(key: str, entry: Mapping[str, Any]) -> bool:
    """Whether a column is put in by `$name` somewhere; else it is the argument of its own name."""
    return f"${key}" in repr(entry)


def value_of(expression: Any, row: Mapping[str, Any]) -> Any:
    """The value of an expression: a number with a unit, a word, a column, a call or a sum of such."""
    if isinstance(expression, str):
        if expression.startswith("$"):
            return value_of(row[expression[1:]], {})
        return printed(expression).value if looks_printed(expression) else expression
    if isinstance(expression, list):
        return [value_of(each, row) for each in expression]
    if not isinstance(expression, dict):
        return expression
    for word, way in WAYS.items():
        if word in expression:
            return way(expression, row)
    return {value_of(key, row): value_of(each, row) for key, each in expression.items()}


def called(expression: Mapping[str, Any], row: Mapping[str, Any]) -> Any:
    """What a function, a class or a constant of ours gives; `then` walks into it by attribute, key or place."""
    target = named(expression["by"])
    given = expression.get("with")
    arguments = {key: value_of(each, row) for key, each in given.items()} if isinstance(given, dict) else value_of(given, row)
    if callable(target):
        target = target(*arguments) if isinstance(arguments, list) else target(**(arguments or {}))
    for step in expression.get("then", []):
        step = value_of(step, row) if isinstance(step, str) and step.startswith("$") else step
        target = getattr(target, step) if isinstance(step, str) and hasattr(target, step) else target[step]
        target = target() if callable(target) else target
    return target


def named(dotted: str) -> Any:
    """The thing of a dotted name, in a module or in a class of it."""
    parts = dotted.split(".")
    depth = next((depth for start, depth in PLACES.items() if dotted.startswith(start)), 0)
    if not depth:
        raise ValueError(f"{dotted} is none of ours")
    return reduce(getattr, parts[depth:], import_module(".".join(parts[:depth])))


def limit_of(expression: Mapping[str, Any], row: Mapping[str, Any]) -> Any:
    """A limit of the codebook."""
    edition = str(value_of(expression["edition"], row))
    book = Codebook(edition, None) if edition.startswith("irc") else Codebook(None, edition)
    target = book.limit(value_of(expression["limit"], row))
    for step in expression.get("then", []):
        target = target[value_of(step, row) if isinstance(step, str) else step]
    if isinstance(target, str) and target.startswith("U-"):
        return parse(target, "u_value")
    return printed(target).value if isinstance(target, str) else target


def several(word: str) -> Callable[[Mapping[str, Any], Mapping[str, Any]], Any]:
    """An operation over the values of a list."""
    return lambda expression, row: OPERATIONS[word]([value_of(each, row) for each in expression[word]])


OPERATIONS: dict[str, Callable[[list[Any]], Any]] = {
    "sum": sum,
    "difference": lambda values: values[0] - sum(values[1:]),
    "product": lambda values: reduce(mul, values),
    "quotient": lambda values: reduce(lambda one, other: one / other, values),
}
WAYS: dict[str, Callable[[Mapping[str, Any], Mapping[str, Any]], Any]] = {
    "by": called, "limit": limit_of, **{word: several(word) for word in OPERATIONS},
}  # fmt: skip


def amount(text: object) -> float:
    """A difference with its unit, SI: a temperature's zero does not count."""
    found = printed(text)
    return found.value - found.offset


def allowance(within: object, target: Printed) -> float:
    """How far ours may be from the print, SI: `0.5 %` of it, an amount with a unit, or `exact`."""
    if within == "exact":
        return 1e-9 * abs(target.value) if abs(target.value) != float("inf") else 0.0
    if isinstance(within, str) and within.endswith(" %"):
        return float(within[:-2]) / 100.0 * abs(target.value)
    return amount(within)


def agrees(check: Check, value: float) -> bool:
    """Whether ours is within the allowance."""
    return value == check.published.value or isclose(
        value, check.published.value, rel_tol=1e-12, abs_tol=check.allowed * (1 + 1e-9)
    )
