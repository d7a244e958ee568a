"""The ducts of a mover as a mesh of joints and the passages between them, whatever its shape: trees, rings, several fans.

Two runs meet where one names the other: `from` begins at the end of that run, `to` leads to its beginning.
"""

from typing import Literal

from checker.case import Case
from checker.design.airway import Airway, Run
from checker.design.ducts import DuctSystem, Outlet
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.filters import Filter
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_graph import Mover, Tree, end_of, is_return_outlet, mover_of, sketch
from checker.quantities.duct_joints import End
from checker.record import Record

ROOMS, OUTDOORS = "rooms", "outdoors"
HELD = (ROOMS, OUTDOORS)
Kind = Literal["run", "outlet", "filter", "mover"]
Thing = Airway | Outlet | Filter | Mover


class Passage(Record):
    """A way for air from joint `start` to joint `end`, in the direction of the design.

    `outgoing` marks the side of a recovery unit that takes air out.
    """

    kind: Kind
    thing: Thing
    start: str
    end: str
    system: DuctSystem | None
    outgoing: bool = False

    @property
    def name(self) -> str:
        """Name of the run, outlet, filter or mover; a duct in one line is called by its fan."""
        return duct_label(self.thing) if isinstance(self.thing, Airway) else str(self.thing.name)

    @property
    def key(self) -> str:
        """The one name of this passage in its mesh."""
        return f"{self.thing.path}{' outgoing' if self.outgoing else ''}"


class Joints:
    """Ends that are the same joint, by the names of the ends."""

    def __init__(self) -> None:
        self.above: dict[str, str] = {}

    def find(self, end: str) -> str:
        """The end that stands for all at its joint; the held places stand for themselves."""
        while end in self.above:
            end = self.above[end]
        return end

    def join(self, one: str, other: str) -> None:
        """Make two ends one joint."""
        first, second = self.find(one), self.find(other)
        if first == second or (first in HELD and second in HELD):
            return
        if first in HELD:
            first, second = second, first
        self.above[first] = second


def mesh(case: Case, systems: list[DuctSystem]) -> list[Passage]:
    """Every passage of these systems. Raises Missing for movers that are not told."""
    joints = Joints()
    passages: list[Passage] = []
    movers: dict[str, Passage] = {}
    for system in systems:
        drawn = sketch(case, system)
        mover_passage(movers, mover_of(case, system), system, outgoing=False)
        for run in system.runs.values():
            passages.append(Passage("run", run, f"start {run.path}", f"end {run.path}", system))
            for field in ("from_", "to"):
                attach(case, joints, movers, drawn, run, field)
        hang(joints, drawn, system)
        passages += [outlet_passage(each, system) for each in system.outlets.values() if each.kind != "transfer grille"]
        passages += filter_passages(case, joints, movers, drawn, system)
    passages += movers.values()
    for passage in movers.values():
        close_ends(joints, passages, passage)
    open_ends(joints, passages)
    return [each._replace(start=joints.find(each.start), end=joints.find(each.end)) for each in passages]


def mover_passage(movers: dict[str, Passage], mover: Mover, system: DuctSystem, outgoing: bool) -> Passage:
    """The passage through a mover, made where it is first met."""
    word = " outgoing" if outgoing else ""
    made = Passage("mover", mover, f"into {mover.path}{word}", f"out of {mover.path}{word}", system, outgoing)
    return movers.setdefault(made.key, made)


def attach(case: Case, joints: Joints, movers: dict[str, Passage], drawn: Tree, run: Run, field: str) -> None:
    """Join an end of a run to what it names."""
    system: DuctSystem = run.up
    end = named_end(case, system, run, field)
    own = f"{'start' if field == 'from_' else 'end'} {run.path}"
    if end is None:
        return
    if end.kind == "run":
        joints.join(own, f"{'end' if field == 'from_' else 'start'} {system.runs[end.name].path}")
    elif end.kind == "outlet":
        joints.join(own, f"at {system.outlets[end.name].path}")
    elif end.kind == "mover":
        mover = every_mover(case)[end.name]
        recovery = isinstance(mover, Fan) and mover.role == "recovery"
        outgoing = recovery and leads_outdoors(case, drawn, run) == (field == "from_")
        through = mover_passage(movers, mover, system, outgoing)
        joints.join(own, through.end if field == "from_" else through.start)
    elif end.kind == "filter":
        joints.join(own, f"{'after' if field == 'from_' else 'before'} {case.design.filters[end.name].path}")
    else:
        joints.join(own, OUTDOORS if end.is_outdoors or (end.kind == "place" and end.name != "conditioned") else ROOMS)


def every_mover(case: Case) -> dict[str, Mover]:
    """Everything that can move air through ducts, by name."""
    return {**case.design.hoods, **case.design.fans, **case.design.equipment}


def named_end(case: Case, system: DuctSystem, run: Run, field: str) -> End | None:
    """What an end of a run names; any fan or unit counts as a mover, not only the system's own."""
    end = end_of(case, system, run, "from_" if field == "from_" else "to")
    if end is not None and end.kind == "place" and end.name in every_mover(case):
        return End("mover", end.name)
    return end


def leads_outdoors(case: Case, drawn: Tree, run: Run) -> bool:
    """Whether a run at a recovery unit leads only outdoors."""
    if run.name in drawn.branches:
        return drawn.is_outdoors(drawn.branches[run.name])
    ends = [named_end(case, run.up, run, field) for field in ("from_", "to")]
    return any(end is not None and end.is_outdoors for end in ends)


def hang(joints: Joints, drawn: Tree, system: DuctSystem) -> None:
    """Join outlets that no run names to the run that they hang on."""
    for branch in drawn.branches.values():
        own = f"{'end' if branch.side == 'supply' else 'start'} {branch.run.path}"
        for name in branch.outlets:
            joints.join(own, f"at {system.outlets[name].path}")


def outlet_passage(outlet: Outlet, system: DuctSystem) -> Passage:
    """An outlet leads from its joint to the rooms, a grille that takes air back the other way."""
    joint = f"at {outlet.path}"
    ends = (ROOMS, joint) if is_return_outlet(outlet) else (joint, ROOMS)
    return Passage("outlet", outlet, *ends, system)


def filter_passages(
    case: Case, joints: Joints, movers: dict[str, Passage], drawn: Tree, system: DuctSystem
) -> list[Passage]:
    """Filters that runs of a system begin or end at; one without a run on a side stands at the mover or in a room."""
    before: dict[str, Run] = {}
    after: dict[str, Run] = {}
    for run in system.runs.values():
        for field, side in (("to", before), ("from_", after)):
            end = named_end(case, system, run, field)
            if end is not None and end.kind == "filter":
                side[end.name] = run
    mover = mover_passage(movers, mover_of(case, system), system, outgoing=False)
    found = []
    for name in dict.fromkeys((*before, *after)):
        filter_ = case.design.filters[name]
        found.append(Passage("filter", filter_, f"before {filter_.path}", f"after {filter_.path}", system))
        if name not in after:
            joints.join(found[-1].end, mover.start)
        elif name not in before:
            branch = drawn.branches.get(after[name].name)
            joints.join(found[-1].start, mover.end if branch is None or branch.side == "supply" else ROOMS)
    return found


def close_ends(joints: Joints, passages: list[Passage], mover: Passage) -> None:
    """Let a mover without ducts on a side draw from or blow into the place that its kind does."""
    unit, outgoing = mover.thing, mover.outgoing
    role = "recirculating" if isinstance(unit, Equipment) else unit.role if isinstance(unit, Fan) else "exhaust"
    into = OUTDOORS if role == "supply" or (role == "recovery" and not outgoing) else ROOMS
    out = OUTDOORS if role == "exhaust" or outgoing else ROOMS
    others = {joints.find(end) for each in passages if each is not mover for end in (each.start, each.end)}
    if joints.find(mover.start) not in others:
        joints.join(mover.start, into)
    if joints.find(mover.end) not in others:
        joints.join(mover.end, out)


def open_ends(joints: Joints, passages: list[Passage]) -> None:
    """Let runs that serve rooms without naming an outlet open into them."""
    met: dict[str, int] = {}
    for passage in passages:
        for end in (passage.start, passage.end):
            met[joints.find(end)] = met.get(joints.find(end), 0) + 1
    for passage in passages:
        if passage.kind == "run" and isinstance(passage.thing, Run) and passage.thing.serves:
            for end in (passage.end, passage.start):
                if met[joints.find(end)] == 1 and joints.find(end) not in HELD:
                    joints.join(end, ROOMS)
                    break
