"""A rectangular duct is flatter than four to one.

A flat duct has more wall for the same air: more friction, more heat lost, more sheet metal, and it drums. Four
to one is the usual end; wall stacks, which take the depth of their wall, are left out here.

Make it deeper and narrower for the same friction, or run two round ducts side by side.
"""

from checker.case import Case, quantity
from checker.design.airway import Airway
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_scope import ducts
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import Size, show_size

WALL_STACK = (0.0889 * (1.0 + 1e-9), 0.3683 * (1.0 + 1e-9))
"""m, 3 1/2 in by 14 1/2 in: what fits between two studs."""


def flat(case: Case) -> list[Airway]:
    """Ducts that are not round, wall stacks left out, and those whose size is to be decided."""
    return [
        duct
        for duct in ducts(case)
        if (duct.size is None and f"{duct.path}.size" in case.design.tbd)
        or (duct.size is not None and duct.size.shape != "round" and not is_wall_stack(duct.size))
    ]


def is_wall_stack(size: Size) -> bool:
    """Whether a duct fits between the studs of a wall."""
    return min(size.width, size.height) <= WALL_STACK[0] and max(size.width, size.height) <= WALL_STACK[1]


@quantity()
def inside_size(case: Case, duct: Airway) -> Size:
    """Inside size."""
    found: Size = case.get(duct, "size")
    return found


def check(duct: Airway, inside: Size, limit: float) -> Meets | Finding:
    """Compare the sides."""
    ratio = max(inside.width, inside.height) / min(inside.width, inside.height)
    numbers = {"duct": Num(duct_label(duct)), "size": Num(show_size(inside)), "ratio": Num(round(ratio, 2))}
    if ratio <= limit * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{duct} is {size}, a ratio of {ratio} to 1; {limit} to 1 is the usual end",
        at="size",
        help="make it deeper and narrower, or run round ducts side by side",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-12", name="aspect-ratio-too-great", severity="note", since="0.1",
    over=flat, needs=(inside_size,), limits=("aspect-ratio",), check=check, answers=("F50",),
    nothing="no rectangular or oval duct is described, wall stacks left out",
)  # fmt: skip
