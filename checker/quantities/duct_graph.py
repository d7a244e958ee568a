"""The duct network of a system as a tree that hangs on its mover: sides, branches, outlets, and what is loose."""

from typing import Literal

from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.airway import Run
from checker.design.ducts import DuctSystem, Outlet
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.hoods import Hood
from checker.quantities.duct_joints import End, links, placed
from checker.record import Record

Side = Literal["supply", "return"]
Mover = Equipment | Fan | Hood
DUCTED_KINDS = frozenset({"slim duct unit", "air handler", "furnace"})
RETURN_KINDS = frozenset({"return grille", "filter grille", "exhaust grille"})


class Branch(Record):
    """A run in its place in the tree.

    nearer: the run between it and the mover, None where it joins the mover itself. farther: the runs beyond it.
    end: what stands at its far end, where that is no run. filters: filters that stand at its ends.
    """

    run: Run
    side: Side
    nearer: str | None
    farther: tuple[str, ...]
    outlets: tuple[str, ...]
    end: End | None
    filters: tuple[str, ...]

    @property
    def is_dead_end(self) -> bool:
        """Whether nothing says where it leads."""
        return not (self.farther or self.outlets or self.end or self.run.serves)


class Tree(Record):
    """All branches by name of their run; `loose` runs join no mover, `rings` are reached by two ways."""

    branches: dict[str, Branch]
    loose: tuple[Run, ...]
    loose_outlets: tuple[Outlet, ...]
    rings: tuple[str, ...]

    def leaves(self, side: Side) -> list[Branch]:
        """The last branches of a side: those with an outlet, a room or a place at their end."""
        return [each for each in self.branches.values() if each.side == side and not each.farther]

    def way(self, branch: Branch) -> list[Branch]:
        """The branches from the mover to this one, itself included."""
        found = [branch]
        while found[0].nearer is not None:
            found.insert(0, self.branches[found[0].nearer])
        return found

    def is_outdoors(self, branch: Branch) -> bool:
        """Whether a branch leads only outdoors: an intake or a discharge."""
        if branch.farther:
            return all(self.is_outdoors(self.branches[name]) for name in branch.farther)
        return branch.end is not None and branch.end.is_outdoors and not branch.outlets


@quantity()
def mover_of(case: Case, system: DuctSystem) -> Mover:
    """What moves the air of a system: as stated, by the system's own name, or the one that its runs name."""
    known: dict[str, Mover] = {**case.design.hoods, **case.design.fans, **case.design.equipment}
    named = case.maybe(system, "mover")
    if named is None and system.name in known:
        named = system.name
    if named is None:
        ends = {end for run in system.runs.values() for end in (run.from_, run.to) if end in known}
        ends -= {*system.runs, *system.outlets}
        named = ends.pop() if len(ends) == 1 else the_only_mover(case)
    if named not in known:
        raise Missing(path_of(system, "mover"))
    return known[named]


def the_only_mover(case: Case) -> str | None:
    """The one thing in the whole design that can move air through ducts; None where there are none or several."""
    units = [name for name, unit in case.design.equipment.items() if unit.kind in DUCTED_KINDS]
    movers = [*units, *case.design.fans, *case.design.hoods]
    return movers[0] if len(movers) == 1 and len(case.design.ducts) == 1 else None


def is_return_outlet(outlet: Outlet) -> bool:
    """Whether air goes from the room into this outlet."""
    return outlet.kind in RETURN_KINDS


def takes_all_back(case: Case, outlet: Outlet) -> bool:
    """Whether a grille is the only way back to a unit that takes all its air by ducts."""
    system: DuctSystem = outlet.up
    grilles = [each for each in system.outlets.values() if is_return_outlet(each)]
    if grilles != [outlet] or system.return_from or outlet.kind == "exhaust grille":
        return False
    try:
        mover = mover_of(case, system)
    except Missing:
        return False
    if not isinstance(mover, Equipment) or mover.return_location is not None or mover.outdoor_air is not None:
        return False
    ends = {run.from_ for run in system.runs.values() if run.to == mover.name}
    return not ends & {*case.design.rooms, *case.design.openings}


def end_of(case: Case, system: DuctSystem, run: Run, field: Literal["from_", "to"]) -> End | None:
    """What a run's `from` or `to` names; None where it is not stated. A name may be that of several things."""
    name = case.maybe(run, field)
    if name is None:
        return None
    outlet = system.outlets.get(name)
    if outlet is not None and is_return_outlet(outlet) == (field == "from_"):
        return End("outlet", name)
    if name in system.runs and name != run.name:
        return End("run", name)
    if outlet is not None:
        return End("outlet", name)
    if name == mover_of(case, system).name:
        return End("mover", name)
    design = case.design
    for kind, section in (("filter", design.filters), ("opening", design.openings), ("room", design.rooms)):
        if name in section:
            return End(kind, name)
    return End("place", name)


@quantity()
def sketch(case: Case, system: DuctSystem) -> Tree:
    """The tree as far as the file tells it, loose parts listed apart."""
    ends = {
        name: (end_of(case, system, run, "from_"), end_of(case, system, run, "to"))
        for name, run in system.runs.items()
    }
    joints = links(ends)
    supply, rings = placed(joints.starts, joints.pairs)
    back, more = placed(joints.stops, [(b, a) for a, b in joints.pairs])
    rings = [*rings, *more, *(name for name in supply if name in back)]
    branches: dict[str, Branch] = {}
    sides: list[tuple[Side, dict[str, str | None]]] = [("supply", supply), ("return", back)]
    for side, nearer in sides:
        for name, toward in nearer.items():
            far = ends[name][1 if side == "supply" else 0]
            beyond = tuple(other for other, its in nearer.items() if its == name)
            if far is not None and (far.kind in ("run", "mover") or (far.kind == "filter" and beyond)):
                far = None
            filters = tuple(end.name for end in ends[name] if end is not None and end.kind == "filter")
            outlets = (far.name,) if far is not None and far.kind == "outlet" else ()
            branches[name] = Branch(system.runs[name], side, toward, beyond, outlets, far, filters)
    loose = tuple(run for name, run in system.runs.items() if name not in branches)
    hung = hang_outlets(system, branches)
    held = {name for branch in hung.values() for name in branch.outlets}
    loose_outlets = tuple(
        outlet for name, outlet in system.outlets.items() if name not in held and outlet.kind != "transfer grille"
    )
    return Tree(hung, loose, loose_outlets, tuple(dict.fromkeys(rings)))


def hang_outlets(system: DuctSystem, branches: dict[str, Branch]) -> dict[str, Branch]:
    """Hang outlets that no run names on the run that serves their room, or on the only run that is open."""
    hung = dict(branches)
    taken = {name for branch in branches.values() for name in branch.outlets}
    sides: tuple[Side, Side] = ("supply", "return")
    for side in sides:
        free = [
            outlet
            for name, outlet in system.outlets.items()
            if name not in taken and outlet.kind != "transfer grille" and is_return_outlet(outlet) == (side == "return")
        ]
        own = [branch for branch in branches.values() if branch.side == side]
        open_ended = [branch for branch in own if branch.is_dead_end]
        for outlet in free:
            served = [branch for branch in own if outlet.room is not None and serves(branch, outlet.room)]
            holder = served if served else open_ended if len(open_ended) == 1 else []
            if len(holder) == 1:
                name = holder[0].run.name
                hung[name] = hung[name]._replace(outlets=(*hung[name].outlets, outlet.name))
    return hung


def serves(branch: Branch, room: str) -> bool:
    """Whether a last branch leads to a room."""
    return (branch.end is not None and branch.end == End("room", room)) or room in branch.run.serves


@quantity()
def tree(case: Case, system: DuctSystem) -> Tree:
    """The tree of a system. Raises Missing for ends not stated, CannotJudge for rings and runs that join nothing."""
    found = sketch(case, system)
    if not system.runs:
        raise Missing(path_of(system, "runs"))
    absent = []
    for run in found.loose:
        if run.from_ not in system.runs and run.to not in system.runs:
            absent += [path_of(run, field) for field in ("from_", "to") if getattr(run, field) is None]
    if absent:
        raise Missing(*absent)
    if found.rings:
        raise CannotJudge(f"{', '.join(found.rings)} can be reached from the mover by two ways: the runs are no tree")
    if found.loose:
        raise CannotJudge(f"{', '.join(run.name for run in found.loose)} is not joined to the mover")
    return found
