"""What makes condensate: coils indoors, and burners cool enough that their gases condense."""

from checker.case import Case
from checker.design.combustion import Burner
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.hoods import Dryer
from checker.quantities.cold_ducts import cools
from checker.quantities.latent_balance import is_outdoor_unit

Source = Equipment | Fan | Burner | Dryer
HEATING_ONLY = frozenset({"furnace", "boiler", "water heater", "fireplace", "stove", "electric heat"})
HOT_DRAFTS = frozenset({"natural draft", "fan-assisted"})
CONDENSES_FROM = 0.90
"""AFUE from which gas furnaces and boilers condense; non-condensing ones end near 0.85."""


def cooling_units(case: Case) -> list[Equipment]:
    """Units with a coil that makes water indoors: that cool, and no outdoor unit, packaged or window unit."""
    return [
        unit
        for unit in case.design.equipment.values()
        if (cools(case, unit) or has_coil(case, unit))
        and not is_outdoor_unit(case, unit)
        and unit.location not in ("outdoors", "roof")
        and not is_window_unit(case, unit)
    ]


def is_window_unit(case: Case, unit: Equipment) -> bool:
    """Whether an air conditioner stands whole in a room's window or wall, and drips outdoors."""
    if unit.kind == "packaged unit":
        return True
    return unit.kind == "air conditioner" and unit.outdoor_unit is None and unit.location in case.design.rooms


def has_coil(case: Case, unit: Equipment) -> bool:
    """Whether a furnace has a cooling coil: as said, or as the only one beside an outdoor unit of no other."""
    if unit.kind != "furnace":
        return False
    if unit.coil is not None or unit.outdoor_unit is not None:
        return True
    others = case.design.equipment.values()
    alone = sum(other.kind == "furnace" for other in others) == 1
    return alone and any(
        other.kind in ("air conditioner", "heat pump")
        and other.location in (None, "outdoors")
        and not is_outdoor_unit(case, other)
        for other in others
    )


def cannot_condense(case: Case, source: Equipment | Burner) -> bool:
    """Whether a burner is known to be none that condenses: by its AFUE, or by a draft that takes hot gases."""
    afue = source.ratings.afue if isinstance(source, Equipment) and source.ratings is not None else None
    burner = case.design.combustion.get(source.name) if isinstance(source, Equipment) else source
    draft = None if burner is None else burner.draft
    return (afue is not None and afue < CONDENSES_FROM) or (afue is None and draft in HOT_DRAFTS)


def is_coil(case: Case, source: Source) -> bool:
    """Whether a source is a cooling coil or evaporator."""
    if not isinstance(source, Equipment):
        return False
    if cools(case, source) or has_coil(case, source) or source.kind not in HEATING_ONLY:
        return True
    return source.kind == "furnace" and cannot_condense(case, source)


def is_condensing(case: Case, source: Source) -> bool:
    """Whether a drained source burns fuel: then its own condensate is meant, but for a furnace with a coil."""
    if isinstance(source, Equipment | Burner) and cannot_condense(case, source):
        return False
    if not isinstance(source, Equipment):
        return isinstance(source, Burner)
    if source.ratings is not None and (source.ratings.afue or 0.0) >= CONDENSES_FROM:
        return True
    burner = case.design.combustion.get(source.name)
    return (burner is not None and burner.draft == "sealed") or (
        source.kind in ("furnace", "boiler") and not is_coil(case, source)
    )
