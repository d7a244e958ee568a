"""The energy papers claim fewer measures, or fewer credits, than the prescriptive path asks for.

Since 2021 the prescriptive path takes more than the minimum: one additional package, and since 2024 two measures that
together earn ten credits, fifteen for a house of more than 5,000 ft2 above grade. Credits depend on the climate zone;
here each measure counts with the most that any of its options can earn, so that a sum below ten cannot do.

Claim another measure that the design meets anyway, often ducts all inside or none, recovery in a tight house, or a
good heat pump; then see that the design meets its figures.
"""

from typing import Any

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.energy_paper import EnergyPaper
from checker.quantities.climate import zone
from checker.quantities.energy import energy_paper
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule
from checker.units import parse

MARINE_FOUR = 4
PLAIN = {"0": 0, "1": 0, "2": 1, "3": 2, "4": 3, "5": 5, "6": 6, "7": 7, "8": 8}
"""Place of a zone among the columns; that of marine 4 follows the one of 4."""


class Credits(Record):
    """Measures claimed and asked for; the most credits they can earn, and those asked for (0 where none are)."""

    measures: int
    wanted: int
    most: int
    asked: int


def papers(case: Case) -> list[EnergyPaper]:
    """The energy papers, where the design has any."""
    return [energy_paper(case)] if case.design.papers is not None and case.design.papers.energy is not None else []


def by_prescription(case: Case, paper: EnergyPaper) -> bool:
    """The energy code is met by another path than the prescriptive one."""
    return str(case.get(paper, "code_path")) == "prescriptive"


def column(case: Case, node: EnergyPaper) -> int:
    """Column of the climate zone in the table of credits."""
    word = zone(case, node)
    return MARINE_FOUR if word == "4C" else PLAIN[word[0]]


def asked_credits(case: Case, wanted: dict[str, Any], most: int) -> int:
    """Credits that the house must earn. CannotJudge where that goes by what of a large house is above grade."""
    least = int(wanted["credits"])
    more = least + int(wanted["more"])
    house = case.design.house
    area = None if house is None else case.maybe(house, "floor_area")
    if not least <= most < more:
        return least
    if area is None:
        raise Missing("house.floor_area")
    if area > parse(wanted["large"], "area") * (1 + 1e-9):
        raise CannotJudge("how much of this large house is above grade decides on five more credits")
    return least


@quantity("", "the most that the options of each claimed measure earn in the climate zone, summed", "IRC 2024, Table N1108.2")
def credits_of(case: Case, paper: EnergyPaper) -> Credits:
    """What the papers claim against what is asked. CannotJudge for a measure without figures that might do."""
    if path_of(paper, "measures") in case.design.stated_none:
        names: list[str] = []
    else:
        names = list(dict.fromkeys(case.get(paper, "measures")))
    wanted = case.limit("efficiency-measures")
    count = int(wanted["measures"])
    if "credits" not in wanted or len(names) < count:
        return Credits(len(names), count, 0, 0)
    try:
        table = case.limit("efficiency-credits")
    except NotApplicable:
        return Credits(len(names), count, 0, 0)
    if "other" in names:
        raise CannotJudge("what the measure `other` earns is not held here")
    place = column(case, paper)
    most = sum(int(table[name][place]) for name in names)
    return Credits(len(names), count, most, asked_credits(case, wanted, most))


def check(paper: EnergyPaper, found: Credits) -> Meets | Finding:
    """Count first, credits then."""
    numbers = {name: Num(value) for name, value in found._asdict().items()}
    if found.measures < found.wanted:
        return Finding(
            "the papers claim {measures} efficiency measures beyond the minimum; the prescriptive path asks for {wanted}",
            at="measures",
            help="claim {wanted}, and show that the design meets their figures",
            numbers=numbers,
        )
    if found.most < found.asked:
        return Finding(
            "the claimed measures earn at most {most} credits in this climate zone, where {asked} are asked",
            at="measures",
            help="claim measures that earn {asked} credits together",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="ENER-17", name="too-few-efficiency-measures", severity="correction", since="0.1",
    over=papers, when=by_prescription, needs=(credits_of,), cites=("efficiency-measures",), check=check,
    nothing="the design has no energy papers", answers=("R14", "R15"),
)  # fmt: skip
