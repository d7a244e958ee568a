"""A run or outlet is not joined to the fan, or is joined twice.

Every run leads away from the fan or back to it, from one end to the other. A run that begins at a run which does
not exist on its side, an outlet that nothing feeds, or two ways to the same branch mean that the sketch and the
house will differ. Nothing beyond such a joint can be sized.

Name the run, outlet, fan, room or opening at both of its ends (`from`, `to`).
"""

from checker.case import Case, Missing, quantity
from checker.design.airway import Run
from checker.design.ducts import Outlet
from checker.quantities.duct_flow import system_of
from checker.quantities.duct_graph import Tree, is_return_outlet, sketch
from checker.quantities.duct_mesh_walk import closes_rings
from checker.quantities.duct_scope import systems
from checker.rule import Finding, Meets, Num, Rule


def pieces(case: Case) -> list[Run | Outlet]:
    """Runs and outlets of systems that have runs."""
    found: list[Run | Outlet] = []
    for system in systems(case):
        if system.runs:
            outlets = [each for each in system.outlets.values() if each.kind != "transfer grille"]
            found += [*system.runs.values(), *outlets]
    return found


@quantity()
def joint(case: Case, piece: Run | Outlet) -> str:
    """How a run or outlet hangs on its system: joined, loose or twice."""
    drawn = sketch(case, system_of(piece))
    if isinstance(piece, Outlet):
        return outlet_joint(case, drawn, piece)
    if piece.name in drawn.rings:
        return "joined" if closes_rings(case, system_of(piece)) else "twice"
    if piece not in drawn.loose:
        if drawn.branches[piece.name].is_dead_end:
            far = "to" if drawn.branches[piece.name].side == "supply" else "from_"
            if getattr(piece, far) is None:  # else it ends at a run that another way reaches first: a ring
                raise Missing(f"{piece.path}.{far.rstrip('_')}")
        return "joined"
    if piece.from_ is None or piece.to is None:
        fields = (("from", piece.from_), ("to", piece.to))
        raise Missing(*(f"{piece.path}.{field}" for field, end in fields if end is None))
    return "loose"


def outlet_joint(case: Case, drawn: Tree, outlet: Outlet) -> str:
    """Whether an outlet hangs on a run; where runs still lead nowhere it may be one of theirs."""
    if outlet not in drawn.loose_outlets:
        return "joined"
    open_ended = [f"{each.run.path}.to" for each in drawn.branches.values() if each.is_dead_end]
    open_ended += [f"{run.path}.to" for run in drawn.loose if run.to is None]
    if open_ended:
        raise Missing(*open_ended)
    return "loose"


def check(piece: Run | Outlet, found: str) -> Meets | Finding:
    """Judge the joint."""
    numbers = {"piece": Num(piece.name), "system": Num(system_of(piece).name)}
    if found == "joined":
        return Meets(numbers)
    if found == "twice":
        return Finding(
            "{piece} can be reached from the fan of {system} by two ways",
            at="from",
            help="let it begin at one run only, or name the second run differently",
            numbers=numbers,
        )
    if not isinstance(piece, Outlet):
        what, remedy = "run {piece} is not joined to the fan", "name what is at both of its ends"
    elif is_return_outlet(piece):
        what, remedy = "grille {piece} is joined to no run", "name it as `from` of its run"
    else:
        what, remedy = "outlet {piece} is fed by no run", "name it as `to` of its run"
    return Finding(f"{what} of {{system}}", help=remedy, numbers=numbers)


RULE = Rule(
    code="DUCT-28", name="run-not-joined", severity="caution", since="0.1",
    over=pieces, needs=(joint,), cites=("duct-design-method",), check=check,
    nothing="no duct system with runs is described",
)  # fmt: skip
