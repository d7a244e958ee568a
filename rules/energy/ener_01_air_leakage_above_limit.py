"""The house is leakier, by target or by test, than the energy code lets it be in its climate zone.

Air leakage is often the largest single heat loss of a house, and it carries moisture into the walls. The code sets a
limit at 50 Pa that a blower-door test must show; a target above it cannot pass.

Set the target at the limit or below, and plan the air barrier for it; after a test, find and seal the leaks and
test again. An existing house that is altered is not held to it: `project.work: alteration` says so. From 2021 on
small and attached dwellings, and all that follow another path than the prescriptive one, may be held to their
leakage per area of envelope instead.
"""

from checker import each
from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.house import House
from checker.quantities.airtightness import air_changes_at_50, airtightness, leakage_flow
from checker.quantities.energy import LeakageLimit, code_path, leakage_limit
from checker.quantities.stage import is_alteration
from checker.rule import Finding, Meets, Num, Rule


def leaky(case: Case) -> list[House]:
    """The house, where its airtightness is stated or to be decided."""
    house = case.design.house
    if house is None or not (case.speaks_of(house, "airtightness") or house.measured is not None):
        return []
    return each.house(case)


def is_new(case: Case, _house: House) -> bool:
    """An existing house that is altered is not held to the air leakage of a new one."""
    return not is_alteration(case)


@quantity()
def help_for(case: Case, _house: House) -> str:
    """What to change; where nobody says what is built, that too."""
    plan = "plan the air barrier for {most} or less and test it, or seal the leaks and test again"
    project = case.design.project
    told = project is not None and case.maybe(project, "work") is not None
    return plan if told else plan + "; for an existing house write `work: alteration` under `project`"


def is_small(case: Case, house: House) -> bool:
    """Whether the edition lets the dwelling be judged by its area of envelope: small or attached."""
    try:
        largest = case.limit("small-dwelling")
    except NotApplicable:
        return False
    attached = (house.exterior_share is not None and house.exterior_share < 1.0) or (house.dwelling_units or 1) > 1
    area = case.maybe(house, "floor_area")
    return attached or (area is not None and area <= largest)


def is_tight_by_envelope(case: Case, house: House) -> bool:
    """Whether the leakage meets what the other paths take per area of envelope, where that area is stated."""
    envelope = case.maybe(house, "envelope_area")
    try:
        most = case.limit("air-leakage-by-envelope")
    except NotApplicable:
        return False
    return envelope is not None and bool(leakage_flow(case, house) <= most * envelope * (1 + 1e-9))


@quantity()
def is_tight_enough(case: Case, house: House) -> bool:
    """Whether the leakage meets the limit, or the one per area. Raises Missing for what decides."""
    leak, limit = air_changes_at_50(case, house), leakage_limit(case, house)
    if leak <= limit.limit * (1 + 1e-9):
        return True
    if is_small(case, house):
        envelope = case.maybe(house, "envelope_area")
        if envelope is None:
            raise Missing("house.envelope_area")
        if leakage_flow(case, house) <= case.limit("air-leakage-of-small-dwellings") * envelope * (1 + 1e-9):
            return True
    path = code_path(case)
    if path != "prescriptive" and is_tight_by_envelope(case, house):
        if path is None:
            raise Missing("papers.energy.code_path")
        return True
    if limit.asked and leak <= limit.otherwise * (1 + 1e-9):
        raise Missing(*limit.asked)
    return False


@quantity()
def is_measured(case: Case, house: House) -> bool:
    """Whether it is the measured airtightness that counts, not the stated one."""
    measured = house.measured.airtightness if house.measured is not None else None
    return measured is not None and airtightness(case, house) is measured


def check(
    house: House, leak: float, most: LeakageLimit, tight: bool, measured: bool, change: str
) -> Meets | Finding:
    """A leakage above the limit is the finding."""
    word = "tested at" if measured or house.airtightness_is == "tested" else "planned for"
    numbers = {"most": Num(most.otherwise if leak > most.otherwise else most.limit, "ach50"), "word": Num(word)}
    if tight:
        return Meets(numbers)
    return Finding(
        "the house is {word} {air_changes_at_50}; its climate zone allows {most}",
        at="measured.airtightness" if measured else "airtightness",
        help=change,
        numbers=numbers,
    )


RULE = Rule(
    code="ENER-01", name="air-leakage-above-limit", severity="correction", since="0.1",
    over=leaky, when=is_new, needs=(air_changes_at_50, leakage_limit, is_tight_enough, is_measured, help_for),
    cites=("air-leakage", "alteration-without-leakage-test"), check=check,
    nothing="the airtightness of the house is not stated", answers=("R11", "R12", "R13"),
)  # fmt: skip
