"""A second opinion on a refused file: the JSON Schema, so that no fault of form is left unsaid.

Imported only after the builder refused something: jsonschema takes longer to import than a whole check.
"""

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
    found = []
    for error in validator.iter_errors(data):
        path = ""
        for part in error.absolute_path:
            path += f"[{part}]" if isinstance(part, int) else f".{part}" if path else str(part)
        if error.validator == "additionalProperties":
            known = error.schema.get("properties", {})
            found += [
                (f"{path}.{key}" if path else key, "additionalProperties")
                for key in error.instance
                if key not in known
            ]
        else:
            found.append((path, str(error.validator)))
    return found


def unsaid(reading: Reading, said: list[Fault]) -> list[Fault]:
    """Faults that the JSON Schema finds and the builder did not name at or below the same place."""
    told = [each.path for each in said]
    faults = []
    for path, keyword in schema_errors(reading.data):
        if any(each == path or each.startswith((f"{path}.", f"{path}[")) or path == "" for each in told):
            continue
        place = reading.values.get(path) or reading.keys.get(path) or Place(1, 1, 1, 1)
        faults.append(fault("wrong-type", path, (place.line, place.column, place.end_line, place.end_column), f"`{path}` is not as the schema of design files has it "
                            f"({keyword})", "see `airtally explain` for the section"))  # fmt: skip
    return faults
