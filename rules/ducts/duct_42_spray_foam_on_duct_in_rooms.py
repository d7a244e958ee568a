"""A duct is insulated with spray foam where the code does not allow it.

Coverings of ducts are to smoke little when they burn; spray polyurethane foam smokes much. The code allows it on
ducts in attics and crawl spaces only, with a flame spread of 25 and a smoke index of 450 at most and an ignition
barrier over it.

Use duct wrap or board elsewhere.
"""

from checker.case import Case, given, path_of, quantity
from checker.design.airway import Run
from checker.quantities.duct_scope import systems
from checker.quantities.room_uses import room_use
from checker.rule import Finding, Meets, Num, Rule


def foamed_runs(case: Case) -> list[Run]:
    """Runs whose kind of insulation is stated or to be decided."""
    runs = [run for system in systems(case) for run in system.runs.values()]
    told = [run for run in runs if run.insulation_kind is not None]
    return told + [run for run in runs if path_of(run, "insulation_kind") in case.design.tbd]


@quantity()
def uses(case: Case, run: Run) -> tuple[str, ...]:
    """What the places are that it passes."""
    rooms = case.design.rooms
    places = case.get(run, "location")
    return tuple(room_use(case, rooms[place]) if place in rooms else place for place in places)


def check(run: Run, kind: str, places: tuple[str, ...]) -> Meets | Finding:
    """Foam in attics and crawl spaces only."""
    elsewhere = [place for place in places if place not in ("attic", "crawl space")]
    if kind != "spray foam" or not elsewhere:
        return Meets()
    return Finding(
        f"{run.name} is covered with spray foam in a place other than an attic or crawl space: {{where}}",
        at="insulation_kind",
        help="use duct wrap or board there; foam in attics and crawl spaces needs an ignition barrier",
        numbers={"where": Num(", ".join(dict.fromkeys(elsewhere)))},
    )


RULE = Rule(
    code="DUCT-42", name="spray-foam-on-duct-in-rooms", severity="correction", since="0.1",
    over=foamed_runs, needs=(given("insulation_kind"), uses), cites=("spray-foam-on-ducts",), check=check,
    nothing="nothing is said of what the insulation of ducts is", answers=("F15",),
)  # fmt: skip
