"""What a design file may say, as typed classes: the markers that give a field its unit or its words.

A section of the file is a plain class with annotated fields (not a dataclass: importing that module would
cost as much as reading a design). Each field carries its kind (a quantity with a dimension,
a choice, a reference, yes or no, text) in its annotation and its meaning in `said(...)`. From this one
source come the fast builder (build.py), the JSON Schema (schema.py) and the typed Python API
(pydantic_bridge.py). Nothing here imports pydantic: the hooks do, when pydantic calls them.
"""

from typing import Any, ClassVar, TypeVar

from checker.design.annotated import Annotated
from checker.sizes import Size
from checker.units import Airtightness

C = TypeVar("C")


class Said:
    """What a field means: description, examples for editors, its key in the file, and how it is filled when absent."""

    __slots__ = ("description", "examples", "filled_with", "key")

    def __init__(self, description: str, examples: tuple[object, ...], key: str, filled_with: Any) -> None:
        self.description = description
        self.examples = examples
        self.key = key
        self.filled_with = filled_with


class Node:
    """A thing of the design: it knows its path in the file, its name and what it stands in."""

    short: ClassVar[tuple[str, ...]] = ()  # fields that a plain value in place of the whole record fills
    spoken: ClassVar[tuple[str, ...]] = ()  # fields that a longer plain text may tell one after the other
    fields: ClassVar[dict[str, tuple[Any, Said]]] = {}
    path: Any = ""
    name: Any = ""
    up: Any = None

    def __setattr__(self, attribute: str, value: object) -> None:
        raise AttributeError(f"a design is read-only: cannot set {attribute}")

    @classmethod
    def __get_pydantic_core_schema__(cls, source: object, handler: object) -> Any:
        from checker.design.pydantic_bridge import core_schema

        return core_schema(cls)

    @classmethod
    def __get_pydantic_json_schema__(cls, schema: object, handler: object) -> dict[str, Any]:
        from checker.design.pydantic_bridge import json_schema

        return json_schema(cls)


def record(cls: type[C]) -> type[C]:
    """Make a section class: its fields, inherited ones first, are kept in `fields` as (annotation, Said)."""
    fields = dict(getattr(cls, "fields", {}))
    for attribute, annotation in cls.__annotations__.items():
        fields[attribute] = (annotation, cls.__dict__[attribute])
        setattr(cls, attribute, None)
    cls.fields = fields  # type: ignore[attr-defined]
    return cls


def said(description: str, *examples: object, key: str = "") -> Any:
    """A field that may be absent; `key` is its spelling in the file where Python reserves the word."""
    return Said(description, examples, key, None)


def named(description: str, *examples: object, key: str = "") -> Any:
    """A map of things keyed by name, empty when absent; `key` as in `said`."""
    return Said(description, examples, key, dict)


def listed(description: str, *examples: object, key: str = "") -> Any:
    """A list, empty when absent; a single value may be written without brackets."""
    return Said(description, examples, key, list)


class Kind:
    """What a scalar of the file is. Subclasses differ in data only; build.py and schema.py act on them."""

    __slots__ = ()


class Quantity(Kind):
    """A number with a unit; `none_is` gives the word `none` a value (no screen, no insulation).

    A `signed` one may be negative, as a position west of the origin is.
    """

    __slots__ = ("dimension", "none_is", "signed")

    def __init__(self, dimension: str, none_is: float | None = None, signed: bool = False) -> None:
        self.dimension = dimension
        self.none_is = none_is
        self.signed = signed or dimension in ("temperature", "temperature_difference", "house_pressure")


class SizeKind(Kind):
    """A cross-section such as `6 in` or `10x6 in`; for a filter `20x25x1 in`."""

    __slots__ = ("of_filter",)

    def __init__(self, of_filter: bool = False) -> None:
        self.of_filter = of_filter


class AirtightnessKind(Kind):
    """`1.5 ACH50`, `650 cfm50` or a flow per area of floor or envelope."""

    __slots__ = ()


class Choice(Kind):
    """One word of a list; each may have other spellings that mean the same."""

    __slots__ = ("_spellings", "also", "words")

    def __init__(self, *words: str, **also: str) -> None:
        """`also` maps a word (spaces and hyphens as underscores) to other spellings, split by ` | `."""
        self.words = words
        self.also = also
        self._spellings: dict[str, str] = {}

    @property
    def spellings(self) -> dict[str, str]:
        """The words by their spellings, folded; made when a design first uses one of them."""
        if not self._spellings:
            found = {fold(word): word for word in self.words}
            by_slug = {spelling.replace(" ", "_"): word for spelling, word in found.items()}
            for slug, others in self.also.items():
                for other in others.split(" | "):
                    found[fold(other)] = by_slug[slug]
            self._spellings = found
        return self._spellings


def fold(word: str) -> str:
    """Lower case, hyphens and underscores as single spaces: how words of the file are compared."""
    return " ".join(word.lower().replace("-", " ").replace("_", " ").split())


class Reference(Kind):
    """The name of a thing in one of the sections, or one of a few plain words."""

    __slots__ = ("sections", "words")

    def __init__(self, *sections: str, words: Choice | None = None) -> None:
        self.sections = sections
        self.words = words


class YesNo(Kind):
    """A truth value: yes, no, true or false."""

    __slots__ = ()


class Whole(Kind):
    """A count: a whole number, not negative."""

    __slots__ = ()


class Number(Kind):
    """A plain number without a unit (an exponent, a MERV, a ratio)."""

    __slots__ = ("least", "most")

    def __init__(self, least: float | None = None, most: float | None = None) -> None:
        self.least = least
        self.most = most


class Text(Kind):
    """Free text; a number is taken as written."""

    __slots__ = ()


Airflow = Annotated[float, Quantity("airflow")]
AirflowOrNone = Annotated[float, Quantity("airflow", none_is=0.0)]
Length = Annotated[float, Quantity("length")]
LengthOrNone = Annotated[float, Quantity("length", none_is=0.0)]
SignedLength = Annotated[float, Quantity("length", signed=True)]
Diameter = Annotated[float, Quantity("diameter")]
Area = Annotated[float, Quantity("area")]
AreaOrNone = Annotated[float, Quantity("area", none_is=0.0)]
SmallArea = Annotated[float, Quantity("small_area")]
SmallAreaOrNone = Annotated[float, Quantity("small_area", none_is=0.0)]
Volume = Annotated[float, Quantity("volume")]
Pressure = Annotated[float, Quantity("pressure")]
HousePressure = Annotated[float, Quantity("house_pressure")]
Power = Annotated[float, Quantity("power")]
HeatRate = Annotated[float, Quantity("heat_rate")]
Temperature = Annotated[float, Quantity("temperature")]
TemperatureDifference = Annotated[float, Quantity("temperature_difference")]
Resistance = Annotated[float, Quantity("resistance", none_is=0.0)]
Permeance = Annotated[float, Quantity("permeance")]
UValue = Annotated[float, Quantity("u_value")]
Sound = Annotated[float, Quantity("sound")]
Share = Annotated[float, Quantity("share")]
Slope = Annotated[float, Quantity("slope")]
Angle = Annotated[float, Quantity("angle")]
Velocity = Annotated[float, Quantity("velocity")]
FrictionRate = Annotated[float, Quantity("friction_rate")]
Humidity = Annotated[float, Quantity("relative_humidity")]
Leakage = Annotated[float, Quantity("leakage")]
DegreeDays = Annotated[float, Quantity("degree_days")]
ElectricityPrice = Annotated[float, Quantity("electricity_price")]
FuelPrice = Annotated[float, Quantity("fuel_price")]
Money = Annotated[float, Quantity("money")]
YearlyCost = Annotated[float, Quantity("yearly_cost")]
MoistureFlow = Annotated[float, Quantity("moisture_flow")]
HumidityRatio = Annotated[float, Quantity("humidity_ratio")]
Efficacy = Annotated[float, Quantity("efficacy")]
AirChanges = Annotated[float, Quantity("air_changes")]
AirChangesAt50 = Annotated[float, Quantity("ach50")]
AirflowPerHeat = Annotated[float, Quantity("airflow_per_heat")]
Energy = Annotated[float, Quantity("energy")]
Ratio = Annotated[float, Number()]
AirtightnessFact = Annotated[Airtightness, AirtightnessKind()]
DuctSize = Annotated[Size, SizeKind()]
FilterSize = Annotated[Size, SizeKind(of_filter=True)]
Flag = Annotated[bool, YesNo()]
Count = Annotated[int, Whole()]
Plain = Annotated[str, Text()]
