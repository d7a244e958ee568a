"""Requirements as data: limits and sections for the design's edition, as amended."""

from collections.abc import Mapping
from typing import Any

from checker.answers import Missing, NotApplicable
from checker.record import Record

EDITIONS = ("irc-2015", "irc-2018", "irc-2021", "irc-2024")
STANDARDS = ("62.2-2010", "62.2-2013", "62.2-2016", "62.2-2019", "62.2-2022")


class Entry(Record):
    """One requirement, all editions side by side.

    says: the requirement in our own words. of: dimension of the limit ("" for none, "table" for raw data,
    "number", "count", "text"). limit: text with units, one for all editions or one by edition.
    section: by edition; an edition that is absent lacks the requirement; plain text where no edition counts.
    basis: code, standard, guideline, common practice or from memory. source: where it was read.
    also: the rounded metric figure that is printed beside the limit, where it is the milder one: it meets it as well.
    """

    says: str
    of: str
    limit: Any
    section: Any
    basis: str
    source: str
    also: str = ""


class Amendment(Record):
    """What a jurisdiction or firm changes of one requirement."""

    limit: Any = None
    section: str = ""
    withdrawn: str = ""
    says: str = ""


class Codebook:
    """The codebook as one design sees it: its code edition, its standard's edition, its amendments.

    `criteria` are the design criteria that the jurisdiction states, in SI, by key.
    """

    def __init__(
        self,
        edition: str | None,
        standard: str | None,
        amendments: Mapping[str, Amendment] | None = None,
        criteria: Mapping[str, Any] | None = None,
    ) -> None:
        from checker.codebook_table import ENTRIES

        self.entries: dict[str, Entry] = ENTRIES
        self.edition = edition
        self.standard = standard
        self.amendments = dict(amendments or {})
        self.criteria = dict(criteria or {})
        self.parsed: dict[str, Any] = {}

    def entry(self, key: str) -> Entry:
        """The requirement of a key, in our words. Raises KeyError for a key nobody wrote (our fault)."""
        return self.entries[key]

    def limit(self, key: str) -> Any:
        """The limit in SI. Raises Missing("project.code") where editions differ and none is named."""
        if key not in self.parsed:
            self.parsed[key] = self.read_limit(key)
        return self.parsed[key]

    def compared(self, key: str) -> Any:
        """What a value is held against: the limit, or the rounded metric figure beside it. Raises as `limit` does."""
        limit, also, amended = self.limit(key), self.entry(key).also, self.amendments.get(key)
        if not also or (amended is not None and amended.limit is not None):
            return limit
        return converted(also, self.entry(key).of)

    def read_limit(self, key: str) -> Any:
        """Look a limit up and convert it."""
        entry = self.entry(key)
        amended = self.amendments.get(key)
        self.require(key)
        text = entry.limit
        if amended is not None and amended.limit is not None:
            text = amended.limit
        elif (isinstance(text, dict) and entry.of != "table") or (
            isinstance(text, dict) and set(text) <= {*EDITIONS, *STANDARDS}
        ):
            text = self.by_edition(text)
        return converted(text, entry.of)

    def by_edition(self, limits: Mapping[str, Any]) -> Any:
        """The limit of the edition in force; of all editions where none is named and they agree."""
        standard = any(edition in STANDARDS for edition in limits)
        edition = self.standard if standard else self.edition
        if edition is None:
            values = list(limits.values())
            if not standard and len(values) == len(EDITIONS) and all(value == values[0] for value in values):
                return values[0]
            raise Missing("project.ventilation_standard" if standard else "project.code")
        if edition not in limits:
            raise NotApplicable(f"{spoken(edition)} has no such requirement")
        return limits[edition]

    def require(self, key: str) -> None:
        """Raise NotApplicable where the edition lacks the requirement or it is withdrawn; Missing if unknown."""
        amended = self.amendments.get(key)
        if amended is not None:
            if amended.withdrawn:
                raise NotApplicable(f"withdrawn by amendment: {amended.withdrawn}")
            if amended.section:
                return
        section = self.entry(key).section
        if not isinstance(section, dict):
            return
        standard = any(edition in STANDARDS for edition in section)
        edition = self.standard if standard else self.edition
        if edition is None:
            if standard:
                raise NotApplicable("the design is not held against ASHRAE 62.2")
            if len(section) < len(EDITIONS):
                raise Missing("project.code")
        elif edition not in section:
            raise NotApplicable(f"{spoken(edition)} has no such requirement")

    def cite(self, key: str) -> str:
        """The citation hint: edition and section, or what else the requirement rests on."""
        amended = self.amendments.get(key)
        if amended is not None and amended.section:
            return amended.section
        entry = self.entry(key)
        doubt = " (from memory: check the text)" if entry.basis == "from memory" else ""
        if not isinstance(entry.section, dict):
            return f"{entry.section or entry.basis}{doubt}"
        edition = self.standard if any(each in STANDARDS for each in entry.section) else self.edition
        if edition is not None and edition in entry.section:
            return f"{spoken(edition)} {entry.section[edition]}{doubt}"
        sections = dict.fromkeys(f"{section} ({each[-4:]})" for each, section in entry.section.items())
        book = "IRC" if any(each in EDITIONS for each in entry.section) else "ASHRAE 62.2"
        return f"{book} {', '.join(sections)}{doubt}"


def spoken(edition: str) -> str:
    """The name of an edition as people say it."""
    if edition.startswith("irc-"):
        return f"IRC {edition[-4:]}"
    return f"ASHRAE {edition}"


def converted(text: Any, of: str) -> Any:
    """A limit as the check takes it: SI for a dimension, a number, or the data as they stand."""
    if text is None or of in ("", "table", "text"):
        return text
    if of in ("number", "count"):
        return float(text)
    if isinstance(text, list):
        return [converted(each, of) for each in text]
    from checker.units import parse

    return parse(str(text), of)
