"""The codebook's YAML, read and checked, and the module that is generated from it for a fast start."""

import os
import pprint
from typing import Any

from checker.codebook import EDITIONS, STANDARDS, Entry, converted

FOLDER = os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(__file__))), "rules", "codebook")
KEYS = ("says", "of", "limit", "section", "basis", "source", "also")
BASES = ("code", "standard", "guideline", "common practice", "from memory")


class CodebookError(ValueError):
    """An entry of the codebook is not as it should be; the text names file, key and fault."""


def read_entries(folder: str = FOLDER) -> dict[str, Entry]:
    """All entries of the codebook files. Raises CodebookError."""
    entries: dict[str, Entry] = {}
    for file in sorted(os.listdir(folder)):
        if not file.endswith(".yaml"):
            continue
        for key, data in read_map(os.path.join(folder, file)).items():
            if key in entries:
                raise CodebookError(f"{file}: `{key}` stands in two files")
            entries[key] = entry_of(f"{file}: `{key}`", data)
    return entries


def read_map(path: str) -> dict[str, Any]:
    """The map of one codebook file; its edition keys hold full stops, which a design file may not."""
    from ruamel.yaml import YAML
    from ruamel.yaml.error import YAMLError

    try:
        with open(path, encoding="utf-8") as file:
            data = YAML(typ="safe", pure=True).load(file)
    except YAMLError as fault:
        raise CodebookError(f"{os.path.basename(path)}: {fault}") from fault
    if not isinstance(data, dict):
        raise CodebookError(f"{os.path.basename(path)}: not a map")
    return data


def entry_of(where: str, data: Any) -> Entry:
    """One entry, checked: its keys, its editions, its basis, and that each limit can be read."""
    if not isinstance(data, dict) or not set(data) <= set(KEYS) or "says" not in data or "basis" not in data:
        raise CodebookError(f"{where} must have {', '.join(KEYS)}")
    entry = Entry(
        data["says"],
        data.get("of", ""),
        data.get("limit"),
        data.get("section", ""),
        data["basis"],
        data.get("source", ""),
        data.get("also", ""),
    )
    if entry.basis not in BASES:
        raise CodebookError(f"{where}: basis `{entry.basis}` is not one of {', '.join(BASES)}")
    if entry.basis in ("code", "standard") and not isinstance(entry.section, dict):
        raise CodebookError(f"{where}: a {entry.basis} has its sections by edition")
    if isinstance(entry.section, dict) and not set(entry.section) <= {*EDITIONS, *STANDARDS}:
        raise CodebookError(f"{where}: unknown edition in {sorted(entry.section)}")
    by_edition = isinstance(entry.limit, dict) and set(entry.limit) <= {*EDITIONS, *STANDARDS}
    if entry.also:
        part = converted(entry.also, entry.of) / converted(entry.limit, entry.of)
        if not 0.9 < part < 1.1:
            raise CodebookError(f"{where}: `{entry.also}` is not `{entry.limit}` rounded")
    if entry.of != "table":
        for limit in entry.limit.values() if by_edition else [entry.limit]:
            converted(limit, entry.of)
    return entry


def table_module(entries: dict[str, Entry]) -> str:
    """The text of checker/codebook_table.py."""
    rows = {key: tuple(entry) if entry.also else tuple(entry)[:-1] for key, entry in entries.items()}
    body = pprint.pformat(rows, width=116, sort_dicts=False)
    return (
        '"""Generated from rules/codebook/*.yaml by `python -m checker.generate`; do not edit."""\n\n'
        "from typing import Any\n\nfrom checker.codebook import Entry\n\n"
        f"TABLE: dict[str, tuple[Any, ...]] = {body}\n\n"
        "ENTRIES = {key: Entry(*entry) for key, entry in TABLE.items()}\n"
    )
