"""A joint of round metal duct has fewer screws or rivets than it needs.

Sealant closes a joint, screws hold it. A joint with one or two screws opens like a hinge when somebody leans on
the duct, and the mastic cracks. Three screws equally spaced, with the crimp lapped an inch or more, keep it
together.

Note three sheet-metal screws per joint on the drawing.
"""

from checker.case import CannotJudge, Case, path_of, quantity
from checker.design.airway import Run
from checker.quantities.duct_scope import runs
from checker.quantities.duct_sets import METALS, fasteners
from checker.rule import Finding, Meets, Num, Rule


def round_metal_runs(case: Case) -> list[Run]:
    """Runs of round metal duct whose joints are described, or to be decided."""
    found = []
    for run in runs(case):
        described = run.joints is not None or path_of(run, "joints") in case.design.tbd
        if described and run.material in METALS and (run.size is None or run.size.shape == "round"):
            found.append(run)
    return found


@quantity()
def fastener_count(case: Case, run: Run) -> float:
    """Screws or rivets of each joint."""
    text = str(case.get(run, "joints"))
    found = fasteners(text)
    if found is None:
        raise CannotJudge(f"`{text}` does not say how many screws or rivets a joint has")
    return float(found)


def check(run: Run, found: float, least: float) -> Meets | Finding:
    """Compare the count with the least."""
    numbers = {"found": Num(int(found)), "least": Num(int(least))}
    if found >= least:
        return Meets(numbers)
    return Finding(
        f"joints of {run.name} have {{found}} screws or rivets, fewer than {{least}}",
        at="joints",
        help="fasten each joint with {least} sheet-metal screws or rivets, equally spaced",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-32", name="crimp-joint-loosely-fastened", severity="correction", since="0.1",
    over=round_metal_runs, needs=(fastener_count,), limits=("crimp-joint-fasteners",), check=check,
    nothing="no joints of round metal duct are described", answers=("F11",),
)  # fmt: skip
