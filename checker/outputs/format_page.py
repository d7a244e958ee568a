"""Pages on the design file: its sections, their keys, the words and units they take."""

from collections.abc import Iterable

from checker.design import NOT_READ_YET, Design
from checker.design.fields import Choice, Kind, Node, Number, Quantity, Reference, Whole, fold
from checker.design.shape import Field, Shape, fields_of
from checker.design.values import words_of
from checker.dimensions import DIMENSIONS
from checker.outputs.layout import quoted_list, wrapped
from checker.spelling import unit_key
from checker.unit_table import TABLE

COMPULSORY = {
    "": "`design_format: 1`, `project` with a `title`, and one section more",
    "project": "`title`",
    "accepted": "`rule`, `path`, `reason` and `by`",
}
AIRTIGHTNESS = ("ach50", "leakage_50", "flow50_per_floor", "flow50_per_envelope")  # four ways to state one fact
INTRODUCTION = (
    "A design file is YAML. It says as much as is decided: every key may be absent, and any value may be `tbd` "
    "(to be decided). Quantities carry their unit in the text, such as `80 cfm`. Where a section does not "
    "arise, write `none`."
)


def topics() -> list[str]:
    """The names of pages on the design file."""
    return ["design", "units", *section_paths(Design, "")]


def section_paths(section: type[Node], path: str) -> list[str]:
    """Every key path below a section, without the names of things."""
    paths = []
    for key, field in fields_of(section).items():
        below = f"{path}.{key}" if path else key
        paths.append(below)
        inner = record_of(field.shape)
        if inner is not None:
            paths += section_paths(inner, below)
    return paths


def record_of(shape: Shape) -> type[Node] | None:
    """The section that stands under a key, be it one, a map or a list of them."""
    if shape.form == "record":
        return shape.section
    return shape.of.section if shape.of is not None and shape.of.form == "record" else None


def format_page(topic: str) -> list[str]:
    """The page of `design`, `units`, a section or a key path; empty where there is none."""
    if topic == "design":
        return design_page()
    if topic == "units":
        return units_page()
    if topic in NOT_READ_YET:
        return wrapped(f"`{topic}` is a section that is kept; no rule reads it yet.")
    path: list[str] = []
    section: type[Node] | None = Design
    field: Field | None = None
    for part in topic.replace("[", ".").replace("]", "").split("."):
        fields = fields_of(section) if section is not None else {}
        if part in fields:
            field = fields[part]
            section = record_of(field.shape)
            path.append(part)
        elif field is None or field.shape.form not in ("map", "list") or path[-1] == "*" or misspelled(part, fields):
            return []
        else:
            path.append("*")
            if section is None:
                break
    assert field is not None
    named = ".".join(part for part in path if part != "*")
    return section_page(named, field, section) if section is not None else key_page(named, field)


def misspelled(part: str, fields: Iterable[str]) -> bool:
    """Whether a part of a path looks like one of the keys rather than the name of a thing."""
    from difflib import get_close_matches

    return not part or bool(get_close_matches(part, list(fields), cutoff=0.8))


def design_page() -> list[str]:
    """The sections of a design file."""
    lines = [*wrapped(INTRODUCTION), "", *wrapped(COMPULSORY[""], "Compulsory: "), "", "Sections:"]
    wide = max(map(len, fields_of(Design)))
    for key, field in fields_of(Design).items():
        lines += wrapped(field.description, f"  {key:<{wide}}  ")
    lines += ["", *wrapped(quoted_list(NOT_READ_YET), "Kept, but not read yet: ")]
    return [*lines, "", "`airtally explain fans` shows the keys of a section, `airtally explain units` the units."]


def section_page(path: str, field: Field, section: type[Node]) -> list[str]:
    """A section: what it says, its short form, its keys."""
    lines = [path, "", *wrapped((section.__doc__ or "").strip()), *wrapped(f"Here: {field.description}.")]
    if field.shape.form == "map":
        lines += wrapped(f"A map: each entry has a name and these keys. {key_words(field.shape)}".strip())
    elif field.shape.form == "list":
        lines.append("A list of entries with these keys.")
    if section.short:
        form = " @ ".join(f"`{key}`" for key in section.short)
        lines += wrapped(f"Short form: a plain value in place of the keys stands for {form}.")
    if section.spoken:
        lines += wrapped(f"One text may tell several of these, in any order: {quoted_list(section.spoken)}.")
    if path in COMPULSORY:
        lines += wrapped(COMPULSORY[path], "Compulsory: ")
    if field.examples:
        lines += wrapped(shown(field.examples[0]), "For example: ")
    lines += ["", "Keys:"]
    for each in fields_of(section).values():
        lines += key_lines(each, path)
    return lines


def key_words(shape: Shape) -> str:
    """What the names of a map may be, where that is not free."""
    if isinstance(shape.keys, Choice):
        return f"The names are words: {quoted_list(shape.keys.words)}."
    if isinstance(shape.keys, Reference):
        return f"The names are {kind_text(shape.keys)}."
    return ""


def key_lines(field: Field, path: str) -> list[str]:
    """A key in the list of a section."""
    inner = record_of(field.shape)
    lines = wrapped(field.description, f"  {field.key}: ", "      ")
    if inner is not None:
        many = {"map": "things by name", "list": "a list"}.get(field.shape.form, "keys of its own")
        lines += wrapped(f"{many}; see `airtally explain {path}.{field.key}`", "      ")
    else:
        lines += wrapped(shape_text(field.shape), "      ")
    if field.examples:
        lines += wrapped(", ".join(shown(each) for each in field.examples), "      such as ")
    return lines


def key_page(path: str, field: Field) -> list[str]:
    """A key that takes a plain value: its meaning, its words and their spellings."""
    lines = [path, "", *wrapped(f"{field.description[:1].upper()}{field.description[1:]}."),
             *wrapped(f"Takes {shape_text(field.shape)}.")]  # fmt: skip
    if field.examples:
        lines += wrapped(", ".join(shown(each) for each in field.examples), "Such as: ")
    kinds = [field.shape.kind, field.shape.keys, field.shape.of.kind if field.shape.of is not None else None]
    for kind in kinds:
        lines += spellings(kind.words if isinstance(kind, Reference) else kind)
    return lines


def spellings(kind: Kind | None) -> list[str]:
    """The words of a choice with their other spellings."""
    if not isinstance(kind, Choice):
        return []
    lines = ["", "Words, with other spellings that mean the same:"]
    for word in kind.words:
        others = [other for other, meant in kind.spellings.items() if meant == word and other != fold(word)]
        lines += wrapped(f"{word}: {', '.join(others)}" if others else word, "  ", "      ")
    return lines


def shape_text(shape: Shape) -> str:
    """What a key takes."""
    if shape.form == "scalar":
        assert shape.kind is not None
        return kind_text(shape.kind)
    assert shape.of is not None
    if shape.form == "list":
        return f"a list, or one value: {shape_text(shape.of)}"
    keys = kind_text(shape.keys) if shape.keys is not None and type(shape.keys).__name__ != "Text" else "a name"
    return f"a map: {keys}, and for each {shape_text(shape.of)}"


def kind_text(kind: Kind) -> str:
    """What a plain value may be."""
    if isinstance(kind, Choice):
        return f"a word: {quoted_list(kind.words)}"
    if isinstance(kind, Reference):
        names = f"the name of something in {quoted_list(kind.sections)}"
        return f"{names}, or {kind_text(kind.words)}" if kind.words is not None else names
    if isinstance(kind, Quantity):
        none = "" if kind.none_is is None else ", or `none`"
        return f"{DIMENSIONS[kind.dimension].noun} such as `{DIMENSIONS[kind.dimension].example}`{none}"
    if isinstance(kind, Number) and not isinstance(kind, Whole) and (kind.least, kind.most) != (None, None):
        low, high = kind.least, kind.most
        bounds = f"from {low} to {high}" if None not in (low, high) else f"from {low}" if high is None else f"to {high}"
        return f"a number without a unit, {bounds}"
    return words_of(kind)


def shown(example: object) -> str:
    """An example as it would stand in the file."""
    if isinstance(example, bool):
        return "`yes`" if example else "`no`"
    if isinstance(example, dict):
        return "`{" + ", ".join(f"{key}: {shown(value).strip('`')}" for key, value in example.items()) + "}`"
    return f"`{example}`"


def units_page() -> list[str]:
    """Every kind of quantity with the spellings of its units."""
    lines = wrapped(
        "A quantity is a number and a unit. Spellings of units, by kind of quantity (capital letters do not "
        "matter where they cannot be mistaken):"
    )
    seen: dict[tuple[str, ...], str] = {}
    for name, dimension in DIMENSIONS.items():
        if name in AIRTIGHTNESS:
            continue
        spelled = [unit for each in (AIRTIGHTNESS if name == "airtightness" else [name]) for unit in TABLE[each]]
        keys = {unit_key(unit): unit for unit in reversed(spelled)}
        own = tuple(unit for unit in spelled if keys[unit_key(unit)] == unit)
        plain = name.replace("_", " ")
        lines += ["", *wrapped(f"{plain}: {dimension.noun} such as `{dimension.example}`")]
        same = seen.setdefault(own, plain)
        lines += wrapped(quoted_list(own) if same == plain else f"the units of {same}", "  ", "  ")
    return lines
