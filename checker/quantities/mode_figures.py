"""The air of the house at each combination of settings: what fans bring in and take out, and the pressure that follows."""


from checker.case import Case, Missing
from checker.design import Design
from checker.quantities.combined_exhaust import Combination, Moving, extreme
from checker.quantities.house_pressure import HousePressure, pressure_under
from checker.quantities.known_exhaust import dryers_left_out, movings_but_dryers
from checker.quantities.modes import Mode, combinations, modes
from checker.record import Record

MOST_SHOWN = 24


class Shown(Record):
    """The combinations to show: all of them, or of very many what runs all day with one demand at a time, and the worst.

    `without`: the paths of the dryer airflows that are not stated, so that these dryers are left out.
    """

    modes: tuple[Mode, ...]
    of: int
    without: tuple[str, ...] = ()


def shown(case: Case) -> Shown:
    """The combinations of settings. CannotJudge for more than can be worked through, Missing for a missing flow."""
    together, without = combinations(case, case.design), tuple(dryers_left_out(case))
    if len(together) <= MOST_SHOWN:
        return Shown(tuple(sorted(together, key=demands)), len(together), without)
    worst = extreme(movings_but_dryers(case), 1.0, supply_stops=True)
    streams = tuple(one.stream for one in worst.running if one.stream is not None)
    most = Mode("", f"the most exhaust: {worst.name}", streams)
    return Shown((*modes(case, case.design)[:MOST_SHOWN], most), len(together), without)


def demands(mode: Mode) -> int:
    """How many settings on demand run in a mode."""
    return sum(not stream.continuous for stream in mode.running)


def combination_of(case: Case, design: Design, mode: Mode) -> Combination:
    """A mode with the make-up air that is stated to come with it, and exhaust that rooms state to run all day."""
    every = movings_but_dryers(case)
    unsure = [one.unsure for one in every if one.unsure]
    if unsure:
        raise Missing(*unsure)
    running: list[Moving] = [
        one for one in every
        if (one.stream in mode.running if one.stream is not None else one.continuous)
    ]  # fmt: skip
    return Combination(tuple(running))


def mode_pressure(case: Case, design: Design, mode: Mode) -> HousePressure:
    """House pressure in a mode. Raises Missing for airtightness or make-up air that is not told."""
    return pressure_under(case, design, combination_of(case, design, mode))


def mode_net(case: Case, design: Design, mode: Mode) -> float:
    """Net exhaust of a mode in m3/s, stated make-up air taken off: what draws on the leaks of the house."""
    return combination_of(case, design, mode).net
