"""The nodes that a rule can be about: functions of a case, each node with its path."""

from collections.abc import Callable
from typing import Any, TypeVar

from checker.case import Case
from checker.design import Design
from checker.design.airway import Run
from checker.design.ducts import DuctSystem, Outlet
from checker.design.equipment import Equipment
from checker.design.fans import Fan, Setting
from checker.design.fields import Node
from checker.design.filters import Filter
from checker.design.hoods import Dryer, Hood
from checker.design.house import House
from checker.design.openings import Opening
from checker.design.rooms import Room

N = TypeVar("N", bound=Node)


def design(case: Case) -> list[Design]:
    """The design as a whole."""
    return [case.design]


def house(case: Case) -> list[House]:
    """The house, where the file says anything about it; else an empty one, so that what is missing is named."""
    return [case.design.house or blank(House, "house")]


def room(case: Case) -> list[Room]:
    """Every room."""
    return list(case.design.rooms.values())


def fan(case: Case) -> list[Fan]:
    """Every fan."""
    return list(case.design.fans.values())


def hood(case: Case) -> list[Hood]:
    """Every hood."""
    return list(case.design.hoods.values())


def dryer(case: Case) -> list[Dryer]:
    """Every dryer."""
    return list(case.design.dryers.values())


def equipment(case: Case) -> list[Equipment]:
    """Every piece of equipment."""
    return list(case.design.equipment.values())


def filter(case: Case) -> list[Filter]:
    """Every filter."""
    return list(case.design.filters.values())


def opening(case: Case) -> list[Opening]:
    """Every outdoor opening and neighbor of one."""
    return list(case.design.openings.values())


def system(case: Case) -> list[DuctSystem]:
    """Every duct system."""
    return list(case.design.ducts.values())


def run(case: Case) -> list[Run]:
    """Every duct run of every system."""
    return [run for system in case.design.ducts.values() for run in system.runs.values()]


def outlet(case: Case) -> list[Outlet]:
    """Every outlet of every system."""
    return [outlet for system in case.design.ducts.values() for outlet in system.outlets.values()]


def fan_setting(case: Case) -> list[Setting]:
    """Every setting of every fan."""
    return [setting for fan in case.design.fans.values() for setting in fan.settings.values()]


def where(nodes: Callable[[Case], list[Any]], keep: Callable[[Any], bool]) -> Callable[[Case], list[Any]]:
    """Only those nodes that are of a kind, for example exhaust fans."""

    def kept(case: Case) -> list[Any]:
        return [node for node in nodes(case) if keep(node)]

    return kept


def blank(section: type[N], path: str) -> N:
    """An empty section at a path: asking it names what is missing."""
    from checker.design.shape import fill

    node = section.__new__(section)
    values = node.__dict__
    values.update(path=path, name=path.rpartition(".")[2], up=None)
    fill(section, values)
    return node
