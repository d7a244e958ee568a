"""A second opinion on a refused file: the JSON Schema, so that no fault of form is left unsaid.

Imported only after the builder refused something: jsonschema takes longer to import than a whole check.
"""

from collections.abc import Iterator
from typing import Any

from checker.design.schema import design_schema, formats
from checker.faults import Fault, fault
from checker.read import Place, Reading


def schema_errors(data: Any) -> list[tuple[str, str]]:
    """(path, keyword) of every place that the JSON Schema refuses."""
    from jsonschema import Draft202012Validator, FormatChecker

    checker = FormatChecker(formats=())
    for name, check in formats().items():
        checker.checks(name)(check)
    validator = Draft202012Validator(design_schema(), format_checker=checker)
    return [told for error in validator.iter_errors(data) for told in deepest(error)]


def deepest(error: Any) -> Iterator[tuple[str, str]]:
    """The places inside an error that it really is about: of alternatives, the one for a map or list."""
    if error.context and isinstance(error.instance, (dict, list)):
        for inner in error.context:
            if inner.schema_path[0] == 0:
                yield from deepest(inner)
        return
    path = spelled(error.absolute_path)
    if error.validator == "additionalProperties" and isinstance(error.schema.get("additionalProperties"), bool):
        known = error.schema.get("properties", {})
        for key in error.instance:
            if key not in known:
                yield (f"{path}.{key}" if path else key), "additionalProperties"
    elif error.validator == "required":
        for key in error.validator_value:
            if key not in error.instance:
                yield (f"{path}.{key}" if path else key), "required"
    else:
        yield path, str(error.validator)


def spelled(parts: Any) -> str:
    """A path as the rest of the program spells it."""
    path = ""
    for part in parts:
        path += f"[{part}]" if isinstance(part, int) else f".{part}" if path else str(part)
    return path


def unsaid(reading: Reading, said: list[Fault]) -> list[Fault]:
    """Faults that the JSON Schema finds and the builder did not name at, above or below the same place."""
    told = [each.path for each in said]
    faults = []
    for path, keyword in schema_errors(reading.data):
        if any(each == path or each.startswith((f"{path}.", f"{path}[")) or not path for each in told):
            continue
        place = reading.values.get(path) or reading.keys.get(path) or Place(1, 1, 1, 1)
        at = (place.line, place.column, place.end_line, place.end_column)
        message = f"`{path}` is not as the schema of design files has it ({keyword})"
        faults.append(fault("wrong-type", path, at, message, "see `airtally explain` for the section"))
    return faults
