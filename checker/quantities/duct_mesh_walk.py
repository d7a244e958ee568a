"""What shares its air in a mesh of ducts: the part around one mover, whether all of it hangs together, names of its joints."""

from collections.abc import Sequence

from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.airway import Run
from checker.design.ducts import DuctSystem
from checker.quantities.duct_mesh import HELD, Passage, mesh


def part_around(passages: list[Passage], center: Passage) -> list[Passage]:
    """The passages that share their air with one of them: joined to it by joints whose pressure is not held."""
    around: dict[str, list[Passage]] = {}
    for passage in passages:
        for joint in (passage.start, passage.end):
            if joint not in HELD:
                around.setdefault(joint, []).append(passage)
    found = {center.key: center}
    waiting = [center]
    while waiting:
        passage = waiting.pop()
        for joint in (passage.start, passage.end):
            for other in around.get(joint, []):
                if other.key not in found:
                    found[other.key] = other
                    waiting.append(other)
    return [each for each in passages if each.key in found]


def check_joined(passages: list[Passage], part: list[Passage]) -> None:
    """Raise Missing or CannotJudge for runs and outlets that hang nowhere, and for runs that bite their own tail."""
    movers = [each for each in passages if each.kind == "mover"]
    reached = {each.key for mover in movers for each in part_around(passages, mover)}
    loose = [each for each in passages if each.key not in reached and each.kind in ("run", "outlet")]
    absent = [
        path_of(each.thing, field)
        for each in loose
        if isinstance(each.thing, Run)
        for field in ("from_", "to")
        if getattr(each.thing, field) is None
    ]
    dead = dead_ends(part)
    absent += [path_of(run, field) for run, field in dead if getattr(run, field) is None]
    if absent:
        raise Missing(*absent)
    if loose or dead:
        names = dict.fromkeys([*(each.name for each in loose), *(run.name for run, _ in dead)])
        raise CannotJudge(f"{', '.join(names)} is not joined to the mover")
    bitten = [each.name for each in part if each.start == each.end]
    if bitten:
        raise CannotJudge(f"{', '.join(bitten)} begins and ends at the same joint")


@quantity()
def closes_rings(case: Case, system: DuctSystem) -> bool:
    """Whether runs that are reached by two ways close a ring of ducts, and none begins and ends at one joint."""
    return all(each.start != each.end for each in mesh(case, [system]) if each.kind == "run")


def has_ring(passages: Sequence[Passage]) -> bool:
    """Whether air has two ways between joints: as many passages between them as joints, or more."""
    joints = {joint for each in passages for joint in (each.start, each.end)} - set(HELD)
    return len([each for each in passages if each.start not in HELD and each.end not in HELD]) >= len(joints)


def dead_ends(part: list[Passage]) -> list[tuple[Run, str]]:
    """Runs with an end that leads nowhere, and the field that would tell."""
    met: dict[str, int] = {}
    for each in part:
        for joint in (each.start, each.end):
            met[joint] = met.get(joint, 0) + 1
    return [
        (each.thing, field)
        for each in part
        if isinstance(each.thing, Run)
        for joint, field in ((each.start, "from_"), (each.end, "to"))
        if met[joint] == 1 and joint not in HELD
    ]


def joint_names(part: list[Passage]) -> dict[str, str]:
    """What a reader calls the joints: the run that alone ends there, else that alone begins there, else both."""
    names = {joint: joint for joint in HELD}
    for each in part:
        for joint in (each.start, each.end):
            if joint in names:
                continue
            ending = [one.name for one in part if one.end == joint and one.kind == "run"]
            starting = [one.name for one in part if one.start == joint and one.kind == "run"]
            movers = [one for one in part if one.kind == "mover" and joint in (one.start, one.end)]
            if movers:
                names[joint] = f"{movers[0].name} {'inlet' if movers[0].start == joint else 'outlet'}"
            elif len(ending) == 1:
                names[joint] = f"end of {ending[0]}"
            elif len(starting) == 1:
                names[joint] = f"start of {starting[0]}"
            else:
                names[joint] = f"joint of {', '.join([*ending, *starting][:2]) or each.name}"
    return names
