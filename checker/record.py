"""Records: read-only tuples with named fields, as `typing.NamedTuple` makes them.

Python's own way compiles a function for each such class, which costs some 0.2 ms; a check brings in about two hundred
of them, most of them for a few values. These share one constructor. To a type checker they are NamedTuples.
"""

from collections import _tuplegetter  # type: ignore[attr-defined]
from typing import TYPE_CHECKING, Any

__all__ = ["Record"]

if TYPE_CHECKING:
    from typing import NamedTuple as Record
else:
    ABSENT = object()

    class RecordType(type):
        """Makes the fields of a record from the annotations of its class body."""

        def __new__(meta, name: str, bases: tuple[type, ...], body: dict[str, Any]) -> type:
            body["__slots__"] = ()
            if "__annotations__" in body:
                fields = tuple(body["__annotations__"])
                body["_fields"] = body["__match_args__"] = fields
                body["_places"] = {field: place for place, field in enumerate(fields)}
                body["_defaults"] = [body.get(field, ABSENT) for field in fields]
                for place, field in enumerate(fields):
                    body[field] = _tuplegetter(place, "")
            return type.__new__(meta, name, bases, body)

    class Record(tuple, metaclass=RecordType):
        """Base of all records."""

        def __new__(cls, *given: Any, **named: Any) -> "Record":
            if named or len(given) != len(cls._fields):
                given = filled(cls, given, named)
            return tuple.__new__(cls, given)

        def _replace(self, **named: Any) -> "Record":
            """The same with some fields changed. Raises ValueError for a field that it has not."""
            values = list(self)
            for field, value in named.items():
                if field not in self._places:
                    raise ValueError(f"{type(self).__name__} has no field {field}")
                values[self._places[field]] = value
            return tuple.__new__(type(self), values)

        def _asdict(self) -> dict[str, Any]:
            """The values by field."""
            return dict(zip(self._fields, self, strict=True))

        def __getnewargs__(self) -> tuple[Any, ...]:
            return tuple(self)

        def __repr__(self) -> str:
            shown = ", ".join(f"{field}={value!r}" for field, value in zip(self._fields, self, strict=True))
            return f"{type(self).__name__}({shown})"

    def filled(cls: type[Record], given: tuple[Any, ...], named: dict[str, Any]) -> list[Any]:
        """The values of all fields, from what was given, then the defaults. Raises TypeError as a call does."""
        values = [*given, *cls._defaults[len(given) :]]
        places = cls._places
        for field, value in named.items():
            place = places.get(field, -1)
            if place < len(given):
                raise TypeError(f"{cls.__name__} has no field {field}, or it was given twice")
            values[place] = value
        if len(given) > len(places):
            raise TypeError(f"{cls.__name__} has {len(places)} fields, {len(given)} values were given")
        for value in values:
            if value is ABSENT:
                raise TypeError(f"{cls.__name__} lacks {cls._fields[values.index(ABSENT)]}")
        return values
