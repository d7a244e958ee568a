"""A duct is narrower than the one beyond it, although it carries at least as much air.

Seen from the fan, ducts get smaller as air leaves them. A run that is wider than the one which feeds it gains
nothing: the narrow piece sets the pressure. Mostly a size was changed in one place and not in the other.

Make the narrow piece at least as large as the one beyond it, or the far one smaller. Flexible duct a size larger
than the metal that feeds it is left out: it makes up for its rougher wall.
"""


from checker.case import Case, quantity
from checker.design.airway import Run
from checker.quantities.duct_velocity import trees
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import Size, equivalent_diameter, show_size


class Joint(Record):
    """A run and the one beyond it; `path` is the nearer one's joint with it."""

    path: str
    name: str
    near: Run
    far: Run


def told(case: Case, run: Run) -> bool:
    """Whether the file gives the size of a run, or leaves it to be decided."""
    return run.size is not None or f"{run.path}.size" in case.design.tbd


def joints(case: Case) -> list[Joint]:
    """Every sized run with the run that feeds it, or that it feeds on the return side."""
    found = [
        Joint(branch.run.path, branch.run.name, drawn.branches[branch.nearer].run, branch.run)
        for _, drawn in trees(case)
        for branch in drawn.branches.values()
        if branch.nearer is not None
    ]
    return [joint for joint in found if told(case, joint.near) and told(case, joint.far)]


@quantity()
def near_size(case: Case, joint: Joint) -> Size:
    """Size of the run nearer to the fan."""
    found: Size = case.get(joint.near, "size")
    return found


@quantity()
def far_size(case: Case, joint: Joint) -> Size:
    """Size of the run beyond."""
    found: Size = case.get(joint.far, "size")
    return found


def check(joint: Joint, near: Size, far: Size, tolerance: float) -> Meets | Finding:
    """Compare the diameters that give equal friction, to within what counts as the same."""
    numbers = {
        "near": Num(joint.near.name),
        "far": Num(joint.far.name),
        "near_size": Num(show_size(near)),
        "far_size": Num(show_size(far)),
    }
    rougher = joint.far.material == "flexible" and joint.near.material != "flexible"
    if rougher or equivalent_diameter(near) >= (1.0 - tolerance) * equivalent_diameter(far):
        return Meets(numbers)
    return Finding(
        "{near} is {near_size} and carries all the air of {far}, which is {far_size}",
        at="size",
        help="make {near} at least {far_size}, or {far} no larger than {near_size}",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-19", name="duct-narrower-near-the-fan", severity="note", since="0.1",
    over=joints, needs=(near_size, far_size), limits=("same-duct-size",), cites=("available-static",),
    check=check, answers=("F42",), nothing="no run follows another",
)  # fmt: skip
