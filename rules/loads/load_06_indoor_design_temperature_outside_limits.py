"""Loads are worked out for rooms warmer or cooler than the code has it.

The energy chapter bounds the indoor temperature of a load calculation: at most 72 F for heating, at least 75 F
for cooling. A sheet that assumes 78 F in winter or 70 F in summer makes the equipment larger than the code means.

Put the temperature of the calculation within the bounds. What the thermostat is set to later is another matter.
"""


from checker.case import Case, quantity
from checker.quantities.airtightness import house_of
from checker.quantities.stated_loads import loads_paper
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

FIELDS = {"winter": ("winter_indoor", "winter_temperature"), "summer": ("summer_indoor", "summer_temperature")}


class SetPoint(Record):
    """An indoor temperature that loads rest on: where it stands and of which season it is."""

    path: str
    season: str
    node: object
    field: str


def set_points(case: Case) -> list[SetPoint]:
    """Of the load calculation where it states them, else of the house."""
    found = []
    for season, (on_paper, of_house) in FIELDS.items():
        paper, indoor = loads_paper(case), house_of(case).indoor
        if getattr(paper, on_paper) is not None or f"papers.loads.{on_paper}" in case.design.tbd:
            found.append(SetPoint(f"papers.loads.{on_paper}", season, paper, on_paper))
        elif indoor is not None and (
            getattr(indoor, of_house) is not None or f"house.indoor.{of_house}" in case.design.tbd
        ):
            found.append(SetPoint(f"house.indoor.{of_house}", season, indoor, of_house))
    return found


@quantity("temperature")
def assumed(case: Case, point: SetPoint) -> float:
    """Temperature as stated."""
    return float(case.get(point.node, point.field))


def check(point: SetPoint, assumed: float, highest: float, lowest: float) -> Meets | Finding:
    """At most the one in winter, at least the other in summer."""
    limit = highest if point.season == "winter" else lowest
    numbers = {"bound": Num(limit, "temperature")}
    if (assumed <= limit + 1e-9) if point.season == "winter" else (assumed >= limit - 1e-9):
        return Meets(numbers)
    word, work = ("at most", "heating") if point.season == "winter" else ("at least", "cooling")
    return Finding(
        f"{work} loads are worked out for rooms at {{assumed}}; the code has {word} {{bound}}",
        help="work the loads out for {bound}", numbers=numbers,
    )


RULE = Rule(
    code="LOAD-06", name="indoor-design-temperature-outside-limits", severity="correction", since="0.1",
    over=set_points, needs=(assumed,), limits=("indoor-design-heating", "indoor-design-cooling"), check=check,
    answers=("H03",), nothing="no indoor design temperature is stated",
)  # fmt: skip
