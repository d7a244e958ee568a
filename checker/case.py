"""A case: one design under one codebook, with everything worked out from it, once."""

from collections.abc import Callable, Sequence
from typing import Any, Generic, TypeVar

from checker.answers import CannotJudge as CannotJudge
from checker.answers import Missing as Missing
from checker.answers import NotApplicable as NotApplicable
from checker.codebook import Codebook
from checker.design import Design
from checker.design.fields import Node, Quantity
from checker.design.shape import fields_of
from checker.record import Record

N = TypeVar("N")
T = TypeVar("T")
GIVEN = "given in the design"


class RingError(Exception):
    """Quantities that ask for each other: a fault of ours."""


class Read(Record):
    """A value that a quantity or rule took, for the worksheet."""

    label: str
    value: Any
    dimension: str
    path: str
    optional: bool = False


class Evaluation:
    """How one quantity came out at one place."""

    __slots__ = ("asked", "path", "problem", "quantity", "reads", "result")

    def __init__(self, quantity: "Worked[Any, Any]", path: str) -> None:
        self.quantity = quantity
        self.path = path
        self.reads: list[Read] = []
        self.asked: list[Evaluation] = []
        self.result: Any = None
        self.problem = ""


class Worked(Generic[N, T]):
    """A quantity: a function of (case, node), worked out once per place, absence included."""

    __slots__ = ("dimension", "formula", "function", "name", "source")

    def __init__(self, function: Callable[["Case", N], T], dimension: str, formula: str, source: str) -> None:
        self.function = function
        self.name = function.__name__
        self.dimension = dimension
        self.formula = formula
        self.source = source

    def __call__(self, case: "Case", node: N) -> T:
        """The value at a node. Raises Missing, CannotJudge or NotApplicable, the same each time."""
        value: T = case.worked(self, node)
        return value


def quantity(
    dimension: str = "", formula: str = "", source: str = ""
) -> Callable[[Callable[["Case", N], T]], Worked[N, T]]:
    """Make a function of (case, node) a quantity; dimension is "" for records, words and truth values."""

    def wrap(function: Callable[["Case", N], T]) -> Worked[N, T]:
        return Worked(function, dimension, formula, source)

    return wrap


def given(field: str, name: str = "") -> Worked[Any, Any]:
    """A quantity that is a field of the node, by attribute; `door.undercut` reaches below."""
    parts = field.split(".")

    def read(case: "Case", node: Any) -> Any:
        for part in parts[:-1]:
            below = getattr(node, part)
            if below is None:
                raise Missing(
                    f"{node.path}.{'.'.join(each.rstrip('_') for each in parts[parts.index(part) :])}"
                )
            node = below
        return case.get(node, parts[-1])

    read.__name__ = name or parts[-1].rstrip("_")
    return Worked(read, "", field, GIVEN)


class Case:
    """One design under one codebook."""

    def __init__(self, design: Design, codebook: Codebook, tracing: bool = False) -> None:
        self.design = design
        self.codebook = codebook
        self.tracing = tracing
        self.known: dict[tuple[Any, str], Any] = {}
        self.under_way: set[tuple[Any, str]] = set()
        self.evaluations: dict[tuple[Any, str], Evaluation] = {}
        self.stack: list[Evaluation] = []

    def worked(self, asked: Worked[Any, T], node: Any) -> T:
        """The value of a quantity at a node, from memory if it was asked before."""
        key = (asked, node.path)
        if self.tracing:
            self.note_asked(asked, key)
        if key in self.known:
            value = self.known[key]
            if isinstance(value, Exception):
                raise value.with_traceback(None)
            return value  # type: ignore[no-any-return]
        if key in self.under_way:
            raise RingError(f"{asked.name} at {node.path or 'the design'} asks for itself")
        self.under_way.add(key)
        if self.tracing:
            self.stack.append(self.evaluations[key])
        try:
            value = asked.function(self, node)
            self.known[key] = value
            if self.tracing:
                self.stack[-1].result = value
            return value
        except (Missing, CannotJudge, NotApplicable) as problem:
            self.known[key] = problem
            if self.tracing:
                self.stack[-1].problem = str(problem)
            raise
        finally:
            self.under_way.discard(key)
            if self.tracing:
                self.stack.pop()

    def note_asked(self, asked: Worked[Any, Any], key: tuple[Any, str]) -> None:
        """Keep who asked whom, for the worksheet."""
        evaluation = self.evaluations.setdefault(key, Evaluation(asked, key[1]))
        if self.stack and evaluation not in self.stack[-1].asked:
            self.stack[-1].asked.append(evaluation)

    def get(self, node: Any, field: str) -> Any:
        """A field of a node; None only where the file says `none`. Raises Missing with its path."""
        value = getattr(node, field)
        path = path_of(node, field)
        if (value is None or (value in ({}, []))) and path not in self.design.stated_none:
            raise Missing(path)
        return self.took(node, field, path, value)

    def all(self, node: Any, *fields: str) -> tuple[Any, ...]:
        """Several fields of a node; Missing names every absent one."""
        absent = [
            path_of(node, field)
            for field in fields
            if getattr(node, field) is None and path_of(node, field) not in self.design.stated_none
        ]
        if absent:
            raise Missing(*absent)
        return tuple(self.get(node, field) for field in fields)

    def maybe(self, node: Any, field: str) -> Any:
        """A field that may be absent (None then). Raises Missing where the file says it is to be decided."""
        value = getattr(node, field)
        path = path_of(node, field)
        if value is None and path in self.design.tbd:
            raise Missing(path)
        return self.took(node, field, path, value, optional=True)

    def speaks_of(self, node: Any, field: str) -> bool:
        """Whether the file says anything of a field, be it `none` or `tbd`."""
        path = path_of(node, field)
        return getattr(node, field) not in (None, {}, []) or path in self.design.stated_none | self.design.tbd

    def stated(self, section: str) -> bool:
        """Whether a section is in the file at all, be it `none`."""
        return section in self.design.stated_none or bool(getattr(self.design, section))

    def took(self, node: Any, field: str, path: str, value: Any, optional: bool = False) -> Any:
        """Note a read for the worksheet and hand the value on."""
        if self.tracing and self.stack:
            self.stack[-1].reads.append(
                Read(field.rstrip("_"), value, dimension_of(node, field), path, optional)
            )
        return value

    def limit(self, key: str) -> Any:
        """A limit of the codebook for the design's edition. Raises Missing (no edition) or NotApplicable."""
        value = self.codebook.limit(key)
        if self.tracing and self.stack:
            entry = self.codebook.entry(key)
            cited = f"codebook: {self.codebook.cite(key)}"
            self.stack[-1].reads.append(Read(key, value, entry.of, cited, True))
        return value


ROUTES: list[Callable[[], Any]] = []  # routes under way: what they read, another route may replace


def either(*routes: Callable[[], T]) -> T:
    """The first route that gives a value; else Missing with the shortest list, else the last problem."""
    missing: list[Missing] = []
    problem: Exception | None = None
    for route in routes:
        ROUTES.append(route)
        try:
            return route()
        except Missing as gap:
            missing.append(gap)
        except (CannotJudge, NotApplicable) as fault:
            problem = fault
        finally:
            ROUTES.pop()
    if missing:
        raise min(missing, key=lambda gap: len(gap.paths))
    assert problem is not None
    raise problem


def gather(routes: Sequence[Callable[[], T]]) -> list[T]:
    """Every value, or Missing with all that any of them lacks."""
    values: list[T] = []
    absent: list[str] = []
    for route in routes:
        try:
            values.append(route())
        except Missing as gap:
            absent.extend(gap.paths)
    if absent:
        raise Missing(*absent)
    return values


def path_of(node: Any, field: str) -> str:
    """Path of a node's field in the file."""
    key = field.rstrip("_")
    return f"{node.path}.{key}" if node.path else key


def dimension_of(node: Any, field: str) -> str:
    """Dimension of a field ("" if it has none)."""
    if not isinstance(node, Node):
        return ""
    known = fields_of(type(node)).get(field.rstrip("_"))
    if known is None or known.shape.kind is None:
        return ""
    kind = known.shape.kind
    return kind.dimension if isinstance(kind, Quantity) else type(kind).__name__
