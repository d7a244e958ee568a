"""Where refrigerant lines run hidden: under a roof deck, in framing, and how far from nails."""

from checker.case import Case, Missing, path_of
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.room_uses import room_use


def nail_gap(case: Case, line: RefrigerantLine, field: str, least: float) -> float | None:
    """Distance from where nails go in, m; None where steel plates stand between. Raises Missing where both leave it open."""
    plated = case.maybe(line, "nail_plates")
    if plated:
        return None
    gap = case.maybe(line, field)
    if gap is None:
        raise Missing(path_of(line, field))
    if plated is None and gap < least:
        raise Missing(path_of(line, "nail_plates"))
    return float(gap)


def near_deck(case: Case, line: RefrigerantLine) -> bool:
    """It does not run in an attic or roof."""
    if case.maybe(line, "deck_clearance") is not None:
        return True
    places = [place if place not in case.design.rooms else room_use(case, case.design.rooms[place])
              for place in case.get(line, "location")]  # fmt: skip
    return "attic" in places or "roof" in places


def in_framing(case: Case, line: RefrigerantLine) -> bool:
    """It is not known to run inside framed walls, floors or ceilings."""
    stated = case.maybe(line, "concealed")
    if stated is not None:
        return bool(stated)
    if case.maybe(line, "edge_distance") is not None:
        return True
    if not line.location:
        raise Missing(path_of(line, "location"))
    return "exterior wall" in line.location or "floor over unconditioned" in line.location
