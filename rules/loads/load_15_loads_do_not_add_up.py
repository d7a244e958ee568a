"""The figures of the load calculation do not add up.

The total cooling load is its sensible and its latent part together, and the heating load of the house is that of
its rooms. Where they differ, a page of another revision is in the packet, or a room is counted twice.

Add the figures again, and correct the one that is wrong before equipment is chosen by it.
"""


from checker.case import Case, gather, quantity
from checker.design.controls import LoadsPaper
from checker.quantities.stated_loads import loads_paper, stated_room_heating, sum_over_rooms
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Sum(Record):
    """A total on the load calculation that has parts."""

    path: str
    total: str
    paper: LoadsPaper


def sums(case: Case) -> list[Sum]:
    """The totals whose parts the design or the papers state, wholly or in part."""
    paper = loads_paper(case)
    parts = (paper.cooling_sensible, paper.cooling_latent)
    found = []
    if paper.cooling_total is not None and parts != (None, None):
        found.append(Sum("papers.loads.cooling_total", "cooling_total", paper))
    if paper.heating is not None and any(room.heating_load for room in case.design.rooms.values()):
        found.append(Sum("papers.loads.heating", "heating", paper))
    return found


@quantity("heat_rate")
def parts_together(case: Case, sum_: Sum) -> float:
    """The parts added up. Raises Missing for a part that is not stated."""
    if sum_.total == "heating":
        return sum_over_rooms(case, stated_room_heating)
    paper = sum_.paper
    return sum(
        gather([lambda: float(case.get(paper, "cooling_sensible")), lambda: float(case.get(paper, "cooling_latent"))])
    )


def check(sum_: Sum, parts: float, rounding: float) -> Meets | Finding:
    """Apart by more than rounding."""
    total = float(getattr(sum_.paper, sum_.total))
    numbers = {"total": Num(total, "heat_rate")}
    if abs(total - parts) <= rounding * max(total, parts) * (1 + 1e-9):
        return Meets(numbers)
    what = "its rooms come" if sum_.total == "heating" else "its sensible and latent parts come"
    name = "heating load of the house" if sum_.total == "heating" else "total cooling load"
    return Finding(
        f"the load calculation has a {name} of {{total}}; {what} to {{parts_together}}",
        help="add the figures again, and correct the one that is wrong", numbers=numbers,
    )


RULE = Rule(
    code="LOAD-15", name="loads-do-not-add-up", severity="caution", since="0.1",
    over=sums, needs=(parts_together,), limits=("paper-sums",), check=check,
    nothing="the load calculation states no total beside its parts",
)  # fmt: skip
