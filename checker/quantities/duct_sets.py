"""Ducts that are judged together, one answer for each system, and what is said of their joints."""

import re
from collections.abc import Callable, Iterable

from checker.case import Case, Missing, path_of
from checker.design.airway import Airway, Run
from checker.design.ducts import DuctSystem
from checker.design.fields import fold
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_scope import one_line_ducts, systems
from checker.record import Record

METALS = ("galvanized steel", "stainless steel", "aluminum", "copper", "unknown metal", "lined steel")
STEELS = ("galvanized steel", "stainless steel", "lined steel")
NONE_WORDS = frozenset({"none", "no", "not sealed", "unsealed", "n/a", "na", "nothing", "false"})
NUMBERS = {word: place for place, word in enumerate(["zero", "one", "two", "three", "four", "five", "six", "seven", "eight"])}
FASTENERS = re.compile(r"(\d+|" + "|".join(NUMBERS) + r")\s+(?:[\w-]+\s+){0,3}?(?:screw|rivet)")


class DuctSet(Record):
    """The runs of a system, or the one duct of a fan."""

    path: str
    name: str
    ducts: tuple[Airway, ...]
    system: DuctSystem | None


def duct_sets(case: Case) -> list[DuctSet]:
    """Systems with runs, and ducts given in one line under supply and recovery fans."""
    found = [DuctSet(each.path, each.name, tuple(each.runs.values()), each) for each in systems(case) if each.runs]
    return found + [DuctSet(duct.path, duct_label(duct), (duct,), None) for duct in one_line_ducts(case)]


def flawed(ducts: Iterable[Airway], flaw: Callable[[Airway], bool]) -> tuple[Airway, ...]:
    """The ducts that have a flaw."""
    return tuple(duct for duct in ducts if flaw(duct))


def answered(case: Case, ducts: Iterable[Airway], field: str, bad: tuple[Airway, ...]) -> None:
    """Raise Missing for the ducts that leave a field open, unless some are surely wrong already."""
    absent = [path_of(duct, field) for duct in ducts if getattr(duct, field) is None]
    if absent and not bad:
        raise Missing(*absent)


def listed(ducts: Iterable[Airway]) -> str:
    """Names of ducts for a message, the first four of them."""
    names = [duct_label(duct) for duct in ducts]
    return ", ".join(names[:4]) + (f" and {len(names) - 4} more" if len(names) > 4 else "")


def below(of: DuctSet, duct: Airway, field: str) -> str:
    """Where a field of a duct stands, seen from its set."""
    return f"runs.{duct.name}.{field}" if isinstance(duct, Run) and of.system is not None else field


def says_none(text: str | None) -> bool:
    """Whether a text says that there is nothing of the kind."""
    return text is not None and fold(text) in NONE_WORDS


def fasteners(text: str) -> int | None:
    """How many screws or rivets a text gives a joint: `three screws`, `3 sheet-metal screws`; None if it does not say."""
    folded = fold(text)
    if folded in NONE_WORDS or folded in ("tape", "tape only", "mastic only", "unfastened"):
        return 0
    found = FASTENERS.search(folded)
    if found is None:
        return None
    return NUMBERS.get(found[1], int(found[1]) if found[1].isdigit() else 0)
