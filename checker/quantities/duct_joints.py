"""The joints of duct runs: what stands at their ends, which run follows which, and the walk away from the mover."""

from collections.abc import Iterable

from checker.record import Record


class End(Record):
    """What stands at an end of a run: mover, run, outlet, filter, opening, room or a place such as outdoors."""

    kind: str
    name: str

    @property
    def is_outdoors(self) -> bool:
        """Whether outdoor air enters or air leaves the house there."""
        return self.kind == "opening" or (self.kind == "place" and self.name == "outdoors")


class Links(Record):
    """Which runs begin or end at the mover, and which follow each other in the direction of the air."""

    starts: list[str]
    stops: list[str]
    pairs: list[tuple[str, str]]


def links(ends: dict[str, tuple[End | None, End | None]]) -> Links:
    """Read the joints off the ends; a filter joins the runs on its two sides, or one run and the mover."""
    found = Links([], [], [])
    before: dict[str, list[str]] = {}
    after: dict[str, list[str]] = {}
    for name, (start, stop) in ends.items():
        if start is not None and start.kind == "mover":
            found.starts.append(name)
        if stop is not None and stop.kind == "mover":
            found.stops.append(name)
        if start is not None and start.kind == "run":
            found.pairs.append((start.name, name))
        if stop is not None and stop.kind == "run":
            found.pairs.append((name, stop.name))
        if start is not None and start.kind == "filter":
            after.setdefault(start.name, []).append(name)
        if stop is not None and stop.kind == "filter":
            before.setdefault(stop.name, []).append(name)
    for filter_name, arriving in before.items():
        leaving = after.get(filter_name, [])
        found.pairs.extend((one, other) for one in arriving for other in leaving)
        if not leaving:
            found.stops.extend(arriving)
    upstream = placed(found.stops, [(b, a) for a, b in found.pairs])[0]
    for filter_name, leaving in after.items():
        if filter_name not in before:
            found.starts.extend(name for name in leaving if name not in upstream)
    return found._replace(pairs=list(dict.fromkeys(found.pairs)))


def placed(first: Iterable[str], pairs: list[tuple[str, str]]) -> tuple[dict[str, str | None], list[str]]:
    """Walk away from the mover: (the nearer run of each run reached, runs that are reached twice)."""
    nearer: dict[str, str | None] = dict.fromkeys(first)
    rings: list[str] = []
    waiting = list(nearer)
    while waiting:
        name = waiting.pop(0)
        for one, other in pairs:
            if one != name or nearer[name] == other:
                continue
            if other in nearer:
                rings.append(other)
            else:
                nearer[other] = name
                waiting.append(other)
    return nearer, rings
