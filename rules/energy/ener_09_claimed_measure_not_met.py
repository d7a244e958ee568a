"""The design falls short of an efficiency measure that its energy papers claim.

Since 2021 the prescriptive path asks for an additional package, since 2024 for credits from measures. Each has its
own figures, higher than the minimum: a furnace and cooling of higher rating, a heat pump that keeps its capacity in
the cold, ducts all inside or no ducts at all, recovery with 75 % and little power.

Raise what falls short, or claim another measure on the papers.
"""


from checker.case import CannotJudge, Case, NotApplicable, quantity
from checker.quantities.energy import energy_paper
from checker.quantities.energy_measures import Short, shortfalls
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Claim(Record):
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
    if claim.name == "demand response":
        raise NotApplicable("what a demand responsive thermostat must do, another rule looks at")
    wanted = case.limit("energy-measures").get(claim.name)
    if wanted is None:
        raise CannotJudge(f"the figures of the measure `{claim.name}` are not held for this edition")
    return shortfalls(case, claim.name, wanted)


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
