"""A sham finds what the tests of the outputs need.

It stands for a real rule, so that the outputs can be tested while the rules change. Braces {like these} and
a bracket [too] stand in its page.

The usual cause is a test. Change the test.
"""

from typing import NamedTuple

from checker import each
from checker.case import CannotJudge, Case, given, quantity
from checker.codebook import Entry
from checker.design import Design
from checker.design.fans import Fan, Setting
from checker.design.house import House
from checker.read import read_text
from checker.rule import Finding, Meets, Num, Rule
from checker.run import Checked, check_reading, numbered
from checker.units import show

ENTRIES = {
    "sham-least-flow": Entry(
        "a fan moves no less than this", "airflow", {"irc-2018": "45 cfm", "irc-2021": "50 cfm", "irc-2024": "50 cfm"},
        {"irc-2018": "Table X1", "irc-2021": "Table X2", "irc-2024": "Table X2"}, "code", "made up",
    ),
    "sham-share": Entry("no more than a tenth", "share", "10 %", "common practice", "common practice", ""),
}  # fmt: skip


class Pair(NamedTuple):
    """A record that does not know its units."""

    path: str
    label: str
    flow: float


class Known(NamedTuple):
    """A record that says its own lines."""

    flow: float

    def worksheet_lines(self, system: str) -> list[str]:
        return [f"kept flow {show(self.flow, 'airflow', system)}"]


@quantity("airflow", "first setting of the fan", "the fan schedule")
def flow(case: Case, fan: Fan) -> float:
    """Airflow of the first setting."""
    case.maybe(fan, "notes")
    settings: dict[str, Setting] = case.get(fan, "settings")
    first = next(iter(settings.values()))
    return float(case.get(first, "airflow"))


@quantity("airflow", "2 * flow", "arithmetic")
def twice(case: Case, fan: Fan) -> float:
    """Twice the flow. Raises CannotJudge."""
    value = flow(case, fan)
    if value > 0.5:
        raise CannotJudge("the method ends at 1000 cfm")
    return 2 * value


@quantity()
def pair(case: Case, fan: Fan) -> list[Pair]:
    """The flow as a record."""
    return [Pair(fan.path, fan.name, flow(case, fan))]


@quantity()
def known(case: Case, fan: Fan) -> Known:
    """The flow as a record with units."""
    return Known(flow(case, fan))


def at_least(fan: Fan, flow: float, limit: float) -> Meets | Finding:
    if flow >= limit:
        return Meets({"margin": Num(flow - limit, "airflow")})
    return Finding(
        "moves {flow}, less than {limit}", at="settings",
        help="raise it by {short}, or choose a fan that moves {limit} against the pressure of its own duct and of the cap",
        numbers={"short": Num(limit - flow, "airflow")},
    )  # fmt: skip


def doubled(fan: Fan, twice: float, pair: list[Pair], known: Known, limit: float) -> Meets | Finding:
    return Finding(f"`{fan.name}` doubled is {{twice}}, beyond {{limit}}") if twice > 0.06 else Meets()


def noted(house: House, area: float) -> Meets | Finding:
    return Finding("the floor area of {floor_area} is on no paper", at="floor_area")


def breaks(_design: Design) -> Meets | Finding:
    raise ZeroDivisionError("sham")


LOW = Rule("EXH-90", "sham-flow-low", "correction", "0.1", each.fan, at_least, (flow,), ("sham-least-flow",))
DOUBLED = Rule("VENT-90", "sham-flow-doubled", "caution", "0.1", each.fan, doubled, (twice, pair, known),
               ("sham-share",))  # fmt: skip
NOTED = Rule("PAPER-90", "sham-area-on-no-paper", "note", "0.2", each.house, noted, (given("floor_area"),))
BREAKS = Rule("CTRL-90", "sham-breaks", "caution", "0.1", each.design, breaks)
SHAMS = [LOW, DOUBLED, NOTED, BREAKS]
SOUND = [LOW, DOUBLED, NOTED]

COTTAGE = """\
design_format: 1
project: {title: Sham cottage, code: irc-2021}
house: {floor_area: 1200 ft2}
fans:
  bath: {role: exhaust, settings: {high: 40 cfm}}
  attic: {role: exhaust, settings: {high: 60 cfm}}
  big: {role: exhaust, settings: {high: 2000 cfm}}
  later: {role: exhaust, settings: {high: tbd}}
accepted:
  - {rule: EXH-90, path: fans.none, reason: r, by: b}
"""


def checked_text(text: str, chosen: list[Rule] = SHAMS, name: str = "cottage.yaml", tracing: bool = False) -> Checked:
    """A design judged by sham rules, with its findings numbered."""
    return numbered([check_reading(read_text(text, name), chosen, "2026-01-01", tracing)])[0]


