"""Which settings run together: the all-day mode, and every combination that the interlocks allow."""

from itertools import product

from checker.case import CannotJudge, Case, NotApplicable, quantity
from checker.quantities.movers import Stream, streams_but_dryers
from checker.record import Record

MOST_COMBINATIONS = 5_000


class Mode(Record):
    """Streams that run together. `path` is the place of the setting that makes the mode."""

    path: str
    name: str
    running: tuple[Stream, ...]

    @property
    def supply(self) -> float:
        """Outdoor air brought in by fans, m3/s."""
        return sum(stream.supply for stream in self.running)

    @property
    def exhaust(self) -> float:
        """Indoor air taken out by fans, m3/s."""
        return sum(stream.exhaust for stream in self.running)

    @property
    def net_exhaust(self) -> float:
        """Exhaust less supply, m3/s; positive draws the house down."""
        return self.exhaust - self.supply

    def worksheet_lines(self, system: str) -> list[str]:
        """What runs and its sums, in trade or metric units."""
        from checker.quantities.pressure_sheet import mode_lines

        return mode_lines(self, system)


def linked(one: Stream, other: Stream, field: str) -> bool:
    """Whether either setting names the other (or its device) in `runs_with` or `not_with`."""
    return names(one, other, field) or names(other, one, field)


def names(one: Stream, other: Stream, field: str) -> bool:
    """Whether a setting names another stream by `device` or `device.setting`."""
    if one.setting is None:
        return False
    listed = getattr(one.setting, field)
    device = other.device.name
    return device in listed or (other.setting is not None and f"{device}.{other.setting.name}" in listed)


@quantity()
def all_day(case: Case, design: object) -> Mode:
    """The streams that run all the time, together."""
    running = tuple(stream for stream in streams_but_dryers(case) if stream.continuous)
    if not running:
        raise NotApplicable("nothing runs all the time")
    return Mode(running[0].path, "all day", running)


@quantity()
def combinations(case: Case, design: object) -> list[Mode]:
    """Every combination of settings that can run together, interlocks respected; without dryers of unstated airflow."""
    by_device: dict[str, list[Stream]] = {}
    for stream in streams_but_dryers(case):
        by_device.setdefault(stream.device.path, []).append(stream)
    choices: list[list[Stream | None]] = []
    for own in by_device.values():
        always = any(stream.continuous for stream in own)
        choices.append([*own] if always else [None, *own])
    count = 1
    for choice in choices:
        count *= len(choice)
    if count > MOST_COMBINATIONS:
        raise CannotJudge(f"{count} combinations of settings are more than can be worked through")
    modes = []
    for picked in product(*choices):
        running = tuple(stream for stream in picked if stream is not None)
        if running and allowed(running, by_device):
            last = next((stream for stream in reversed(running) if not stream.continuous), running[-1])
            modes.append(Mode(last.path, " + ".join(stream.label for stream in running), running))
    return modes


def allowed(running: tuple[Stream, ...], by_device: dict[str, list[Stream]]) -> bool:
    """Whether interlocks let these streams run together, and no linked one is left out."""
    for place, one in enumerate(running):
        if any(linked(one, other, "not_with") for other in running[place + 1 :]):
            return False
        for device, own in by_device.items():
            partners = [
                other for other in own if device != one.device.path and linked(one, other, "runs_with")
            ]
            if partners and not any(other in running for other in partners):
                return False
    return True


@quantity()
def modes(case: Case, design: object) -> list[Mode]:
    """The all-day mode first, then one mode for each setting on demand beside what runs all day."""
    together = combinations(case, design)
    found: dict[str, Mode] = {}
    for mode in together:
        demanded = [stream for stream in mode.running if not stream.continuous]
        partners = [
            one
            for one in demanded
            if all(one is other or linked(one, other, "runs_with") for other in demanded)
        ]
        if len(partners) == len(demanded):
            path = demanded[0].path if demanded else mode.path
            name = " + ".join(stream.label for stream in demanded) if demanded else "all day"
            if path not in found or len(mode.running) > len(found[path].running):
                found[path] = Mode(path, name, mode.running)
    return sorted(found.values(), key=lambda mode: mode.name != "all day")


@quantity("airflow", "sum of what fans take out, all day")
def all_day_exhaust(case: Case, design: object) -> float:
    """Air taken out all day, the slow hood included."""
    return all_day(case, design).exhaust
