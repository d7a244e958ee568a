"""A filter told where it sits: `filter: MERV 13`, or its keys under `filter`, in place of a name in `filters`."""

from typing import TYPE_CHECKING

from checker.design.fields import Node, fold
from checker.design.filters import Filter

if TYPE_CHECKING:
    from checker.design.builder import Builder


def told_in_place(value: object) -> bool:
    """Whether a value under the key `filter` tells of the filter itself."""
    return isinstance(value, dict) or (isinstance(value, str) and fold(value).startswith("merv"))


def filter_in_place(builder: "Builder", value: object, path: str, holder: Node) -> object:
    """Build the filter of a fan, unit or grille and give its name among the filters of the design."""
    data = builder.reading.data
    named = data.get("filters") if isinstance(data, dict) else None
    known = named if isinstance(named, dict) else {}
    if isinstance(value, str):
        if value in known:
            return value
        place = builder.reading.values.get(path)
        if place is not None:
            builder.reading.values[f"{path}.merv"] = place
        value = {"merv": value}
    root = holder
    while root.up is not None:
        root = root.up
    name = f"{holder.name} filter"
    while name in known or name in builder.filters:
        name += " in place"
    made = builder.record(Filter, value, path, root, name)
    assert isinstance(made, Filter)
    builder.filters[name] = made
    return name
