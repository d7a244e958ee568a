"""The builder, the JSON Schema (by jsonschema) and pydantic say the same of generated documents."""

import random
from typing import Any

import pytest
from pydantic import TypeAdapter, ValidationError

from checker.design import Design
from checker.design.build import build
from checker.design.cross_check import schema_errors
from checker.design.fields import Choice, Node, Number, Quantity, Reference, Whole, YesNo
from checker.design.shape import Shape, fields_of
from checker.read import Reading
from checker.units import DIMENSIONS

NAME_FAULTS = {"FILE-24", "FILE-25", "FILE-26", "FILE-27"}  # names and the few compulsory keys are the builder's own
WRONG: list[Any] = ["80 elephants", "wibble", {"a": 1}, [1, 2], True, "", -3, 2.5, "1,5 in", "none", "tbd", None, "TBC", "no"]


def right(shape: Shape, chance: random.Random, depth: int) -> Any:
    """A value that fits a shape."""
    if shape.form == "scalar":
        kind = shape.kind
        if isinstance(kind, Quantity):
            return DIMENSIONS[kind.dimension].example
        if isinstance(kind, Choice):
            return chance.choice([*kind.words, *(word.upper() for word in kind.spellings)])
        if isinstance(kind, YesNo):
            return chance.choice([True, False, "yes", "no"])
        if isinstance(kind, Whole):
            return 2
        if isinstance(kind, Number):
            return kind.least if kind.least is not None else 1.0
        if isinstance(kind, Reference):
            return "somewhere"
        return {"SizeKind": "6 in" if not getattr(kind, "of_filter", False) else "16x20x1 in", "AirtightnessKind": "1.5 ACH50"}.get(
            type(kind).__name__, "words"
        )
    assert shape.section is not None or shape.of is not None
    if shape.form == "record":
        assert shape.section is not None
        return document(shape.section, chance, depth + 1)
    assert shape.of is not None
    if shape.form == "list":
        return [right(shape.of, chance, depth + 1)]
    key = chance.choice(shape.keys.words) if isinstance(shape.keys, Choice) else "thing"
    return {key: right(shape.of, chance, depth + 1)}


def document(section: type[Node], chance: random.Random, depth: int = 0) -> dict[str, Any]:
    """A random document for a section, right or with a few wrong values."""
    result: dict[str, Any] = {}
    for key, field in fields_of(section).items():
        if chance.random() < (0.7 if depth == 0 else 0.35):
            result[key] = chance.choice(WRONG) if chance.random() < 0.02 else right(field.shape, chance, depth)
    if chance.random() < 0.02:
        result["not_a_key"] = 1
    if section is Design:
        result["design_format"] = 1
        result["project"] = {"title": "generated"}
    return result


def by_builder(data: Any) -> set[str]:
    reading = Reading("data", "", data, {}, {}, [], {})
    return {fault.path for fault in build(reading).faults if fault.code not in NAME_FAULTS}


@pytest.mark.parametrize("seed", range(150))
def test_builder_and_schema_agree(seed: int) -> None:
    data = document(Design, random.Random(seed))
    told = by_builder(data)
    found = {path for path, _ in schema_errors(data)}

    assert {covering(path, found) for path in told} <= found
    assert {covering(path, told) for path in found} <= told


def covering(path: str, paths: set[str]) -> str:
    """The path itself, or the one just above or below it that the other side names."""
    if path in paths:
        return path
    for each in sorted(paths):
        if each.startswith((f"{path}.", f"{path}[")) or path.startswith((f"{each}.", f"{each}[")):
            return each
    return path


@pytest.mark.parametrize("seed", range(0, 150, 10))
def test_pydantic_reads_by_the_same_builder(seed: int) -> None:
    data = document(Design, random.Random(seed))
    faults = build(Reading("data", "", data, {}, {}, [], {})).faults
    adapter = TypeAdapter(Design)
    if faults:
        with pytest.raises(ValidationError) as caught:
            adapter.validate_python(data)
        assert all(fault.message in str(caught.value) for fault in faults[:3])
    else:
        assert adapter.validate_python(data).project.title == "generated"  # type: ignore[union-attr]


def test_there_are_both_right_and_wrong_documents() -> None:
    verdicts = [bool(by_builder(document(Design, random.Random(seed)))) for seed in range(150)]
    assert 10 < sum(verdicts) < 149
