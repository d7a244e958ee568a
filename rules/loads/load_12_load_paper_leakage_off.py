"""The load calculation reckons with a leakier or tighter house than the design.

In a tight house leakage is a small part of the load, in a leaky one the largest. A sheet that leaves the class at
average while the design aims at a blower-door result far below it makes the equipment much too large; the other
way round the house is cold in the wind.

Put the target, or the test result, into the load calculation.
"""

from checker.case import CannotJudge, Case, quantity
from checker.design.controls import LoadsPaper
from checker.physics.infiltration import flow_from_air_changes
from checker.quantities.airtightness import airtightness, house_of, house_volume, leakage_flow
from checker.quantities.load_paper import leakage_over_class, stating
from checker.rule import Finding, Meets, Num, Rule


@quantity("leakage_50")
def on_paper(case: Case, paper: LoadsPaper) -> float:
    """Leakage at 50 Pa of the load calculation, m3/s. Raises Missing; CannotJudge for a house without any."""
    kind, value = case.get(paper, "airtightness")
    if value <= 0:
        raise CannotJudge("the load calculation has a house without any leakage")
    if kind == "ach50":
        return flow_from_air_changes(value, house_volume(case, paper))
    if kind == "flow50":
        return float(value)
    return float(value * case.get(house_of(case), "floor_area" if kind == "flow50-per-floor" else "envelope_area"))


@quantity()
def times_leakier(case: Case, paper: LoadsPaper) -> float:
    """How many times leakier the design is than its load calculation: by the stated airtightness, else by the class."""
    stated = case.maybe(paper, "airtightness")
    if stated is None:
        return leakage_over_class(case, paper)
    own = airtightness(case, case.design)
    if stated.kind == own.kind and stated.value > 0:
        return float(own.value / stated.value)
    return leakage_flow(case, case.design) / on_paper(case, paper)


def check(paper: LoadsPaper, times: float, share: float, factor: float) -> Meets | Finding:
    """Stated airtightness within a share, an infiltration class within a factor."""
    field = "infiltration" if paper.airtightness is None else "airtightness"
    most = factor if paper.airtightness is None else 1.0 + share
    if 1.0 / most * (1 - 1e-9) <= times <= most * (1 + 1e-9):
        return Meets()
    more, word = (times, "leakier") if times > 1 else (1.0 / times, "tighter")
    return Finding(
        "the design is {more} times {word} than the load calculation has it",
        at=field, help="put the airtightness of the design into the load calculation",
        numbers={"more": Num(f"{more:.1f}"), "word": Num(word)},
    )


RULE = Rule(
    code="LOAD-12", name="load-paper-leakage-off", severity="caution", since="0.1",
    over=stating("airtightness", "infiltration"), needs=(times_leakier,),
    limits=("paper-airtightness-tolerance", "paper-class-factor"), check=check, answers=("H29",),
    nothing="the load calculation says nothing of airtightness",
)  # fmt: skip
