"""What each field of a section class expects, read once from its annotation."""

from types import GenericAlias, NoneType, UnionType
from typing import Any

from checker.design.annotated import Annotated
from checker.design.fields import Kind, Node, Text
from checker.record import Record


class Shape(Record):
    """`form` is scalar, record, map or list; the other members belong to one form each."""

    form: str
    kind: Kind | None = None
    section: "type[Node] | None" = None
    of: "Shape | None" = None
    keys: Kind | None = None


class Field(Record):
    """A key of a section: the attribute it fills, what it expects and what it means."""

    key: str
    attribute: str
    shape: Shape
    description: str
    examples: tuple[object, ...]
    filled_with: Any


def shape_of(annotation: Any) -> Shape:
    """The shape that an annotation asks for."""
    if isinstance(annotation, Annotated):  # type: ignore[arg-type]  # a class at run time
        return Shape("scalar", kind=annotation.kind)
    if isinstance(annotation, UnionType):
        return shape_of(next(part for part in annotation.__args__ if part is not NoneType))
    if isinstance(annotation, GenericAlias):
        if annotation.__origin__ is dict:
            keys, values = annotation.__args__
            return Shape("map", of=shape_of(values), keys=shape_of(keys).kind)
        return Shape("list", of=shape_of(annotation.__args__[0]))
    if annotation is str:
        return Shape("scalar", kind=Text())
    return Shape("record", section=annotation)


KNOWN: dict[str, dict[str, Field]] = {}


def fields_of(section: type[Node]) -> dict[str, Field]:
    """The keys of a section by their spelling in the file; worked out once per class."""
    found = KNOWN.get(section.__qualname__)
    if found is None:
        found = KNOWN[section.__qualname__] = read_fields(section)
    return found


def read_fields(section: type[Node]) -> dict[str, Field]:
    """Read the keys of a section from its annotations."""
    found = {}
    for attribute, (annotation, facts) in section.fields.items():
        key = facts.key or attribute
        shape = shape_of(annotation)
        found[key] = Field(key, attribute, shape, facts.description, facts.examples, facts.filled_with)
    return found


CONTAINERS: dict[str, list[Field]] = {}


def fill(section: type[Node], values: dict[str, Any]) -> None:
    """Give a section's maps and lists that were not stated an empty value; the rest is None by its class."""
    containers = CONTAINERS.get(section.__qualname__)
    if containers is None:
        containers = [field for field in fields_of(section).values() if field.filled_with is not None]
        CONTAINERS[section.__qualname__] = containers
    for field in containers:
        if field.attribute not in values:
            values[field.attribute] = field.filled_with()
