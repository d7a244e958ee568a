"""A dryer's exhaust duct close to the face of the framing has no steel plates.

A nail or screw for the wallboard goes through the duct; lint collects on its tip and moist air leaks into the
wall.

The usual cause is a duct in a wall that is just deep enough for it. Put steel plates on the framing where the
duct is nearer to its face than an inch and a quarter, reaching 2 in past the plates above and below.
"""

from checker import each
from checker.case import Case, Missing, quantity
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import duct, duct_says, is_ductless, the_duct
from checker.rule import Finding, Meets, Num, Rule

FRAMED = frozenset({"exterior wall", "chase", "conditioned", "floor over unconditioned", "roof"})


@quantity()
def has_plates(case: Case, dryer: Dryer) -> bool | None:
    """Whether steel plates protect the duct; None where it is not said."""
    plates = duct_says(case, dryer, "nail_plates")
    return None if plates is None else bool(plates)


@quantity("length")
def edge(case: Case, dryer: Dryer) -> float | None:
    """Distance of the duct from the framing's face, m; not asked where plates protect it."""
    if has_plates(case, dryer):
        return None
    return float(case.get(the_duct(case, dryer, "framing_edge"), "framing_edge"))


def runs_in_framing(case: Case, dryer: Dryer) -> bool:
    """The dryer has no exhaust, or the design does not go into how far its duct is from the framing's face."""
    airway = duct(case, dryer)
    if is_ductless(dryer) or airway is None:
        return False
    if case.speaks_of(airway, "framing_edge"):
        return True
    elsewhere = bool(airway.location) and not FRAMED & set(airway.location)
    return case.speaks_of(airway, "nail_plates") and not elsewhere


def check(dryer: Dryer, plates: bool | None, distance: float | None, least: float) -> Meets | Finding:
    """Plates, or enough distance."""
    if distance is None or distance >= least:
        return Meets()
    if plates is None:
        raise Missing(f"{dryer.path}.duct.nail_plates")
    return Finding(
        "this dryer's duct is {distance} from the face of the framing, nearer than {limit}, without steel plates",
        at="duct.nail_plates", help="put steel plates of 0.062 in over the framing there",
        numbers={"distance": Num(distance, "length")},
    )  # fmt: skip


RULE = Rule(
    code="DRY-10", name="dryer-duct-open-to-nails", severity="correction", since="0.1",
    over=each.dryer, when=runs_in_framing, needs=(has_plates, edge), limits=("dryer-duct-framing-edge",),
    check=check, nothing="the design has no clothes dryer", answers=("E20",),
)  # fmt: skip
