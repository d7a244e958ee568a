"""What the file could have said and does not, in few words: fields of one thing together, things alike together."""

from typing import Any

from checker.design.shape import fields_of


def absent_words(design: Any, paths: list[str]) -> str:
    """The absent paths, each counted once: `count, u of all 9 envelope.windows`, `fans.bath: role, filter`."""
    lacking: dict[tuple[str, str], list[str]] = {}
    for path in dict.fromkeys(paths):
        thing, _, field = path.rpartition(".")
        section, _, name = thing.rpartition(".")
        known = section and name in things_in(design, section)
        lacking.setdefault((section if known else "", field), []).append(name if known else thing)
    alike: dict[tuple[str, tuple[str, ...]], list[str]] = {}
    for (section, field), names in lacking.items():
        for group in [names] if section else [[name] for name in names]:
            alike.setdefault((section, tuple(group)), []).append(field)
    return "; ".join(part for (section, names), fields in alike.items() for part in said(design, section, fields, names))


def said(design: Any, section: str, fields: list[str], names: tuple[str, ...]) -> list[str]:
    """Things of one section that all lack the same fields: those are named that lack them, or the few that do not."""
    every = list(things_in(design, section)) if section else []
    others = [name for name in every if name not in names]
    if section and len(names) > 1 and (not others or len(others) < len(names)):
        but = f" but {', '.join(others)}" if others else ""
        return [f"{', '.join(fields)} of all {len(every)} {section}{but}"]
    if section and len(names) > 1:
        return [f"{', '.join(fields)} of {section} {', '.join(names)}"]
    paths = [f"{section}.{name}" if section else name for name in names]
    return [f"{path}: {', '.join(fields)}" if len(fields) > 1 else f"{path}.{fields[0]}".lstrip(".") for path in paths]


def things_in(design: Any, section: str) -> dict[str, Any]:
    """The things of a section such as `envelope.windows`, by name; nothing where the path is none."""
    found = design
    for key in section.split("."):
        if isinstance(found, dict):
            found = found.get(key)
        else:
            known = fields_of(type(found)).get(key) if hasattr(type(found), "fields") else None
            found = getattr(found, known.attribute, None) if known is not None else None
    return found if isinstance(found, dict) else {}
