"""Return air is taken from a closet.

A closet is closed and full: the return pulls against a shut door, and what is stored there, from shoes to paint,
is shared with the house. Until the 2021 edition no return is taken from closets. The 2024 edition allows up to
30 cfm for the closet itself, with 1-1/2 in under its door, or a louver or grille of 30 in2.

Move the return to the room or hall outside the closet.
"""


from checker.case import Case, Missing, either, path_of, quantity
from checker.design.fields import Airflow
from checker.quantities.duct_flow import outlet_flow
from checker.quantities.return_air import Inlet, inlets, use_of
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Closet(Record):
    """Return air from a closet in m3/s (None where it makes no difference), and whether its door lets air in."""

    flow: Airflow | None
    is_open: bool


def return_inlets(case: Case) -> list[Inlet]:
    """All places of return air."""
    return inlets(case, case.design)


def in_closet(case: Case, inlet: Inlet) -> bool:
    """It is in no closet."""
    return use_of(case, inlet) == "closet"


@quantity()
def closet(case: Case, inlet: Inlet) -> Closet:
    """What is taken from the closet and how air gets in. Raises Missing."""
    if case.limit("closet-return") <= 0.0:
        return Closet(None, False)
    room = case.design.rooms[str(inlet.place)]
    routes = [lambda: float(case.get(room, "return_"))]
    if inlet.outlet is not None:
        outlet = inlet.outlet
        routes.insert(0, lambda: outlet_flow(case, outlet))
    flow = either(*routes)
    if room.door is None:
        raise Missing(f"{path_of(room, 'door')}.undercut")
    undercut, area = case.maybe(room.door, "undercut"), case.maybe(room.door, "transfer_area")
    if undercut is None and area is None:
        raise Missing(path_of(room.door, "undercut"))
    enough = (undercut or 0.0) >= case.limit("closet-undercut") or (area or 0.0) >= case.limit("closet-transfer")
    return Closet(flow, enough)


def check(inlet: Inlet, found: Closet, most: float) -> Meets | Finding:
    """None at all, or a little with a way for air."""
    numbers = {"inlet": Num(inlet.name), "room": Num(inlet.place or ""), "flow": Num(found.flow or 0.0, "airflow")}
    at = "room" if inlet.outlet is not None else ""
    if found.flow is None:
        return Finding(
            "{inlet} takes return air from {room}, which is a closet",
            at=at,
            help="move the return to the room or hall outside the closet",
            numbers=numbers,
        )
    if found.flow > most * (1.0 + 1e-9):
        return Finding(
            "{inlet} takes {flow} of return air from {room}, a closet, more than {limit}",
            at="airflow" if inlet.outlet is not None else at,
            help="take {limit} or less there, or move the return out of the closet",
            numbers=numbers,
        )
    if not found.is_open:
        return Finding(
            "{inlet} takes return air from {room}, a closet whose door lets too little air in",
            at=at,
            help="undercut its door by 1-1/2 in, or give it a louver or grille of 30 in2 or more",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="DUCT-47", name="return-from-closet", severity="correction", since="0.1",
    over=return_inlets, when=in_closet, needs=(closet,), limits=("closet-return",), check=check,
    nothing="nothing says where return air is taken", answers=("F39", "F36"),
)  # fmt: skip
