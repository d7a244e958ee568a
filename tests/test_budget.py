"""Budgets as counts: what a check may import, and how the work grows with the design."""

import json
import subprocess
import sys

from checker.case import Case
from checker.codebook import Codebook
from checker.design.build import build
from checker.judge import judge, rules
from checker.read import read_text
from tests.shown import ROOT

FORBIDDEN = {
    "pydantic", "pydantic_core", "jsonschema", "pint", "numpy", "scipy", "rich", "click", "asyncio", "logging", "inspect",
    "dataclasses", "importlib.metadata", "importlib.resources", "subprocess", "multiprocessing", "difflib", "json",
    "pathlib", "socket",
}  # fmt: skip
WATCH = """
import sys
sys.stdout = open({out!r}, "w")
from checker.cli import main
status = main(["check", {sample!r}])
sys.stdout.close()
sys.stderr.write(repr(sorted(sys.modules)))
"""


def test_the_fast_path_imports_little(tmp_path: object) -> None:
    code = WATCH.format(out=f"{tmp_path}/out.txt", sample="samples/cottage-c-permit.yaml")
    run = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True)
    loaded = set(eval(run.stderr))

    assert loaded & FORBIDDEN == set()
    assert len([name for name in loaded if not name.startswith(("checker", "rules"))]) < 150


def houses(count: int) -> str:
    """A design with so many bathrooms, each with its fan and opening."""
    rooms = {f"bath-{n}": {"use": "bathroom", "floor_area": "50 ft2"} for n in range(count)}
    fans = {
        f"fan-{n}": {
            "role": "exhaust", "room": f"bath-{n}", "to": f"out-{n}", "settings": {"continuous": "20 cfm"},
            "duct": {"size": "4 in", "length": "10 ft", "material": "galvanized steel"},
        }
        for n in range(count)
    }  # fmt: skip
    openings = {f"out-{n}": {"kind": "exhaust", "at": {"east": f"{n} ft", "north": "0 ft", "up": "9 ft"}} for n in range(count)}
    design = {
        "design_format": 1, "project": {"title": "many baths", "code": "irc-2021"},
        "house": {"floor_area": "2000 ft2", "bedrooms": 3, "airtightness": "2 ACH50", "volume": "16000 ft3"},
        "rooms": rooms, "fans": fans, "openings": openings, "combustion": "none",
    }  # fmt: skip
    return json.dumps(design)


def quantities_worked_out(count: int) -> int:
    built = build(read_text(houses(count), "many.yaml"))
    assert not built.faults
    case = Case(built.design, Codebook("irc-2021", None))
    judge(case, rules())
    return len(case.known)


def test_work_grows_with_the_design_not_with_its_square() -> None:
    small, large = quantities_worked_out(10), quantities_worked_out(40)

    assert large < 4.6 * small
