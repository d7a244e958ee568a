"""The way of ventilating that is stated for the house is not that of its fans.

A house that is called balanced while only its supply runs all day is pressurized, and every figure built on
the word is wrong: the credit for leakage, the worth of heat recovery, the make-up air. A reviewer will ask
which of the two is meant.

Correct the word, or the settings that run all day. A bath fan or hood on a slow all-day speed counts too.
"""

from checker import each
from checker.case import CannotJudge, Case, Missing, NotApplicable, quantity
from checker.design.fans import Fan
from checker.design.house import House
from checker.quantities.ventilation import MeanFlows, mean_flows
from checker.quantities.whole_house import running
from checker.rule import Finding, Meets, Num, Rule


def is_stated(case: Case, house: House) -> bool:
    """No way of ventilating is stated for the house."""
    return case.maybe(house, "strategy") is not None


@quantity()
def strategy_shown(case: Case, house: House) -> str:
    """The way of ventilating that the fans make. NotApplicable where no fan runs: another rule speaks of that."""
    parts = running(case, case.design)
    supplies, exhausts = any(part.supplies for part in parts), any(part.exhausts for part in parts)
    if not parts and not case.stated("fans"):
        raise Missing("fans")
    if not parts:
        if house.strategy == "none":
            return "none"
        raise NotApplicable("no fan runs all day or by a timer")
    if not exhausts:
        return "supply only"
    if not supplies:
        return "exhaust only"
    recovers = any(isinstance(part.device, Fan) and part.device.role == "recovery" for part in parts)
    return "balanced with recovery" if recovers else "balanced"


@quantity()
def flows_shown(case: Case, _house: House) -> MeanFlows | None:
    """What the fans move all day, where the file tells: the word is wrong without it too."""
    try:
        return mean_flows(case, case.design)
    except (Missing, CannotJudge):
        return None


def check(house: House, shown: str, flows: MeanFlows | None) -> Meets | Finding:
    """The word and the fans; a recovery unit is balanced too."""
    stated = house.strategy
    if stated == shown or (stated == "balanced" and shown == "balanced with recovery"):
        return Meets()
    is_what = "no ventilation by fans" if stated == "none" else f"`{stated}`"
    numbers = {"strategy_shown": Num(shown)}
    what_runs = "what runs all day"
    if flows is not None:
        numbers["supply"], numbers["exhaust"] = Num(flows.supply, "airflow"), Num(flows.exhaust, "airflow")
        what_runs = "what runs all day, {supply} in and {exhaust} out,"
    return Finding(
        f"the house is said to have {is_what}, but {what_runs} makes it `{{strategy_shown}}`",
        at="strategy",
        help="correct `house.strategy`, or the settings that run all day",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-22", name="strategy-differs-from-the-fans", severity="caution", since="0.1",
    over=each.house, when=is_stated, needs=(strategy_shown, flows_shown), cites=("strategy-declared",), check=check,
)  # fmt: skip
