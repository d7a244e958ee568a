"""The sections of the tally in the order of the page, by the word that `--only` takes."""

from checker.case import Case
from checker.outputs.tally import air, cooling, ducts, equipment, heating, rooms, year
from checker.outputs.tally.cells import Build, Section, section_of

SECTIONS: dict[str, tuple[str, Build]] = {
    "heating": ("Loads by room, heating", heating.build),
    "cooling": ("Loads by room, cooling", cooling.build),
    "equipment": ("Equipment", equipment.build),
    "air": ("Air by mode", air.build),
    "ducts": ("Ducts", ducts.build),
    "rooms": ("Air of the rooms", rooms.build),
    "year": ("Moisture and energy", year.build),
}


def tally(case: Case, chosen: list[str]) -> list[Section]:
    """The chosen sections of a design, all of them where none is chosen."""
    names = [name for name in SECTIONS if not chosen or name in chosen]
    return [section_of(case, name, *SECTIONS[name]) for name in names]
