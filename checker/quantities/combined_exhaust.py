"""Which settings together draw the house down most, or push it up most, interlocks respected."""

from itertools import product
from math import prod

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.fans import Fan
from checker.design.hoods import Dryer, Hood
from checker.quantities.local_exhaust import local_exhaust, rooms_exhausted
from checker.quantities.make_up_air import (
    exhausters,
    interlocked,
    is_for_cooling,
    largest_of_each,
    make_up_fans,
    make_up_flow,
    opens_with_exhaust,
    way_of,
)
from checker.quantities.modes import MOST_COMBINATIONS, allowed, linked
from checker.quantities.movers import Stream, streams
from checker.record import Record

NAMED = 4
NOTHING = 1e-9


class Moving(Record):
    """A device at a setting: `net` is what it takes out less what it brings in, and less the make-up air that
    the design states to come with it, m3/s."""

    label: str
    device: str
    net: float
    continuous: bool
    may_stop: bool
    stream: Stream | None
    unsure: str = ""

    def worksheet_lines(self, system: str) -> list[str]:
        """The device on one line, in trade or metric units."""
        from checker.quantities.pressure_sheet import moving_line
        return [moving_line(self, system)]


class Combination(Record):
    """Settings that run together, and their net exhaust, m3/s; positive draws the house down."""

    running: tuple[Moving, ...]

    @property
    def net(self) -> float:
        """Net exhaust, m3/s."""
        return sum(one.net for one in self.running)

    @property
    def name(self) -> str:
        """What runs, in words."""
        moved = [one for one in self.running if abs(one.net) > NOTHING]
        labels = [one.label for one in sorted(moved, key=lambda one: (-abs(one.net), one.label))]
        more = f" + {len(labels) - NAMED} more" if len(labels) > NAMED else ""
        return " + ".join(labels[:NAMED]) + more if labels else "nothing"

    def worksheet_lines(self, system: str) -> list[str]:
        """What runs together, in trade or metric units."""
        from checker.quantities.pressure_sheet import combination_lines
        return combination_lines(self, system)


@quantity()
def movings(case: Case, design: object) -> list[Moving]:
    """Every device at every setting, and exhaust that only rooms state."""
    found = []
    for stream in streams(case, design):
        if isinstance(stream.device, Fan) and (is_for_cooling(case, stream.device) or follows(case, stream)):
            continue
        net = stream.exhaust - stream.supply - stated_make_up(case, stream)
        found.append(Moving(stream.label, stream.device.path, net, stream.continuous, stream.supply > 0, stream))
    return found + exhaust_of_rooms(case)


def stated_make_up(case: Case, stream: Stream) -> float:
    """Make-up air that comes with an exhaust at a flow the design only states; none where it does not open by itself."""
    device = stream.device
    if not isinstance(device, (Hood, Fan, Dryer)) or stream.exhaust <= 0.0 or stream.supply > 0.0:
        return 0.0
    way = way_of(case, device)
    if way == "fan" and not isinstance(device, Dryer):
        following = [fan for fan in make_up_fans(case, device) if follows_this(case, device, fan)]
        return min(stream.exhaust, largest_of_each(following))
    if way != "stated" or passes_by_damper(device) or not opens_with_exhaust(case, device):
        return 0.0
    return min(stream.exhaust, make_up_flow(case, device))


def follows_this(case: Case, device: Hood | Fan, fan: Stream) -> bool:
    """Whether a make-up fan starts with an exhaust by a control or the exhaust's own record, and not by `runs_with`."""
    if fan.setting is None or fan.setting.runs_with or any(each.runs_with for each in device.settings.values()):
        return False
    record = device.make_up_air
    if interlocked(case, device.name, fan.device.name):
        return True
    return record is not None and record.fan == fan.device.name and bool(case.get(record, "interlock"))


def follows(case: Case, stream: Stream) -> bool:
    """Whether a supply fan does nothing but follow an exhaust, whose net flow counts it already."""
    if stream.supply <= 0.0 or stream.continuous:
        return False
    followed = exhausters(case)
    return any(one.path == stream.path and follows_this(case, device, one) for device in followed
               for one in make_up_fans(case, device))  # fmt: skip


def passes_by_damper(device: Hood | Fan | Dryer) -> bool:
    """Whether its make-up air is known as the flow of a gravity damper at a pressure."""
    record = device.make_up_air
    return record is not None and record.damper == "gravity"


def exhaust_of_rooms(case: Case) -> list[Moving]:
    """Exhaust that rooms state and that belongs to no device of the file; `unsure` where nobody says how it runs."""
    found: list[Moving] = []
    rooms = [room for room in case.design.rooms.values() if room.exhaust]
    if not rooms or any(not knows_rooms(case, fan) for fan in case.design.fans.values()):
        return found
    for room in rooms:
        label = f"exhaust of {room.name}"
        try:
            draws = local_exhaust(case, room).draws
        except Missing as gap:
            unsure = path_of(room, "exhaust_run")
            if gap.paths == (unsure,):
                flow = float(case.get(room, "exhaust"))
                found.append(Moving(label, path_of(room, "exhaust"), flow, False, False, None, unsure))
            continue
        found += [Moving(label, one.path, one.airflow, one.continuous, False, None) for one in draws if one.device is None]
    return found


def knows_rooms(case: Case, fan: Fan) -> bool:
    """Whether the rooms that a fan exhausts are known; else a room's flow may be that of the fan."""
    try:
        return rooms_exhausted(case, fan) is not None
    except Missing:
        return False


@quantity()
def most_drawn(case: Case, design: object) -> Combination:
    """The settings that draw the house down most, with all that runs all day running."""
    return extreme(movings(case, design), 1.0, supply_stops=False)


@quantity(source="ASHRAE 62.2 counts the two largest exhausts together")
def two_largest_together(case: Case, design: object) -> Combination:
    """The two largest exhausts on demand, with all that runs all day and what interlocks run with them."""
    return with_largest(most_drawn(case, design), 2, movings(case, design))


@quantity()
def largest_alone(case: Case, design: object) -> Combination:
    """The largest exhaust on demand, with all that runs all day and what interlocks run with it."""
    return with_largest(most_drawn(case, design), 1, movings(case, design))


def with_largest(together: Combination, count: int, every: list[Moving]) -> Combination:
    """Of settings that run together the largest on demand, beside what brings air in and what else runs all day."""
    on_demand = [one for one in together.running if not one.continuous and one.net > 0.0]
    largest = sorted(on_demand, key=lambda one: (-one.net, one.label))[:count]
    kept = [one for one in together.running if one.continuous or one.net <= 0.0 or one in largest]
    slower = {one.device: one for one in every if one.continuous and one.device not in {other.device for other in kept}}
    return Combination((*kept, *slower.values()))


@quantity()
def most_pushed(case: Case, design: object) -> Combination:
    """The settings that push the house up most, with all that runs all day running."""
    return extreme(movings(case, design), -1.0, supply_stops=False)


@quantity()
def worst_case(case: Case, design: object) -> Combination:
    """All exhaust at its highest, with supply only where an interlock makes it run."""
    return extreme(movings(case, design), 1.0, supply_stops=True)


@quantity()
def running_all_day(case: Case, design: object) -> Combination:
    """What runs all the time, together."""
    every = movings(case, design)
    unsure = [one.unsure for one in every if one.unsure]
    if unsure:
        raise Missing(*unsure)
    running = tuple(one for one in every if one.continuous)
    if not running:
        raise NotApplicable("nothing runs all the time")
    return Combination(running)


def extreme(every: list[Moving], sign: float, supply_stops: bool) -> Combination:
    """The combination with the greatest `sign` x net exhaust. Raises CannotJudge for too many linked devices."""
    by_device: dict[str, list[Moving]] = {}
    for one in sorted(every, key=lambda one: (one.device, one.label)):
        by_device.setdefault(one.device, []).append(one)
    tied = tied_devices(by_device)
    picked: list[Moving] = []
    for device, own in by_device.items():
        if device not in tied:
            best = max(choices(own, supply_stops), key=lambda one: sign * one.net if one is not None else 0.0)
            picked += [best] if best is not None else []
    picked += best_of_tied({device: by_device[device] for device in tied}, sign, supply_stops)
    return Combination(tuple(picked))


def choices(own: list[Moving], supply_stops: bool) -> list[Moving | None]:
    """The settings that a device may be at, None where it may be off; off comes first among equals."""
    must_run = any(one.continuous for one in own) and not (supply_stops and any(one.may_stop for one in own))
    return [*own] if must_run else [None, *own]


def tied_devices(by_device: dict[str, list[Moving]]) -> list[str]:
    """Devices that interlocks join with others."""
    flows = [one.stream for own in by_device.values() for one in own if one.stream is not None]
    joined = {
        end.device.path
        for place, one in enumerate(flows)
        for other in flows[place + 1 :]
        if one.device is not other.device and (linked(one, other, "runs_with") or linked(one, other, "not_with"))
        for end in (one, other)
    }
    return [device for device in by_device if device in joined]


def best_of_tied(by_device: dict[str, list[Moving]], sign: float, supply_stops: bool) -> list[Moving]:
    """The best choice among devices that interlocks join, by trying all."""
    options = [choices(own, supply_stops) for own in by_device.values()]
    count = prod(len(option) for option in options)
    if count > MOST_COMBINATIONS:
        raise CannotJudge(f"{count} combinations of interlocked settings are more than can be worked through")
    flows = {device: [one.stream for one in own if one.stream is not None] for device, own in by_device.items()}
    best: list[Moving] = []
    most = float("-inf")
    for picked in product(*options):
        running = [one for one in picked if one is not None]
        net = sign * sum(one.net for one in running)
        if net > most and allowed(tuple(one.stream for one in running if one.stream is not None), flows):
            best, most = running, net
    return best
