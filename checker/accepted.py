"""Findings accepted by a person, with a reason; what is accepted is still reported, as accepted."""

from checker.design import Design
from checker.design.controls import Acceptance
from checker.faults import Fault, fault
from checker.read import Place, Reading
from checker.rule import Outcome


def apply_acceptances(
    design: Design, outcomes: list[Outcome], reading: Reading, today: str
) -> tuple[list[Outcome], list[Fault]]:
    """Mark accepted findings; return faults for acceptances that lack a word, have ended or match nothing."""
    faults: list[Fault] = []
    valid = []
    for each in design.accepted:
        problem = why_not(each, today)
        if problem is not None:
            faults.append(fault(problem[0], each.path, place_in(reading, each), problem[1], problem[2]))
        else:
            valid.append(each)
    used: set[str] = set()
    judged = {word for outcome in outcomes for word in (outcome.rule.code, outcome.rule.name)}
    marked = []
    for outcome in outcomes:
        match = next((each for each in valid if accepts(each, outcome)), None)
        if match is not None:
            used.add(match.path)
            outcome = outcome._replace(accepted=spoken(match))
        marked.append(outcome)
    for each in valid:
        if each.path not in used and (is_judged(each, judged) or not exists(each)):
            message = f"the acceptance of `{each.rule}` at `{each.place}` matches no finding"
            faults.append(fault("acceptance-matches-nothing", each.path, place_in(reading, each), message,
                                "remove it, or correct its rule or path"))  # fmt: skip
    return marked, faults


def why_not(acceptance: Acceptance, today: str) -> tuple[str, str, str] | None:
    """Why an acceptance does not count: kind of fault, fact, help; None where it does."""
    for key, value in (("rule", acceptance.rule), ("path", acceptance.place), ("reason", acceptance.reason),
                       ("by", acceptance.by)):  # fmt: skip
        if not value:
            return "missing-key", f"an acceptance lacks `{key}`", "state `rule`, `path`, `reason` and `by`"
    if acceptance.until is not None and acceptance.until < today:
        return (
            "acceptance-expired",
            f"the acceptance of `{acceptance.rule}` ended on {acceptance.until}",
            "correct the design, or accept it again with a reason",
        )
    return None


def accepts(acceptance: Acceptance, outcome: Outcome) -> bool:
    """Whether it is this rule, at this path or below it."""
    rule, place = str(acceptance.rule), str(acceptance.place)
    if outcome.outcome != "finding" or (
        rule.upper() != outcome.rule.code and rule.lower() != outcome.rule.name
    ):
        return False
    return outcome.path == place or outcome.path.startswith((f"{place}.", f"{place}["))


def is_judged(acceptance: Acceptance, judged: set[str]) -> bool:
    """Whether its rule ran in this run."""
    return str(acceptance.rule).upper() in judged or str(acceptance.rule).lower() in judged


def exists(acceptance: Acceptance) -> bool:
    """Whether there is such a rule at all, run or not."""
    from checker.judge import modules

    word = str(acceptance.rule)
    return any(
        word.upper() == code or word.lower() == module.rpartition(".")[2].split("_", 2)[2].replace("_", "-")
        for code, module in modules()
    )


def spoken(acceptance: Acceptance) -> str:
    """The acceptance in a line."""
    day = f" on {acceptance.on}" if acceptance.on else ""
    end = f", until {acceptance.until}" if acceptance.until else ""
    return f"{acceptance.reason} (accepted by {acceptance.by}{day}{end})"


def place_in(reading: Reading, acceptance: Acceptance) -> tuple[int, int, int, int]:
    """Where an acceptance stands."""
    return tuple(reading.values.get(acceptance.path, Place(1, 1, 1, 1)))  # type: ignore[return-value]
