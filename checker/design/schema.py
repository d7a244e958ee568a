"""The JSON Schema (Draft 2020-12) of a design file, from the same classes that the builder reads.

What plain JSON Schema cannot say (units, other spellings, the short forms) is a `format` whose name begins
with `airtally-`; `formats()` gives the check behind each, so that a validator and the builder agree.
"""

from collections.abc import Callable
from typing import Any

from checker.design import NOT_READ_YET, Design
from checker.design.builder import NONE, TBD
from checker.design.fields import (
    AirtightnessKind,
    Choice,
    Kind,
    Node,
    Number,
    Quantity,
    Reference,
    SizeKind,
    Whole,
    YesNo,
    fold,
)
from checker.design.filters import Filter
from checker.design.shape import Field, Shape, fields_of
from checker.design.short_forms import counted, spelled
from checker.design.values import REFUSED, YES, scalar

DIALECT = "https://json-schema.org/draft/2020-12/schema"
Check = Callable[[Any], bool]


class SchemaMaker:
    """Collects the definitions and the formats while walking the classes."""

    def __init__(self, home: str = "#/$defs/") -> None:
        self.home = home
        self.definitions: dict[str, Any] = {}
        self.formats: dict[str, Check] = {}

    def section(self, cls: type[Node]) -> dict[str, Any]:
        """A reference to a section's definition, made on first use."""
        name = cls.__name__
        if name not in self.definitions:
            self.definitions[name] = {}
            properties = {key: self.field(field) for key, field in fields_of(cls).items()}
            if cls is Design:
                properties |= {key: {"description": "kept; no rule reads it yet"} for key in NOT_READ_YET}
            self.definitions[name] = {
                "title": name, "description": (cls.__doc__ or "").strip(), "type": "object",
                "properties": properties, "additionalProperties": False,
            }  # fmt: skip
        return {"$ref": f"{self.home}{name}"}

    def field(self, field: Field) -> dict[str, Any]:
        """The schema of a key with its description and examples."""
        schema = dict(self.shape(field.shape))
        unit = ""
        if isinstance(field.shape.kind, Quantity):
            unit = f" ({field.shape.kind.dimension.replace('_', ' ')} with its unit)"
        schema["description"] = field.description + unit
        if field.examples:
            schema["examples"] = list(field.examples)
        return schema

    def shape(self, shape: Shape) -> dict[str, Any]:
        """The schema of what a field expects; `tbd` is always allowed."""
        if shape.form == "scalar":
            assert shape.kind is not None
            return self.kind(shape.kind)
        if shape.form == "record":
            assert shape.section is not None
            return {
                "anyOf": [
                    self.section(shape.section),
                    *self.short(shape.section),
                    {"const": True},
                    self.word("yes-none-or-tbd", YES | TBD | NONE),
                    NULL,
                ]
            }
        assert shape.of is not None
        items = self.shape(shape.of)
        if shape.form == "list":
            single = [] if shape.of.form == "record" else [self.several(shape.of)]
            return {
                "anyOf": [
                    {"type": "array", "items": items},
                    *single,
                    self.word("none-or-tbd", TBD | NONE),
                    NULL,
                ]
            }
        of = {"type": "object", "additionalProperties": items}
        if isinstance(shape.keys, Choice):
            of["propertyNames"] = {"format": self.format(choice_format(shape.keys), reader(shape.keys))}
            if shape.of.section is not None and shape.of.section.short:
                return {"anyOf": [of, *self.counted(shape), self.word("none-or-tbd", TBD | NONE), NULL]}
        return {"anyOf": [of, self.word("none-or-tbd", TBD | NONE), NULL]}

    def kind(self, kind: Kind) -> dict[str, Any]:
        """The schema of a scalar."""
        if isinstance(kind, Choice):
            checked = {"type": WORDS, "format": self.format(choice_format(kind), reader(kind))}
            return {"anyOf": [{"enum": [*kind.words, "tbd"]}, checked, NULL]}
        if isinstance(kind, YesNo):
            checked = {"type": "string", "format": self.format("airtally-yes-no", reader(kind))}
            return {"anyOf": [{"type": "boolean"}, {"enum": ["yes", "no", "tbd"]}, checked, NULL]}
        name = kind_format(kind)
        if isinstance(kind, (Whole, Number)):
            return {"type": ["number", "string", "null"], "format": self.format(name, reader(kind))}
        if isinstance(kind, (Quantity, SizeKind, AirtightnessKind)):
            also = ["number"] if isinstance(kind, Quantity) else []  # a plain 0, by the format
            also += ["boolean"] if isinstance(kind, Quantity) and kind.none_is is not None else []
            return {"type": ["string", "null", *also], "format": self.format(name, reader(kind))}
        plain = {"type": ["string", "number", "null"]}
        in_place = isinstance(kind, Reference) and kind.sections == ("filters",)
        return {"anyOf": [self.section(Filter), plain]} if in_place else plain

    def short(self, cls: type[Node]) -> list[dict[str, Any]]:
        """The schema of a section's short form, if it has one."""
        if not cls.short:
            return []

        def check(value: Any) -> bool:
            kinds = {key: field.shape.kind for key, field in fields_of(cls).items()}
            told = (spelled(cls, value) or {}).items()
            return all(kind is not None and reader(kind)(part) for kind, part in ((kinds[key], part) for key, part in told))

        return [
            {
                "type": ["string", "number"],
                "format": self.format(f"airtally-short-{cls.__name__.lower()}", check),
            }
        ]

    def several(self, of: Shape) -> dict[str, Any]:
        """One value, or several in one text split by commas, in place of a list."""
        assert of.kind is not None
        read = reader(of.kind)
        free = type(of.kind).__name__ == "Text"

        def check(value: Any) -> bool:
            parts = value.split(",") if isinstance(value, str) and not free else [value]
            return all(read(part.strip() if isinstance(part, str) else part) for part in parts)

        return {"type": WORDS, "format": self.format(f"{kind_format(of.kind)}-list", check)}

    def counted(self, shape: Shape) -> list[dict[str, Any]]:
        """Things counted in one text, or in a list of words; the words are checked by the builder alone in a list."""
        assert isinstance(shape.keys, Choice)
        name = self.format(f"airtally-counted-{choice_format(shape.keys)}", lambda value: counted(shape, value) is not None)
        return [{"type": "string", "format": name}, {"type": "array", "items": {"type": "string", "format": name}}]

    def word(self, name: str, words: frozenset[str]) -> dict[str, Any]:
        """A schema for a few words, however they are capitalised."""
        return {
            "type": "string",
            "format": self.format(f"airtally-{name}", lambda value: fold(str(value)) in words),
        }

    def format(self, name: str, check: Check) -> str:
        """Note the check behind a format."""
        self.formats[name] = check
        return name


NULL = {"type": "null"}
WORDS = ["string", "number", "boolean"]


def reader(kind: Kind) -> Check:
    """Whether the builder would take a value for a kind."""

    def check(value: Any) -> bool:
        if value is None or (isinstance(value, str) and fold(value) in TBD):
            return True
        return scalar(kind, value, None).__class__ is not REFUSED

    return check


def choice_format(kind: Choice) -> str:
    """Name of the format of a choice: its first words."""
    return f"airtally-word-{'-'.join(fold(word).replace(' ', '-') for word in kind.words[:3])}-{len(kind.spellings)}"


def kind_format(kind: Kind) -> str:
    """Name of the format of a scalar kind."""
    if isinstance(kind, Quantity):
        ending = ("" if kind.none_is is None else "-or-none") + ("-signed" if kind.signed else "")
        return f"airtally-{kind.dimension.replace('_', '-')}{ending}"
    if isinstance(kind, SizeKind):
        return "airtally-filter-size" if kind.of_filter else "airtally-size"
    if isinstance(kind, AirtightnessKind):
        return "airtally-airtightness"
    if isinstance(kind, Number):
        return f"airtally-number-{kind.least}-{kind.most}"
    if isinstance(kind, Choice):
        return choice_format(kind)
    return f"airtally-{type(kind).__name__.lower()}" if not isinstance(kind, Reference) else "airtally-name"


def design_schema() -> dict[str, Any]:
    """The whole schema of a design file."""
    maker = SchemaMaker()
    root = maker.section(Design)
    definition = maker.definitions["Design"]
    definition["required"] = ["design_format", "project"]
    return {
        "$schema": DIALECT,
        "title": "airtally design file",
        "description": "A house's mechanical design. Quantities carry units in their text; `tbd` is allowed anywhere.",
        **root,
        "$defs": dict(sorted(maker.definitions.items())),
    }


def section_schema(cls: type[Node]) -> dict[str, Any]:
    """The schema of one section by itself, for pydantic, which looks up local references on its own."""
    home = "https://airtally.example/"
    maker = SchemaMaker(home)
    maker.section(cls)
    definitions = {name: {"$id": f"{home}{name}", **each} for name, each in maker.definitions.items()}
    return {**maker.definitions[cls.__name__], "$defs": definitions}


def formats() -> dict[str, Check]:
    """The checks behind the formats of the schema."""
    maker = SchemaMaker()
    maker.section(Design)
    return maker.formats
