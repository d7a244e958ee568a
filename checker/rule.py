"""A rule and what it can answer."""

from collections.abc import Callable, Iterable, Mapping
from typing import TYPE_CHECKING, Any, Literal

from checker.record import Record

if TYPE_CHECKING:
    from checker.case import Case

Severity = Literal["correction", "caution", "note"]
OutcomeWord = Literal["meets", "finding", "needs-info", "cannot-judge", "not-applicable", "rule-failed"]
SEVERITIES: tuple[Severity, ...] = ("correction", "caution", "note")
AREAS = {
    "FILE": "The design file",
    "VENT": "Whole-house ventilation",
    "EXH": "Local exhaust and hoods",
    "PRES": "Make-up air and house pressure",
    "OPEN": "Outdoor openings",
    "DRY": "Clothes dryers",
    "DUCT": "Ducts",
    "FILT": "Filters",
    "LOAD": "Loads",
    "EQUIP": "Equipment",
    "REFR": "Refrigerant",
    "COND": "Condensate",
    "COMB": "Combustion air",
    "FLUE": "Flues",
    "GAS": "Fuel gas",
    "PLACE": "Placement",
    "HYDR": "Hydronics",
    "SPEC": "Special appliances",
    "CTRL": "Controls",
    "ENER": "Energy",
    "SEP": "Separation",
    "PAPER": "Papers",
}


class Num(Record):
    """A number for a message: SI value and dimension ("" for a plain number or a word)."""

    value: Any
    dimension: str = ""


class Meets(Record):
    """The requirement is met; `numbers` adds to those the engine already holds."""

    numbers: Mapping[str, Num] = {}


class Finding(Record):
    """What is wrong: the fact with {slots} for numbers, the field it is about, and a change that would help."""

    message: str
    at: str = ""
    help: str = ""
    numbers: Mapping[str, Num] = {}


class Rule(Record):
    """One rule: what it is about, what it reads, and the function that decides.

    over: case -> the nodes it judges, one outcome each.
    when: (case, node) -> bool; False means not applicable, for the reason in its docstring.
    needs: quantities, evaluated by the engine and handed to `check` in this order.
    limits: codebook keys whose limits follow the needs in the arguments of `check`.
    cites: codebook keys that only lend their section, where no limit is handed over.
    nothing: why the rule does not apply when `over` yields no node.
    """

    code: str
    name: str
    severity: Severity
    since: str
    over: "Callable[[Case], Iterable[Any]]"
    check: Callable[..., Meets | Finding]
    needs: tuple[Any, ...] = ()
    limits: tuple[str, ...] = ()
    cites: tuple[str, ...] = ()
    when: "Callable[[Case, Any], bool] | None" = None
    nothing: str = "the design has no such thing"
    answers: tuple[str, ...] = ()

    @property
    def area(self) -> str:
        """Area word of the code."""
        return self.code.partition("-")[0]


class Outcome(Record):
    """What one rule said about one place of a design."""

    rule: Rule
    outcome: OutcomeWord
    path: str
    message: str
    help: str = ""
    numbers: Mapping[str, Num] = {}
    missing: tuple[str, ...] = ()
    cites: str = ""
    accepted: str = ""
    number: int = 0
    place: tuple[int, int, int, int] = (0, 0, 0, 0)
