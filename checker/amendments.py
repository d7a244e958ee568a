"""Amendments files: what a jurisdiction or firm overrides, adds or withdraws in the codebook."""

import os
from typing import Any

from checker.codebook import Amendment
from checker.faults import Fault, fault
from checker.read import Place, Reading, read_file

FORMAT = 1
KEYS = ("limit", "section", "withdrawn", "says")


def read_amendments(reading: Reading, files: list[str]) -> tuple[dict[str, Amendment], list[Fault]]:
    """Amendments by codebook key, later files winning; faults stand where the design names the file."""
    amendments: dict[str, Amendment] = {}
    faults: list[Fault] = []
    folder = os.path.dirname(reading.name) if reading.name != "-" else ""
    for number, file in enumerate(files):
        where = f"project.amendments[{number}]"
        place = tuple(
            reading.values.get(where) or reading.values.get("project.amendments") or Place(1, 1, 1, 1)
        )
        found = read_file(os.path.join(folder, file))
        problems = [f"{file}:{each.line}:{each.column}: {each.message}" for each in found.faults]
        if not problems:
            problems = read_requirements(file, found.data, amendments)
        for problem in problems:
            help = (
                "an amendments file holds `amendments_format: 1` and `requirements: {key: {limit, section}}`"
            )
            faults.append(fault("bad-amendments", where, place, problem, help))  # type: ignore[arg-type]
    return amendments, faults


def read_requirements(file: str, data: Any, into: dict[str, Amendment]) -> list[str]:
    """Read the requirements of one amendments file; return what is wrong with it."""
    from checker.codebook_table import ENTRIES
    from checker.design.nearest import nearest

    if not isinstance(data, dict) or data.get("amendments_format") != FORMAT:
        return [f"{file} does not begin with `amendments_format: {FORMAT}`"]
    unknown = set(data) - {"amendments_format", "title", "requirements"}
    problems = [f"{file} has an unknown key `{key}`" for key in sorted(unknown)]
    for key, change in (data.get("requirements") or {}).items():
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
    from checker.codebook import converted
    from checker.units import UnitFault

    try:
        converted(limit, of)
    except UnitFault as problem:
        return f"{problem.problem}; {problem.remedy}"
    except (TypeError, ValueError):
        return f"`{limit}` is not a number"
    return ""
