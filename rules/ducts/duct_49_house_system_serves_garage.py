"""A system that serves rooms also supplies air to the garage, or takes air from it.

A duct between garage and rooms brings exhaust gas, fuel vapor and, in a fire, smoke into the house. Carbon
monoxide from a car that idles for a minute stays for hours.

Heat a garage with a system of its own. Close the outlet, and take the garage off the duct system.
"""

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.ducts import DuctSystem
from checker.quantities.duct_exposure import house_air_systems
from checker.quantities.duct_scope import mover_or_none
from checker.quantities.return_air import inlets
from checker.quantities.room_uses import room_use
from checker.rule import Finding, Meets, Num, Rule


def is_garage(case: Case, place: str) -> bool:
    """Whether a room or place is a garage. Raises Missing for a room whose use nobody can tell."""
    room = case.design.rooms.get(place)
    return place == "garage" if room is None else room_use(case, room) == "garage"


@quantity()
def places_served(case: Case, system: DuctSystem) -> dict[str, str]:
    """Every place that the system blows air to or takes it from, with the path that says so."""
    found = {}
    for outlet in system.outlets.values():
        if outlet.room is None:
            raise Missing(path_of(outlet, "room"))
        found[outlet.room] = path_of(outlet, "room")
    for run in system.runs.values():
        known = {*system.outlets, *system.runs} - {run.name}
        for end, field in ((run.from_, "from"), (run.to, "to")):
            if end is not None and end not in known and (end in case.design.rooms or end == "garage"):
                found.setdefault(end, f"{run.path}.{field}")
        for name in run.serves:
            found.setdefault(name, f"{run.path}.serves")
    for inlet in inlets(case, case.design):
        if inlet.system is system or (inlet.unit is not None and inlet.unit is mover_or_none(case, system)):
            found.setdefault(str(inlet.place), inlet.path)
    return found


@quantity()
def garage_point(case: Case, system: DuctSystem) -> str:
    """Path of the first place in a garage; "" where there is none."""
    served = places_served(case, system)
    if not served:
        raise NotApplicable("nothing says which rooms it serves")
    garages = [path for place, path in served.items() if is_garage(case, place)]
    if garages and len(garages) == len(served):
        raise NotApplicable("it serves the garage alone")
    return garages[0] if garages else ""


def check(system: DuctSystem, point: str) -> Meets | Finding:
    """No air to or from the garage."""
    if not point:
        return Meets()
    return Finding(
        f"{system.name} serves rooms, and {{point}} joins it to the garage",
        at=point.removeprefix(f"{system.path}.") if point.startswith(f"{system.path}.") else "",
        help="take the garage off the system; heat it with a unit of its own",
        numbers={"point": Num(point.rpartition(".")[0].rpartition(".")[2])},
    )


RULE = Rule(
    code="DUCT-49", name="house-system-serves-garage", severity="correction", since="0.1",
    over=house_air_systems, needs=(garage_point,), cites=("garage-air",), check=check,
    nothing="no duct system heats or cools rooms", answers=("F41", "F36"),
)  # fmt: skip
