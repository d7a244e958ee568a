"""The design falls short of an efficiency measure that its energy papers claim.

Since 2021 the prescriptive path asks for an additional package, since 2024 for credits from measures. Each has its
own figures, higher than the minimum: a furnace and cooling of higher rating, a heat pump that keeps its capacity in
the cold, ducts all inside, recovery with 75 % and little power.

Raise what falls short, or claim another measure on the papers.
"""

from typing import NamedTuple

from checker.case import CannotJudge, Case, quantity
from checker.quantities.climate import zone_number
from checker.quantities.energy import energy_paper
from checker.quantities.energy_measures import Short, shortfalls
from checker.rule import Finding, Meets, Num, Rule


class Claim(NamedTuple):
    """A measure that the papers claim."""

    path: str
    name: str


def claims(case: Case) -> list[Claim]:
    """Every measure that is claimed."""
    return [
        Claim(f"papers.energy.measures[{place}]", name) for place, name in enumerate(energy_paper(case).measures)
    ]


@quantity()
def short_of(case: Case, claim: Claim) -> list[Short]:
    """What the design lacks. CannotJudge for a measure whose figures are not held here."""
    wanted = case.limit("energy-measures").get(claim.name)
    if wanted is None:
        raise CannotJudge(f"the figures of the measure `{claim.name}` are not held for this edition")
    lacking = shortfalls(case, claim.name, wanted)
    if lacking and "from_zone" in wanted and zone_number(case, case.design) < int(wanted["from_zone"]):
        raise CannotJudge(f"in this climate zone other figures of the measure `{claim.name}` may do, which are not held")
    return lacking


def check(claim: Claim, lacking: list[Short]) -> Meets | Finding:
    """The first shortfall is the finding."""
    if not lacking:
        return Meets()
    first = lacking[0]
    numbers = {
        "measure": Num(claim.name),
        "thing": Num(first.thing),
        "figure": Num(first.figure),
        "is_": first.is_,
        "wanted": first.wanted,
        "more": Num(len(lacking) - 1),
    }
    more = ", and {more} more" if len(lacking) > 1 else ""
    return Finding(
        f"the papers claim the measure `{{measure}}`; {{thing}} has {{figure}} at {{is_}} where {{wanted}} is asked{more}",
        help="raise it to {wanted}, or claim another measure",
        numbers=numbers,
    )


RULE = Rule(
    code="ENER-09", name="claimed-measure-not-met", severity="correction", since="0.1",
    over=claims, needs=(short_of,), cites=("energy-measures",), check=check,
    nothing="the papers claim no efficiency measure", answers=("R14", "R15", "R17", "R18"),
)  # fmt: skip
