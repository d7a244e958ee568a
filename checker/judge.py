"""Finds the rules, runs them over a case, and turns whatever happens into outcomes."""

import os
from collections.abc import Callable, Iterable
from typing import Any

from checker.bundle import kept, module_of
from checker.case import GIVEN, CannotJudge, Case, Evaluation, Missing, NotApplicable, Worked, dimension_of
from checker.physics.validity import NoSolution, OutOfRange
from checker.rule import Finding, Meets, Num, Outcome, Rule
from checker.rule_index import Entry, Waiting, entry_of
from checker.units import DIMENSIONS

FOLDER = os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(__file__))), "rules")


def modules() -> list[tuple[str, str]]:
    """(code, module name) of every rule, in order of area and number; the folder is the list."""
    found = []
    with os.scandir(FOLDER) as folders:
        areas = [
            entry.name
            for entry in folders
            if entry.is_dir() and entry.name[0].isalpha() and entry.name != "codebook"
        ]
    for area in areas:
        for file in os.listdir(os.path.join(FOLDER, area)):
            stem, ending = os.path.splitext(file)
            if ending == ".py" and stem[0].isalpha():
                word, number, _ = stem.split("_", 2)
                found.append((f"{word.upper()}-{number}", f"rules.{area}.{stem}"))
    from checker.rule import AREAS

    order = {area: place for place, area in enumerate(AREAS)}
    return sorted(found, key=lambda each: (order[each[0].partition("-")[0]], int(each[0].partition("-")[2])))


def rules(wanted: Callable[[str, str], bool] | None = None) -> list[Rule]:
    """The rules whose code and name are wanted; all of them without a choice."""
    chosen = []
    for code, module in modules():
        name = module.rpartition(".")[2].split("_", 2)[2].replace("_", "-")
        if wanted is None or wanted(code, name):
            rule: Rule = module_of(module).RULE
            chosen.append(rule)
    return chosen


def waiting(wanted: Callable[[str, str], bool] | None = None) -> list[Waiting]:
    """The rules that are wanted, each to be loaded once a design has something for it."""
    entries: list[Entry] = kept("rules", indexed)
    return [Waiting(entry) for entry in entries if wanted is None or wanted(entry[0], entry[2])]


def indexed() -> list[Entry]:
    """The index of all rules."""
    return [entry_of(module_of(module).RULE, module) for _, module in modules()]


def judge(case: Case, chosen: Iterable[Rule | Waiting]) -> list[Outcome]:
    """The outcomes of the rules over one case."""
    found = [each.rule(case.design) if isinstance(each, Waiting) else each for each in chosen]
    return [outcome for rule in found for outcome in judge_rule(case, rule)]


def judge_rule(case: Case, rule: Rule) -> list[Outcome]:
    """One rule over the nodes that it is about; whatever breaks is our fault and stays with this rule."""
    cites = "; ".join(dict.fromkeys(case.codebook.cite(key) for key in (*rule.limits, *rule.cites)))
    path = ""
    try:
        nodes = list(rule.over(case))
        if not nodes:
            return [Outcome(rule, "not-applicable", "", rule.nothing, cites=cites)]
        outcomes = []
        for node in nodes:
            path = node.path
            outcomes.append(answered(case, rule, node, cites))
        return outcomes
    except Missing as gap:
        return [Outcome(rule, "needs-info", "", lacking(gap.paths), missing=gap.paths, cites=cites)]
    except NotApplicable as why:
        return [Outcome(rule, "not-applicable", "", str(why), cites=cites)]
    except Exception as fault:
        return [failed(rule, path, fault)]


def answered(case: Case, rule: Rule, node: Any, cites: str) -> Outcome:
    """What a rule says about one node."""
    if case.tracing:
        opened: Worked[Any, None] = Worked(lambda _case, _node: None, "", "", "")
        opened.name = rule.code
        case.stack.append(case.evaluations.setdefault((rule.code, node.path), Evaluation(opened, node.path)))
    try:
        for key in rule.cites:
            case.codebook.require(key)
        if rule.when is not None and not rule.when(case, node):
            why = (rule.when.__doc__ or "it does not arise here").strip()
            return Outcome(rule, "not-applicable", node.path, why, cites=cites)
        numbers, arguments = collected(case, rule, node)
        said = rule.check(node, *arguments)
        if isinstance(said, Finding) and rule.limits:
            said = as_printed(case, rule, node, arguments) or said
        numbers = {**numbers, **said.numbers}
        if isinstance(said, Meets):
            return Outcome(rule, "meets", node.path, "", numbers=numbers, cites=cites)
        at = f"{node.path}.{said.at}" if said.at and node.path else said.at or node.path
        return Outcome(rule, "finding", at, said.message, said.help, numbers, cites=cites)
    except Missing as gap:
        return Outcome(rule, "needs-info", node.path, lacking(gap.paths), missing=gap.paths, cites=cites)
    except CannotJudge as why:
        return Outcome(rule, "cannot-judge", node.path, str(why), cites=cites)
    except NotApplicable as why:
        return Outcome(rule, "not-applicable", node.path, str(why), cites=cites)
    except (OutOfRange, NoSolution) as limit:
        return Outcome(rule, "cannot-judge", node.path, f"{limit.method}: {limit.reason}", cites=cites)
    except Exception as fault:
        if isinstance(fault, ValueError) and from_physics(fault):
            return Outcome(rule, "cannot-judge", node.path, f"a value is impossible: {fault}", cites=cites)
        return failed(rule, node.path, fault)
    finally:
        if case.tracing:
            case.stack.pop()


def as_printed(case: Case, rule: Rule, node: Any, arguments: list[Any]) -> Meets | None:
    """That a node meets the rounded metric figures that are printed beside the limits; None where it does not."""
    milder = [case.codebook.compared(key) for key in rule.limits]
    first = len(arguments) - len(milder)
    if milder == arguments[first:]:
        return None
    said = rule.check(node, *arguments[:first], *milder)
    return said if isinstance(said, Meets) else None


def collected(case: Case, rule: Rule, node: Any) -> tuple[dict[str, Num], list[Any]]:
    """The numbers that a rule needs at a node, with all that is missing named at once."""
    numbers: dict[str, Num] = {}
    arguments: list[Any] = []
    absent: list[str] = []
    problems: list[Exception] = []
    routes: list[tuple[str, Any, str]] = [(need.name, need, "") for need in rule.needs]
    routes += [
        ("limit" if len(rule.limits) == 1 else key.replace("-", "_"), None, key) for key in rule.limits
    ]
    for name, need, key in routes:
        try:
            value = need(case, node) if need is not None else case.limit(key)
        except Missing as gap:
            absent.extend(gap.paths)
        except (CannotJudge, NotApplicable) as why:
            problems.append(why)
        else:
            arguments.append(value)
            if isinstance(value, (int, float, str)) and not isinstance(value, bool):
                numbers[name] = Num(value, dimension(case, need, node, key))
    for problem in problems:
        if isinstance(problem, NotApplicable):
            raise problem.with_traceback(None)
    if absent:
        raise Missing(*absent)
    if problems:
        raise problems[0].with_traceback(None)
    return numbers, arguments


def dimension(case: Case, need: Any, node: Any, key: str) -> str:
    """Dimension of a need or limit ("" for plain numbers and words)."""
    if key:
        of = case.codebook.entry(key).of
        return "" if of in ("number", "count", "text", "table") else of
    if need.dimension:
        return str(need.dimension)
    if need.source == GIVEN:
        *above, last = need.formula.split(".")
        for part in above:
            node = getattr(node, part)
        found = dimension_of(node, last)
        return found if found in DIMENSIONS else ""
    return ""


def lacking(paths: tuple[str, ...]) -> str:
    """What is missing, as a message."""
    shown = ", ".join(f"`{path}`" for path in paths[:4])
    more = f" and {len(paths) - 4} more" if len(paths) > 4 else ""
    return f"cannot be judged before {shown}{more} {'is' if len(paths) == 1 else 'are'} known"


def from_physics(fault: Exception) -> bool:
    """Whether a formula refused its input: then a value of the design is impossible, such as a volume of zero."""
    return os.path.basename(os.path.dirname(last_frame(fault)[0])) == "physics"


def last_frame(fault: Exception) -> tuple[str, int]:
    """File and line where a fault was raised."""
    frame = fault.__traceback__
    while frame is not None and frame.tb_next is not None:
        frame = frame.tb_next
    return (frame.tb_frame.f_code.co_filename, frame.tb_lineno) if frame is not None else ("", 0)


def failed(rule: Rule, path: str, fault: Exception) -> Outcome:
    """A rule that broke: our fault, with the last frame, so that it can be reported."""
    file, line = last_frame(fault)
    where = f" at {os.path.basename(file)}:{line}" if file else ""
    message = f"the rule broke ({type(fault).__name__}: {fault}){where}; this is a fault of airtally, please report it"
    return Outcome(rule, "rule-failed", path, message)
