"""Amendments files: what a jurisdiction or firm overrides, adds or withdraws in the codebook."""

import os
from typing import Any

from checker.codebook import Amendment, converted
from checker.faults import Fault, fault
from checker.read import Place, Reading, read_file
from checker.record import Record

FORMAT = 1
KEYS = ("limit", "section", "withdrawn", "says")
CRITERIA = {
    "winter_design": "temperature",
    "summer_dry_bulb": "temperature",
    "summer_wet_bulb": "temperature",
    "snow_depth": "length",
}
HELP = "an amendments file holds `amendments_format: 1`, `requirements: {key: {limit, section}}` and `design_criteria`"


class Amended(Record):
    """What the amendments files of a design say: requirements by key, design criteria in SI, faults of the files."""

    requirements: dict[str, Amendment]
    criteria: dict[str, Any]
    faults: list[Fault]


def read_amendments(reading: Reading, files: list[str]) -> Amended:
    """Read them in order, later files winning; a fault stands where the design names its file."""
    amended = Amended({}, {}, [])
    folder = os.path.dirname(reading.name) if reading.name != "-" else ""
    for number, file in enumerate(files):
        where = f"project.amendments[{number}]"
        found = read_file(os.path.join(folder, file))
        problems = [f"{file}:{each.line}:{each.column}: {each.message}" for each in found.faults]
        if not problems:
            problems = read_requirements(file, found.data, amended.requirements)
            problems += read_criteria(file, found.data, amended.criteria)
        place = reading.values.get(where) or reading.values.get("project.amendments") or Place(1, 1, 1, 1)
        at = (place.line, place.column, place.end_line, place.end_column)
        amended.faults.extend(fault("bad-amendments", where, at, problem, HELP) for problem in problems)
    return amended


def read_criteria(file: str, data: Any, into: dict[str, Any]) -> list[str]:
    """Read the design criteria of one amendments file; return what is wrong with it."""
    from checker.design.nearest import nearest

    stated = data.get("design_criteria") if isinstance(data, dict) else None
    if stated is None:
        return []
    if not isinstance(stated, dict):
        return [f"{file}: `design_criteria` holds keys such as `winter_design: -4 degF`"]
    problems = []
    for key, value in stated.items():
        if key not in CRITERIA:
            problems.append(f"{file}: no design criterion is called `{key}`: {nearest(key, list(CRITERIA), 'criteria')}")
            continue
        problem = unreadable(str(value), CRITERIA[key])
        if problem:
            problems.append(f"{file}: `{key}`: {problem}")
        else:
            into[key] = converted(str(value), CRITERIA[key])
    return problems


def read_requirements(file: str, data: Any, into: dict[str, Amendment]) -> list[str]:
    """Read the requirements of one amendments file; return what is wrong with it."""
    from checker.codebook_table import ENTRIES
    from checker.design.nearest import nearest

    if not isinstance(data, dict) or data.get("amendments_format") != FORMAT:
        return [f"{file} does not begin with `amendments_format: {FORMAT}`"]
    unknown = set(data) - {"amendments_format", "title", "requirements", "design_criteria"}
    problems = [f"{file} has an unknown key `{key}`" for key in sorted(unknown)]
    requirements = data.get("requirements") or {}
    if not isinstance(requirements, dict):
        return [*problems, f"{file}: `requirements` holds requirements by key, each with what changes"]
    for key, change in requirements.items():
        if key not in ENTRIES:
            problems.append(
                f"{file}: no requirement is called `{key}`: {nearest(key, list(ENTRIES), 'requirements')}"
            )
        elif not isinstance(change, dict) or not set(change) <= set(KEYS) or not change:
            problems.append(f"{file}: `{key}` takes {', '.join(f'`{each}`' for each in KEYS)}")
        else:
            problem = unreadable(change.get("limit"), ENTRIES[key].of)
            if problem:
                problems.append(f"{file}: limit of `{key}`: {problem}")
            else:
                into[key] = Amendment(
                    change.get("limit"), str(change.get("section", "")), str(change.get("withdrawn", "")),
                    str(change.get("says", "")),
                )  # fmt: skip
    return problems


def unreadable(limit: Any, of: str) -> str:
    """Why a limit cannot be read in its dimension; "" if it can."""
    from checker.units import UnitFault

    try:
        converted(limit, of)
    except UnitFault as problem:
        return f"{problem.problem}; {problem.remedy}"
    except (TypeError, ValueError):
        return f"`{limit}` is not a number"
    return ""
