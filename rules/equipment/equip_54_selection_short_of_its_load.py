"""The equipment selection itself shows less capacity than the load that it states.

Load and capacity stand a few lines apart on one page. Where the capacity is less, the next size was left out, or the
figures of two pages were put together.

Choose the size that carries the load at the design conditions, or state the backup heat beside it.
"""


from checker.case import Case, quantity
from checker.design.selection_paper import SelectionPaper
from checker.quantities.selection_paper import selections
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

PAIRS = (("heating", "heating_load"), ("cooling_sensible", "cooling_sensible_load"))


class Pair(Record):
    """A capacity and a load of one selection."""

    path: str
    paper: SelectionPaper
    capacity: str
    load: str


def pairs(case: Case) -> list[Pair]:
    """The capacities and loads that a selection states together."""
    return [
        Pair(f"{paper.path}.{capacity}", paper, capacity, load)
        for paper in selections(case)
        for capacity, load in PAIRS
        if case.speaks_of(paper, capacity) and case.speaks_of(paper, load)
    ]


@quantity("heat_rate", "capacity, with the backup that the selection states for heating")
def capacity_on_paper(case: Case, pair: Pair) -> float:
    """Capacity at the design conditions."""
    backup = case.maybe(pair.paper, "backup") if pair.capacity == "heating" else None
    return float(case.get(pair.paper, pair.capacity)) + float(backup or 0.0)


@quantity("heat_rate")
def load_on_paper(case: Case, pair: Pair) -> float:
    """The load."""
    return float(case.get(pair.paper, pair.load))


def check(pair: Pair, capacity: float, load: float, share: float) -> Meets | Finding:
    """Compare the capacity with the load; of a sensible load a share is enough."""
    least = load if pair.capacity == "heating" else share * load
    numbers = {"name": Num(pair.paper.name), "short": Num(max(0.0, load - capacity), "heat_rate")}
    if capacity >= least * (1 - 1e-9):
        return Meets(numbers)
    what = "heating" if pair.capacity == "heating" else "sensible cooling"
    return Finding(
        f"the selection of {{name}} shows {{capacity_on_paper}} of {what} for a load of {{load_on_paper}}",
        help="choose a size with {short} more at the design conditions, or correct the page",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-54", name="selection-short-of-its-load", severity="caution", since="0.1",
    over=pairs, needs=(capacity_on_paper, load_on_paper), limits=("sensible-capacity",), check=check,
    nothing="no equipment selection states a capacity and its load", answers=("H14", "H28"),
)  # fmt: skip
