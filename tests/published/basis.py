"""On what the limits of the codebook and the constants of the formulas rest, counted."""

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from importlib import import_module
from typing import Any

from checker.codebook_source import BASES, read_entries
from checker.physics.basis import BASIS

WEAK = ("common practice", "from memory")
WORDS = (*BASES, "physics", "method")
Table = Callable[[Sequence[str], Sequence[Sequence[str]]], list[str]]


def codebook_counts() -> dict[str, Counter[str]]:
    """Entries of the codebook with a limit and without, by basis."""
    counts = {"with a limit": Counter[str](), "without a limit": Counter[str]()}
    for entry in read_entries().values():
        counts["with a limit" if entry.of else "without a limit"][entry.basis] += 1
    return counts


def values_in(constant: Any) -> list[Any]:
    """The numbers of a constant, however it holds them."""
    if isinstance(constant, bool | str) or constant is None:
        return []
    if isinstance(constant, int | float):
        return [constant]
    if isinstance(constant, Mapping):
        return [value for each in constant.values() for value in values_in(each)]
    return [value for each in constant for value in values_in(each)] if isinstance(constant, tuple | list) else []


def constant_of(key: str) -> Any:
    """The constant or function of a key `module.NAME`."""
    module, _, name = key.partition(".")
    return getattr(import_module(f"checker.physics.{module}"), name)


def basis_of(text: str) -> tuple[str, str]:
    """Basis and source of an entry."""
    basis, _, source = text.partition(": ")
    return basis, source


def own_basis(source: str) -> str:
    """Basis of an entry that names its own source."""
    return next((word for word in WEAK if word in source), "standard" if "SMACNA" in source else "guideline")


def physics_counts() -> Counter[str]:
    """Numbers in the formulas by basis; a function that holds coefficients counts as one."""
    counts: Counter[str] = Counter()
    for key, text in BASIS.items():
        constant = constant_of(key)
        if text == "each":
            counts.update(own_basis(each.source) for each in constant.values())
        else:
            counts[basis_of(text)[0]] += 1 if callable(constant) else len(values_in(constant))
    return counts


def share_row(name: str, counts: Counter[str], words: Sequence[str]) -> list[str]:
    """Counts with their shares."""
    total = sum(counts.values())
    return [name, str(total), *(f"{counts[word]} ({counts[word] / total:.0%})" for word in words)]


def basis_tables(table: Table) -> list[str]:
    """Codebook and formulas by basis; what rests on no published source, one by one."""
    codebook = codebook_counts()
    every = sum(codebook.values(), Counter[str]())
    rows = [share_row(f"requirements {name}", counts, BASES) for name, counts in codebook.items()]
    lines = ["Requirements of the codebook (`rules/codebook`), by basis:", ""]
    lines += table(("", "in all", *BASES), [*rows, share_row("requirements", every, BASES)])
    lines += [
        "Numbers in the formulas (`checker/physics`), by basis; *physics* is a constant of nature or a definition, *method* "
        "a range of validity or a numerical setting:", "",
    ]  # fmt: skip
    lines += table(("", "in all", *WORDS), [share_row("numbers", physics_counts(), WORDS)])
    weak = [(key, *basis_of(text)) for key, text in BASIS.items() if basis_of(text)[0] in WEAK]
    weak += [
        (key, own_basis(each.source), name)
        for key, text in BASIS.items() if text == "each"
        for name, each in constant_of(key).items() if own_basis(each.source) in WEAK
    ]  # fmt: skip
    lines += ["Of these, resting on common practice or on memory:", ""]
    return lines + table(("constant", "basis", "what"), [(f"`{key}`", basis, source) for key, basis, source in weak])
