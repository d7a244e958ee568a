"""Builds typed sections from plain data, noting every fault and leaving out what is refused."""

import re
from typing import Any

from checker.design.fields import Choice, Kind, Node, Quantity, Reference, Text, fold
from checker.design.shape import Shape, fields_of, fill
from checker.design.short_forms import counted, spelled
from checker.design.values import REFUSED, scalar, words_of
from checker.dimensions import DIMENSIONS
from checker.faults import Fault
from checker.read import Place, Reading

TBD = frozenset(
    {"tbd", "tbc", "to be determined", "to be decided", "to be confirmed", "unknown", "?", "vif", "by others", "nic",
     "per mfr", "don't know", "not decided"}
)  # fmt: skip
NONE = frozenset({"none", "no", "n/a", "na", "none required", "not required", "none provided", "not provided"})
PER_HOUR = re.compile(r"(?:/|\bper\s)\s*(?:h|hr|hour)\b", re.IGNORECASE)


class Builder:
    """Builds one design; keeps its faults, its `tbd` paths, what is refused among them, and its stated `none` paths."""

    def __init__(self, reading: Reading) -> None:
        self.reading = reading
        self.faults: list[Fault] = []
        self.tbd: set[str] = set()
        self.none: set[str] = set()
        self.hourly: set[str] = set()
        self.references: list[tuple[str, str, Reference, Any, Any]] = []
        self.dropped: list[tuple[str, Any, Any]] = []
        self.filters: dict[str, Node] = {}  # told where they sit, by the name that they are given
        self.example: object = None  # of the key that is being read

    def drop_wrong_names(self) -> None:
        """Take wrong references out of the model; their places count as still to be decided."""
        for path, holder, slot in reversed(self.dropped):
            if isinstance(holder, list):
                del holder[slot]
            elif path.endswith(f".{slot}") and slot == path.rpartition(".")[2] and not isinstance(holder.get(slot), str):
                holder.pop(slot, None)
            else:
                holder[slot] = None
            self.tbd.add(path)

    def fault(self, code: str, path: str, message: str, help: str, at_key: bool = False) -> None:
        """Note a fault at the key or value of a path."""
        places = (self.reading.keys, self.reading.values)
        first, second = places if at_key else reversed(places)
        place = first.get(path) or second.get(path) or Place(1, 1, 1, 1)
        self.faults.append(Fault(code, path, message, help, *place, fatal=False))

    def record(
        self, section: type[Node], data: object, path: str, up: Node | None, name: str = ""
    ) -> Node | None:
        """Build a section from a map, or from a plain value where the section has a short form."""
        if not isinstance(data, dict):
            data = self.short_form(section, data, path)
            if data is None:
                return None
        node = section.__new__(section)
        values = node.__dict__
        values.update(path=path, name=name)
        if "up" not in section.fields:  # a position's own `up` is its height
            values["up"] = up
        known = fields_of(section)
        if not data.keys() <= known.keys():
            from checker.design.same_keys import canonical
            from checker.design.unknown_key import unknown_key

            data = canonical(self, section, data, path)
        for key, value in data.items():
            field = known.get(key)
            if field is None:
                unknown_key(self, section, key, f"{path}.{key}" if path else key)
                continue
            self.example = field.examples[0] if field.examples else None
            if key == "filter" and value.__class__ in (dict, str):
                from checker.design.in_place import filter_in_place, told_in_place

                value = filter_in_place(self, value, f"{path}.{key}", node) if told_in_place(value) else value
            built = self.value(field.shape, value, f"{path}.{key}" if path else key, node)
            if built is not None:
                values[field.attribute] = built
            if field.shape.kind.__class__ is Reference and isinstance(built, str):
                self.references.append((f"{path}.{key}", built, field.shape.kind, values, field.attribute))
        fill(section, values)
        return node

    def short_form(self, section: type[Node], data: object, path: str) -> dict[str, object] | None:
        """Turn a plain value into the map that it stands for, or note why it can't be."""
        told = spelled(section, data)
        if told is not None:
            place = self.reading.values.get(path)
            for key in told:
                if place is not None:
                    self.reading.values.setdefault(f"{path}.{key}", place)
            if told and not isinstance(data, str):
                self.reading.sources.setdefault(
                    f"{path}.{section.short[0]}", self.reading.sources.get(path, str(data))
                )
            return told
        keys = list(fields_of(section))
        shown = ", ".join(f"`{key}`" for key in keys[:4])
        example = f": `{path.rpartition('.')[2]}: {flow(self.example)}`" if isinstance(self.example, dict) else ""
        self.fault(
            "FILE-21", path, f"`{show(data)}` stands where a map is wanted", f"write keys such as {shown}{example}"
        )
        self.tbd.add(path)
        return None

    def value(self, shape: Shape, value: object, path: str, up: Node) -> Any:
        """Build one value by its shape; None when it is absent, to be decided, stated as none, or refused."""
        if value is None or (isinstance(value, str) and fold(value) in TBD):
            self.tbd.add(path)
            return None
        if shape.form == "scalar":
            return self.scalar(shape, value, path)
        if isinstance(value, str) and fold(value) in NONE:
            self.none.add(path)
            return {} if shape.form == "map" else [] if shape.form == "list" else None
        if shape.form == "record":
            assert shape.section is not None
            return self.record(shape.section, value, path, up, path.rpartition(".")[2])
        return self.map(shape, value, path, up) if shape.form == "map" else self.list(shape, value, path, up)

    def scalar(self, shape: Shape, value: object, path: str) -> Any:
        """Read a scalar by its kind; the reasons for refusing it become faults."""
        assert shape.kind is not None
        if isinstance(value, list) and len(value) == 1:
            value = value[0]
        if isinstance(value, (dict, list)):
            self.fault("FILE-21", path, f"a {'map' if isinstance(value, dict) else 'list'} stands where "
                       f"{words_of(shape.kind)} is wanted",
                       "leave it out: each branch names this run as its `from`"
                       if ".runs." in path and path.endswith(".to") else "write one value")  # fmt: skip
            self.tbd.add(path)
            return None
        read = scalar(shape.kind, value, self.reading.sources.get(path))
        if read.__class__ is REFUSED:
            self.fault(read.code, path, self.fitted(shape.kind, read.problem), self.fitted(shape.kind, read.remedy))
            self.tbd.add(path)
            return None
        if shape.kind.__class__ is Quantity and shape.kind.dimension == "share" and PER_HOUR.search(str(value)):
            self.hourly.add(path)
        return read

    def fitted(self, kind: Kind, text: str) -> str:
        """A message with the example of the key that was read in place of the general one of its dimension."""
        if isinstance(kind, Quantity) and isinstance(self.example, str):
            return text.replace(f"`{DIMENSIONS[kind.dimension].example}`", f"`{self.example}`")
        return text

    def map(self, shape: Shape, value: object, path: str, up: Node) -> dict[str, Any] | None:
        """Build a map of named things."""
        assert shape.of is not None
        if not isinstance(value, dict):
            value = counted(shape, value) or value
        if not isinstance(value, dict):
            shown = show(value) if isinstance(value, (str, int, float)) else "..."
            self.fault("FILE-21", path, f"`{show(value)}` stands where things keyed by name are wanted",
                       f"give it a name, such as `{{high: {shown}}}`" if path.endswith(".settings") else
                       f"write it as `{path.rpartition('.')[2]}: {flow(self.example)}`, or `none`"
                       if isinstance(self.example, dict) else "write `name: ...` below it, or `none`")  # fmt: skip
            self.tbd.add(path)
            return None
        built: dict[str, Any] = {}
        for key, item in value.items():
            below = f"{path}.{key}"
            name = self.map_key(shape, key, below)
            if name is None:
                continue
            if name in built:
                self.fault("FILE-20", below, f"`{key}` is `{name}` once more", "write it once, with the whole count",
                           at_key=True)  # fmt: skip
                continue
            thing = self.named(shape.of, item, below, up, key)
            if thing is not None:
                built[name] = thing
            if isinstance(shape.keys, Reference):
                self.references.append((below, name, shape.keys, built, name))
        return built

    def named(self, of: Shape, item: object, path: str, up: Node, name: str) -> Any:
        """A named thing: one about which nothing is said yet is still there."""
        if of.form != "record":
            return self.value(of, item, path, up)
        assert of.section is not None
        if item is None or (isinstance(item, str) and fold(item) in TBD):
            self.tbd.add(path)
            item = {}
        return self.record(of.section, item, path, up, name)

    def map_key(self, shape: Shape, key: str, path: str) -> str | None:
        """The key of a map as the model spells it."""
        if not isinstance(shape.keys, Choice):
            return key
        read = scalar(shape.keys, key, None)
        if read.__class__ is REFUSED:
            self.fault(read.code, path, read.problem, read.remedy, at_key=True)
            return None
        return str(read)

    def list(self, shape: Shape, value: object, path: str, up: Node) -> list[Any]:
        """Build a list; one value may stand without brackets, or several in one text split by commas."""
        assert shape.of is not None
        if shape.of.form == "record" and not isinstance(value, (list, dict)):
            self.fault("FILE-21", path, f"`{show(value)}` stands where a list is wanted",
                       f"write a list such as `[{flow(self.example)}]`")  # fmt: skip
            self.tbd.add(path)
            return []
        items: list[object] = value if isinstance(value, list) else [value]
        texts = isinstance(value, str) and shape.of.form == "scalar" and not isinstance(shape.of.kind, Text)
        if texts and "," in str(value):
            items = [part.strip() for part in str(value).split(",")]
        built = []
        for number, item in enumerate(items):
            below = f"{path}[{number}]"
            if below not in self.reading.values and path in self.reading.values:
                self.reading.values[below] = self.reading.values[path]
            thing = self.value(shape.of, item, below, up)
            if thing is not None:
                built.append(thing)
                if isinstance(shape.of.kind, Reference):
                    self.references.append((below, thing, shape.of.kind, built, len(built) - 1))
        return built


def flow(example: object) -> str:
    """An example as it would stand on one line of a file."""
    if isinstance(example, dict):
        return "{" + ", ".join(f"{key}: {flow(value)}" for key, value in example.items()) + "}"
    return "yes" if example is True else "no" if example is False else str(example)


def show(value: object) -> str:
    """A value as a short text for a message."""
    text = str(value).replace("\n", " ")
    return text if len(text) <= 40 else text[:37] + "..."
