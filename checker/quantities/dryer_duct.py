"""The exhaust duct of a clothes dryer: where it ends, and the length that it counts with its fittings."""

from collections.abc import Callable
from math import inf
from typing import Any

from checker.case import CannotJudge, Case, Missing, Worked, quantity
from checker.design.airway import Airway
from checker.design.hoods import Dryer
from checker.design.openings import Opening
from checker.physics.dryer_length import FITTING_ALLOWANCES, Elbow, developed_length
from checker.quantities.opening_kinds import THROUGH_THE_SHELL, of_kind, stated, uses
from checker.quantities.piece_shapes import uncounted_pieces
from checker.quantities.places import Span
from checker.units import parse

TERMINALS = frozenset({"dryer exhaust"})
TURNS = {"elbow-90": (90, 1), "elbow-45": (45, 1), "elbow-30": (45, 1), "elbow-180": (90, 2), "offset": (45, 2)}
WITHOUT_LENGTH = frozenset({
    "wall-cap", "roof-cap", "louver", "entry", "exit", "backdraft-damper", "boot", "reducer", "expansion",
})  # fmt: skip
MITERED = Elbow("mitered", 4, 90)
TIGHT = ("mitered", "4 in radius", "tight")
BY_RADIUS = {f"{radius} in radius": Elbow("smooth", radius, 90) for radius in (6, 8, 10)}
GENTLEST, SHARPEST_SMOOTH = BY_RADIUS["10 in radius"], BY_RADIUS["6 in radius"]


def is_ductless(dryer: Dryer) -> bool:
    """Whether a dryer needs no exhaust duct: it condenses, and nothing is drawn that would lead outdoors."""
    if dryer.kind == "heat pump":
        return dryer.duct is None and dryer.to is None
    return dryer.kind == "condensing"


def is_vented(case: Case, dryer: Dryer) -> bool:
    """The dryer condenses and has no exhaust."""
    return not is_ductless(dryer)


def is_connected(case: Case, dryer: Dryer) -> bool:
    """The dryer condenses, or only its duct is built for now."""
    return not is_ductless(dryer) and not dryer.duct_for_future


def burns_gas(dryer: Dryer) -> bool:
    """Whether a dryer burns gas."""
    return dryer.fuel in ("gas", "propane")


@quantity()
def duct(case: Case, dryer: Dryer) -> Airway | None:
    """A dryer's duct: its own, else the one run that ends at its terminal."""
    if dryer.duct is not None:
        return dryer.duct
    ends = {name for name, used in uses(case, case.design).items() if any(use.device is dryer for use in used)}
    runs = [run for system in case.design.ducts.values() for run in system.runs.values() if run.to in ends]
    return runs[0] if len(runs) == 1 else None


def the_duct(case: Case, dryer: Dryer, field: str) -> Airway:
    """A dryer's duct, of which a field is wanted. Raises Missing with the path of that field."""
    found = duct(case, dryer)
    if found is None:
        raise Missing(f"{dryer.path}.duct.{field}")
    return found


def duct_field(field: str, dimension: str = "") -> Worked[Dryer, Any]:
    """A quantity that is a field of the dryer's duct."""

    def read(case: Case, dryer: Dryer) -> Any:
        return case.get(the_duct(case, dryer, field), field)

    read.__name__ = field
    return Worked(read, dimension, f"duct.{field}", "given for the dryer's duct")


def duct_says(case: Case, dryer: Dryer, field: str) -> Any:
    """A field of the dryer's duct that need not be stated, None where it is not."""
    found = duct(case, dryer)
    return None if found is None else stated(case, found, field)


def duct_speaks_of(field: str) -> Callable[[Case, Dryer], bool]:
    """A condition: the dryer is vented and the file says something of this field of its duct."""

    def said(case: Case, dryer: Dryer) -> bool:
        """The dryer has no exhaust, or the design does not go into this detail of its duct."""
        airway = duct(case, dryer)
        return not is_ductless(dryer) and airway is not None and case.speaks_of(airway, field)

    return said


def transition_speaks_of(*fields: str) -> Callable[[Case, Dryer], bool]:
    """A condition: the dryer is connected and the file says something of one of these fields of its transition."""

    def said(case: Case, dryer: Dryer) -> bool:
        """The dryer condenses or is not there yet, or the design does not go into this detail of its transition."""
        if not is_connected(case, dryer) or f"{dryer.path}.transition" in case.design.stated_none:
            return False
        below = dryer.transition
        if below is None:
            return f"{dryer.path}.transition" in case.design.tbd
        return any(case.speaks_of(below, field) for field in fields)

    return said


@quantity()
def outlet(case: Case, dryer: Dryer) -> Opening | None:
    """The opening that a dryer ends in, None where it ends without one. Raises Missing where nothing is said."""
    for name, used in uses(case, case.design).items():
        if any(use.device is dryer and use.kind == "dryer exhaust" for use in used):
            return case.design.openings[name]
    alone = of_kind(case, TERMINALS)
    if case.maybe(dryer, "to") in (None, *THROUGH_THE_SHELL) and len(alone) == 1 and len(case.design.dryers) == 1:
        return alone[0]
    case.get(dryer, "to")
    return None


def terminals(case: Case) -> list[Opening]:
    """Dryer terminals; none where the design has none. Raises Missing where a dryer has one that is not drawn."""
    found = of_kind(case, TERMINALS)
    absent = [f"{each.path}.to" for each in case.design.dryers.values()
              if not is_ductless(each) and each.to in (None, *THROUGH_THE_SHELL)]  # fmt: skip
    if not found and absent:
        raise Missing(*(absent if case.stated("openings") else ["openings"]))
    return found


def drawn_terminals(case: Case) -> list[Opening]:
    """The dryer terminals that the design shows."""
    return of_kind(case, TERMINALS)


def dryers_of(case: Case, opening: Opening) -> list[Dryer]:
    """The dryers that end in a terminal."""
    return [each for each in case.design.dryers.values() if not is_ductless(each) and ends_in(case, each, opening)]


def ends_in(case: Case, dryer: Dryer, opening: Opening) -> bool:
    """Whether a dryer is known to end in a terminal."""
    try:
        return outlet(case, dryer) is opening
    except Missing:
        return False


def allowances(case: Case) -> dict[Elbow, float]:
    """The code's length for each kind of elbow, m."""
    table: dict[str, str] = case.limit("dryer-fitting-allowances")
    return {
        elbow: parse(table[f"{elbow.construction}-{elbow.radius_inches}-{elbow.angle}"], "length")
        for elbow in FITTING_ALLOWANCES
    }


def counted(case: Case, straight: float, pieces: dict[str, int], elbow: Elbow) -> float:
    """Straight length with its fittings, all elbows of one kind but those said to be mitered."""
    fittings = []
    for piece, number in pieces.items():
        if piece == "elbow-90-mitered":
            fittings.append((MITERED, number))
        elif piece in TURNS:
            angle, turns = TURNS[piece]
            fittings.append((elbow._replace(angle=angle), turns * number))
        elif piece not in WITHOUT_LENGTH:
            raise CannotJudge(f"the code's table gives no length for a {piece} in a dryer duct")
    return developed_length(straight, fittings, allowances(case))


@quantity()
def length_with_fittings(case: Case, dryer: Dryer) -> Span:
    """Length that a dryer's duct counts, m, at least and at most where the kind of its elbows is not known.

    By the maker's allowance where it is stated, else by the code's table. The transition is not counted.
    """
    airway = the_duct(case, dryer, "length")
    straight = float(case.get(airway, "length"))
    try:
        pieces: dict[str, int] = case.get(airway, "pieces")
    except Missing as gap:
        return Span(straight, inf, gap.paths)
    uncounted = uncounted_pieces(case, airway)
    if uncounted:
        return Span(straight, inf, tuple(uncounted))
    by_maker = None if dryer.by_maker is None else stated(case, dryer.by_maker, "elbow_allowance")
    if isinstance(by_maker, float):
        turns = sum(number * TURNS[piece][1] for piece, number in pieces.items() if piece in TURNS)
        length = straight + by_maker * (turns + pieces.get("elbow-90-mitered", 0))
        return Span(length, length)
    radius = stated(case, airway, "elbow_radius")
    if radius in BY_RADIUS:
        low = high = BY_RADIUS[str(radius)]
    elif radius in TIGHT:
        low = high = MITERED
    else:
        low, high = GENTLEST, SHARPEST_SMOOTH if radius == "smooth" else MITERED
    return Span(
        counted(case, straight, pieces, low), counted(case, straight, pieces, high), (f"{airway.path}.elbow_radius",)
    )


@quantity("length")
def greatest_by_maker(case: Case, dryer: Dryer) -> float | None:
    """Greatest length by the instructions of the dryer or its power ventilator; None where only the code counts."""
    maker = dryer.by_maker
    stated_by_maker = None if maker is None else case.maybe(maker, "greatest_length")
    if stated_by_maker is None and has_power_ventilator(case, dryer):
        raise Missing(f"{dryer.path}.by_maker.greatest_length")
    return None if stated_by_maker is None else float(stated_by_maker)


def has_power_ventilator(case: Case, dryer: Dryer) -> bool:
    """No power ventilator is drawn in the dryer's duct."""
    said = case.maybe(dryer, "power_ventilator")
    return said is not None and str(said).lower() not in ("none", "no")
