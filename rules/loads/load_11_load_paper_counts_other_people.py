"""The load calculation counts other people or bedrooms than the house has.

Each person gives off heat and moisture, and the usual count is the bedrooms and one. A den that became a bedroom
changes the count, the ventilation rate and the latent load together.

Count the people again on the load calculation, or state in the design who will live there.
"""


from checker.case import Case, quantity
from checker.design.controls import LoadsPaper
from checker.quantities.airtightness import house_of
from checker.quantities.load_paper import design_people
from checker.quantities.stated_loads import loads_paper
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Count(Record):
    """A count on the load calculation."""

    path: str
    field: str
    paper: LoadsPaper


def counts(case: Case) -> list[Count]:
    """The counts that the load calculation states or leaves to be decided."""
    paper = loads_paper(case)
    return [
        Count(f"papers.loads.{field}", field, paper)
        for field in ("occupants", "bedrooms")
        if getattr(paper, field) is not None or f"papers.loads.{field}" in case.design.tbd
    ]


@quantity()
def stated(case: Case, count: Count) -> int:
    """The count on the load calculation."""
    return int(case.get(count.paper, count.field))


@quantity()
def own(case: Case, count: Count) -> int:
    """The count of the design."""
    return design_people(case, case.design) if count.field == "occupants" else int(case.get(house_of(case), "bedrooms"))


def check(count: Count, stated: int, own: int) -> Meets | Finding:
    """Equal, or the finding."""
    if stated == own:
        return Meets()
    what = "people" if count.field == "occupants" else "bedrooms"
    return Finding(
        "the load calculation counts {stated} {what}; by the design there are {own}",
        help="bring the load calculation or the design up to date, whichever is behind", numbers={"what": Num(what)},
    )


RULE = Rule(
    code="LOAD-11", name="load-paper-counts-other-people", severity="caution", since="0.1",
    over=counts, needs=(stated, own), cites=("paper-people",), check=check,
    nothing="the load calculation counts neither people nor bedrooms",
)  # fmt: skip
