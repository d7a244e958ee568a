"""Which methods of load calculation and selection the trade knows."""

from checker.case import Case
from checker.design.controls import LoadsPaper
from checker.quantities.equipment import gives
from checker.quantities.stated_loads import loads_paper

NO_METHOD = (
    "thumb", "by eye", "guess", "by feel", "experience", "none", "per ton", "per square", "floor area", "existing unit",
    "like for like", "next size", "old unit", "usual practice", "not calculated",
)  # fmt: skip
METHODS = (
    "manual j", "manual s", "acca", "ashrae", "load factor", "heat balance", "engineer", "approved", "en 12831", "csa f280",
)  # fmt: skip


def method_words(stated: str) -> bool | None:
    """Whether a stated method is one of the trade (True), a rule of thumb (False), or not known here (None)."""
    words = stated.lower()
    if any(word in words for word in NO_METHOD):
        return False
    return True if any(word in words for word in METHODS) else None


def equipped(case: Case) -> list[LoadsPaper]:
    """The load calculation, there or not, of a design with equipment that heats or cools."""
    units = case.design.equipment.values()
    if any(gives(case, unit, "heating") or gives(case, unit, "cooling") for unit in units):
        return [loads_paper(case)]
    return []
