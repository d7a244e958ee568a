"""Ventilation air is drawn from a garage, attic, crawl space or soffit instead of from outdoors.

Garage air carries exhaust with carbon monoxide and fuel vapor, crawl space air carries damp and soil gas, attic
and soffit air carries dust, heat and what bath fans blow there. A fan spreads it through the house.

The usual cause is a duct that ends short of the wall, or an intake grille in a vented soffit. Lead the duct all
the way to a hood in the outer wall or the roof. Until a garage intake is closed, do not run the fan.
"""


from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.quantities.opening_kinds import OUTDOOR_INTAKES, drivers_of_intakes, kind, known_intakes
from checker.quantities.surroundings import NOT_OUTDOORS, place_of
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

UNFIT = NOT_OUTDOORS - {"room", "conditioned"}


class Origin(Record):
    """Where one intake draws from; `at` is the field that says so."""

    path: str
    name: str
    at: str
    place: str | None


def origins(case: Case) -> list[Origin]:
    """Where each supply fan, recovery unit, outdoor-air duct and intake draws its air from."""
    found = []
    for device in drivers_of_intakes(case):
        named = list(device.from_) if isinstance(device, Fan) else []
        if isinstance(device, Equipment) and device.outdoor_air is not None and device.outdoor_air.opening:
            named = [device.outdoor_air.opening]
        places = [place_of(case, name, soffit_face="soffit") for name in named]
        if isinstance(device, Fan) and device.role == "recovery":
            places = [place for place in places if place not in ("basement", "indoors")]
        unfit = next((place for place in places if place in UNFIT), None)
        field = "from" if isinstance(device, Fan) else "outdoor_air.opening"
        found.append(Origin(device.path, device.name, field, unfit or (places[0] if places else None)))
    if not found:
        for intake in known_intakes(case, OUTDOOR_INTAKES - {"combined intake and exhaust"}):
            assert kind(case, intake)
            found.append(Origin(intake.path, intake.name, "into", place_of(case, intake.name, soffit_face="soffit")))
    return found


@quantity()
def origin(case: Case, node: Origin) -> str:
    """The place that an intake draws from."""
    if node.place is None or f"{node.path}.{node.at}" in case.design.tbd:
        raise Missing(f"{node.path}.{node.at}")
    return node.place


def check(node: Origin, place: str) -> Meets | Finding:
    """Only the outdoors is fit."""
    if place not in UNFIT:
        return Meets()
    return Finding(
        "{name} draws ventilation air from the {origin}, not from outdoors", at=node.at,
        help="lead the intake duct to a hood in the outer wall or the roof", numbers={"name": Num(node.name)},
    )  # fmt: skip


RULE = Rule(
    code="OPEN-15", name="intake-not-from-outdoors", severity="correction", since="0.1",
    over=origins, needs=(origin,), cites=("intake-from-outdoors",), check=check,
    nothing="nothing in the design takes in outdoor air", answers=("D13",),
)  # fmt: skip
