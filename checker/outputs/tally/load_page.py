"""What both load sections share: their columns, whether there is anything to show, and the words for what they rest on."""

from checker.case import Case
from checker.outputs.tally.cells import KNOWN, Cell, Column

PER_AREA, SUPPLY = Column("for each area", "heat_flux"), Column("supply air", "airflow")


def load_column(title: str) -> Column:
    """A column of loads, in watts where units are metric: a room has few kilowatts."""
    return Column(title, "heat_rate", "W")


def speaks_of_loads(case: Case, of_room: str, of_paper: str) -> bool:
    """Whether the file holds an envelope, or states a load of this kind for a room or for the house."""
    papers = case.design.papers
    paper = papers is not None and papers.loads is not None and case.speaks_of(papers.loads, of_paper)
    rooms = any(case.speaks_of(room, of_room) for room in case.design.rooms.values())
    return case.design.envelope is not None or paper or rooms


def basis_notes(basis: Cell, usual: tuple[str, ...]) -> list[str]:
    """What the coefficients rest on, with those from memory and what was assumed named."""
    taken = [f"Not stated, so the usual: {', '.join(usual)}."] if usual else []
    if basis.state != KNOWN:
        return taken
    found = basis.value
    notes = [f"Coefficients: {'; '.join(found.sources)}."]
    memory = ", ".join(found.from_memory)
    notes.append(f"From memory: {memory}." if memory else "None of them is from memory.")
    return notes + taken + ([f"Assumed: {'; '.join(found.assumed)}."] if found.assumed else [])
