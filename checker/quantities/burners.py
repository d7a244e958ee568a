"""What burns inside the air barrier, how easily its draft is upset, and what counts for make-up air."""


from checker.case import Case, Missing, gather, path_of, quantity
from checker.design.combustion import Burner
from checker.design.fields import HousePressure
from checker.design.hoods import Hood
from checker.design.rooms import Room
from checker.quantities.room_uses import room_use
from checker.record import Record

NOT_BURNING = ("electric", "induction")
SEALED = ("direct vent", "sealed")
ASSISTED = ("fan-assisted", "induced draft", "power vent")
ATMOSPHERIC = ("natural draft", "open")
SOLID = ("wood", "pellet")
FUELS = ("gas", "propane", "oil", "wood", "pellet")
OUTSIDE = ("outdoors", "garage", "exterior wall", "roof", "underground", "slab", "floor over unconditioned")
INSIDE = ("conditioned", "chase", "soffit", "basement")


class Sensitive(Record):
    """A burner and the depressurization that it bears: Pa, and the codebook entry that says so."""

    burner: Burner
    path: str
    name: str
    entry: str
    limit: HousePressure


@quantity()
def burners(case: Case, design: object) -> list[Burner]:
    """The appliances of the `combustion` section that burn something. Raises Missing where it is not stated."""
    if not case.stated("combustion"):
        raise Missing("combustion")
    return [burner for burner in case.design.combustion.values() if case.maybe(burner, "fuel") not in NOT_BURNING]


@quantity()
def draft(case: Case, burner: Burner) -> str:
    """How its gases leave; a range leaves them in the room, a dryer has its own fan, a wood fire an open chimney."""
    stated = case.maybe(burner, "draft")
    if stated == "natural draft" and burner.fuel in SOLID and burner.kind in ("fireplace", "stove"):
        return "open"
    if stated is not None:
        return str(stated)
    if burner.kind == "range":
        return "unvented"
    if burner.kind == "dryer":
        return "power vent"
    return str(case.get(burner, "draft"))


@quantity()
def is_inside(case: Case, burner: Burner) -> bool:
    """Whether it stands in the air that the fans of the house move: inside the air barrier, not sealed off."""
    if case.maybe(burner, "room_sealed"):
        return False
    stated = case.maybe(burner, "inside_air_barrier")
    if stated is not None:
        return bool(stated)
    place = case.maybe(burner, "location")
    if place is None and burner.kind == "range":
        return True  # where people cook
    room = case.design.rooms.get(str(place))
    inside = within_air_barrier(case, str(place) if room is None else room)
    if inside is None:
        below = {"attic": "house.attic", "crawl space": "house.crawl_space"}.get(str(place) if room is None else "")
        raise Missing(below or path_of(burner, "inside_air_barrier"))
    return inside


def within_air_barrier(case: Case, place: "str | Room") -> bool | None:
    """Whether a place or room is inside the air barrier; None where that is not known."""
    house = case.design.house
    if isinstance(place, Room):
        use = room_use(case, place)
        if use not in ("garage", "attic", "crawl space", "basement"):
            return None if place.conditioned is False else True
        if place.conditioned and use != "garage":
            return True
        place = use
    if place in OUTSIDE:
        return False
    if place in INSIDE:
        return True
    kind = {"attic": house and house.attic, "crawl space": house and house.crawl_space}.get(place)
    return {"vented": False, "conditioned": True, "unvented": True}.get(str(kind))


def is_sealed(burner: Burner) -> bool:
    """Whether the file says that it takes no air from the house, wherever it stands."""
    return burner.draft in SEALED


@quantity()
def burners_inside(case: Case, design: object) -> list[Burner]:
    """The burners inside the air barrier that take air from it. Raises Missing with all that is needed to tell."""
    every = [burner for burner in burners(case, design) if not is_sealed(burner)]
    inside = gather([lambda burner=burner: is_inside(case, burner) for burner in every])  # type: ignore[misc]
    return [burner for burner, within in zip(every, inside, strict=True) if within]


@quantity()
def burners_for_make_up_air(case: Case, design: object) -> list[Burner]:
    """Burners inside that are neither direct-vent nor mechanically drafted beyond question (no range, no dryer).

    One is enough for the question, so that of the others nothing is asked then. Raises Missing where none is known.
    """
    found: list[Burner] = []
    absent: list[str] = []
    for burner in burners(case, design):
        try:
            counts = not is_sealed(burner) and is_inside(case, burner) and burner.kind not in ("range", "dryer")
            if counts and draft(case, burner) in (*ATMOSPHERIC, "unvented"):
                found.append(burner)
        except Missing as gap:
            absent.extend(gap.paths)
    if absent and not found:
        raise Missing(*absent)
    return found


@quantity()
def burners_in_question(case: Case, design: object) -> list[str]:
    """Names of burners that some count and some don't: gas ranges, fan-assisted appliances on natural-draft vents."""
    names = [hood.name for hood in cooking_with_flame(case)]
    if not case.stated("combustion") and names:
        return [f"the cooking appliance under {name}" for name in names]
    found = [
        burner.name
        for burner in burners_inside(case, design)
        if burner.kind == "range" or (burner.kind != "dryer" and draft(case, burner) == "fan-assisted")
    ]
    return found or [f"the cooking appliance under {name}" for name in names]


def cooking_with_flame(case: Case) -> list[Hood]:
    """Hoods over a cooking appliance that burns something."""
    return [hood for hood in case.design.hoods.values() if hood.cooking is not None and hood.cooking.fuel in FUELS]


def unvented_heaters(case: Case) -> list[Burner]:
    """Burners inside that leave their gases in the room, ranges and dryers apart. Raises Missing."""
    return [
        burner
        for burner in burners_inside(case, case.design)
        if burner.kind not in ("range", "dryer") and draft(case, burner) == "unvented"
    ]


@quantity()
def atmospheric_burners(case: Case, design: object) -> list[Burner]:
    """Burners inside that draw room air and vent by buoyancy alone, open fires included."""
    return [burner for burner in burners_inside(case, design) if draft(case, burner) in ATMOSPHERIC]


@quantity(source="BPI and RESNET worst-case depressurization limits")
def depressurization_entry(case: Case, burner: Burner) -> str:
    """The codebook entry with the depressurization that a burner bears; "" for one that has no vent to upset."""
    how = draft(case, burner)
    if how in ("unvented", *SEALED) or burner.kind in ("range", "dryer"):
        return ""
    if how == "open":
        return "depressurization-open-fire"
    if how in ASSISTED:
        shared = shares_with_water_heater(case, burner)
        return "depressurization-natural-draft" if shared else "depressurization-mechanical-draft"
    return natural_draft_entry(case, burner)


def natural_draft_entry(case: Case, burner: Burner) -> str:
    """The entry of a natural-draft appliance: orphaned, on a common vent, or by itself."""
    kind = case.get(burner, "kind")
    if kind == "water heater" and (case.maybe(burner, "alone_on_larger_vent") or case.maybe(burner, "outside_chimney")):
        return "depressurization-orphaned-water-heater"
    if shares_with_water_heater(case, burner):
        together = [burner, *partners(case, burner)]
        heaters = [one for one in together if one.kind != "water heater" and draft(case, one) == "natural draft"]
        if heaters and not all(case.maybe(one, "vent_damper") for one in heaters):
            return "depressurization-natural-draft-common-vent"
    return "depressurization-natural-draft"


def partners(case: Case, burner: Burner) -> list[Burner]:
    """The other appliances on its vent, whichever of them says so."""
    return [
        other
        for other in case.design.combustion.values()
        if other is not burner and (other.name in burner.shares_vent_with or burner.name in other.shares_vent_with)
    ]


def shares_with_water_heater(case: Case, burner: Burner) -> bool:
    """Whether a water heater is on the same vent as another appliance, this one being either of them."""
    others = partners(case, burner)
    return bool(others) and any(one.kind == "water heater" for one in (burner, *others))


@quantity()
def most_sensitive(case: Case, design: object) -> Sensitive | None:
    """The burner inside that bears the least depressurization, by name among equals; None where none has a vent."""
    vented = []
    inside = burners_inside(case, design)
    entries = gather([lambda burner=burner: depressurization_entry(case, burner) for burner in inside])  # type: ignore[misc]
    for burner, entry in zip(inside, entries, strict=True):
        if entry:
            vented.append(Sensitive(burner, burner.path, burner.name, entry, float(case.limit(entry))))
    return min(vented, key=lambda one: (one.limit, one.name), default=None)


def most_sensitive_known(case: Case, design: object) -> Sensitive | None:
    """The most sensitive of the burners of which enough is known; another may bear less, never more than it."""
    known = []
    for burner in burners(case, design):
        try:
            entry = "" if is_sealed(burner) or not is_inside(case, burner) else depressurization_entry(case, burner)
        except Missing:
            continue
        if entry:
            known.append(Sensitive(burner, burner.path, burner.name, entry, float(case.limit(entry))))
    return min(known, key=lambda one: (one.limit, one.name), default=None)
