"""The stated load of the house is far from what its envelope works out to.

The envelope in the file gives a load of its own, term by term in the worksheet. A stated load that is far from it
rests on other walls, windows, air or temperatures, or on a rule of thumb. Some coefficients here are from memory, so
the difference is a reason to look again, not a verdict.

Lay the worksheet beside the calculation and find the term that differs. Too large a load means an oversized unit.
"""


from checker.case import Case, quantity
from checker.design.fields import HeatRate
from checker.quantities.computed_loads import computed_cooling, computed_heating
from checker.quantities.stated_loads import loads_paper
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

WORDS = {"heating": "heating load", "cooling_sensible": "sensible cooling load"}


class Stated(Record):
    """A load of the house on the load calculation, in W."""

    path: str
    field: str
    watts: HeatRate


def stated(case: Case) -> list[Stated]:
    """The loads that the load calculation states of a house whose envelope the file holds."""
    if case.design.envelope is None:
        return []
    paper = loads_paper(case)
    known = {field: getattr(paper, field) for field in WORDS}
    return [Stated(f"papers.loads.{field}", field, float(watts)) for field, watts in known.items() if watts is not None]


@quantity("heat_rate")
def worked_out(case: Case, figure: Stated) -> float:
    """The same load by the envelope. Raises Missing, CannotJudge."""
    loads = computed_heating if figure.field == "heating" else computed_cooling
    return loads(case, case.design).house.watts


def check(figure: Stated, own: float, tolerance: float, trifle: float) -> Meets | Finding:
    """Apart by more than the tolerance of the larger, and by more than a trifle."""
    numbers = {"stated": Num(figure.watts, "heat_rate")}
    apart = abs(figure.watts - own)
    if apart <= max(trifle, tolerance * max(own, figure.watts) * (1 + 1e-9)):
        return Meets(numbers)
    return Finding(
        f"the load calculation states a {WORDS[figure.field]} of {{stated}}; the envelope works out to {{worked_out}}",
        help="lay the worksheet beside the load calculation, and correct the one that is wrong", numbers=numbers,
    )


RULE = Rule(
    code="LOAD-17", name="stated-house-load-off", severity="caution", since="0.1",
    over=stated, needs=(worked_out,), limits=("stated-load-tolerance", "load-difference-of-note"), check=check,
    nothing="no load of the house is stated beside an envelope",
)  # fmt: skip
