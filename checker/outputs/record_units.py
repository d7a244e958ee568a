"""The dimension of each number in a record, by how its field is annotated, so that it is shown in the reader's units.

`flow: Airflow` (the aliases of `checker.design.fields`) says it, and so does `heat: Annotated[float, "heat_rate"]` in
physics, which knows no design. A record with a field `dimension` says it of its other numbers.
"""

from typing import Annotated, Any, get_args, get_origin, get_type_hints

from checker.design.annotated import Annotated as Marked
from checker.design.fields import Number, Quantity
from checker.units import DIMENSIONS

KNOWN: dict[type, dict[str, str]] = {}


def dimension_in(record: Any, field: str) -> str | None:
    """Dimension of a field's number, "" for one without unit; None where nothing tells."""
    declared = declared_dimensions(type(record)).get(field)
    if declared is None and isinstance(getattr(record, "dimension", None), str):
        own: str = record.dimension
        return own
    return declared


def declared_dimensions(kind: type) -> dict[str, str]:
    """Dimension by field, of those fields whose annotation tells it; worked out once per class."""
    if kind not in KNOWN:
        KNOWN[kind] = read_dimensions(kind)
    return KNOWN[kind]


def read_dimensions(kind: type) -> dict[str, str]:
    """Read the dimensions from the annotations."""
    try:
        hints = get_type_hints(kind, include_extras=True)
    except NameError:  # a name that is imported for type checking alone
        hints = dict(getattr(kind, "__annotations__", {}))
    found = {name: told(hint) for name, hint in hints.items()}
    return {name: dimension for name, dimension in found.items() if dimension is not None}


def told(hint: Any) -> str | None:
    """The dimension that an annotation tells, of itself or of one of its alternatives."""
    if isinstance(hint, Marked):  # type: ignore[arg-type]  # a class at run time
        return hint.kind.dimension if isinstance(hint.kind, Quantity) else "" if isinstance(hint.kind, Number) else None
    if get_origin(hint) is Annotated:
        return next((mark for mark in hint.__metadata__ if isinstance(mark, str) and mark in DIMENSIONS), None)
    return next((dimension for each in get_args(hint) if (dimension := told(each)) is not None), None)
