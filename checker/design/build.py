"""From the plain data of a reading to a typed design, with every fault in one pass.

This is the fast path: it imports neither pydantic nor jsonschema. What is refused is left out, so that
rules run on whatever could be built.
"""


from checker.design import FORMAT, Design
from checker.design.builder import Builder, show
from checker.design.combustion import kind_by_name
from checker.design.fields import Node
from checker.design.references import Names, resolve
from checker.faults import Fault
from checker.read import Place, Reading
from checker.record import Record


class Built(Record):
    """A design and what was wrong with its file."""

    design: Design
    faults: list[Fault]


def build(reading: Reading) -> Built:
    """Build the design of a reading. Never raises for anything a file can say."""
    builder = Builder(reading)
    data = reading.data
    if not isinstance(data, dict):
        builder.fault("FILE-21", "", f"`{show(data)}` stands where a design is wanted",
                      "begin with `design_format: 1` and `project: {title: ...}`")  # fmt: skip
        data = {}
    design = builder.record(Design, data, "", None)
    assert isinstance(design, Design)
    design.filters.update(builder.filters)  # type: ignore[arg-type]
    for burner in design.combustion.values():
        kind_of = None if burner.kind is not None or f"{burner.path}.kind" in builder.tbd else kind_by_name(burner.name)
        if kind_of is not None:
            burner.__dict__["kind"] = kind_of
            reading.values.setdefault(f"{burner.path}.kind", reading.keys.get(burner.path, Place(1, 1, 1, 1)))
    for path, name, kind, holder, slot in builder.references:
        resolve(builder, Names(design, path), path, name, kind, holder, slot)
    builder.drop_wrong_names()
    design.__dict__.update(tbd=frozenset(builder.tbd), stated_none=frozenset(builder.none), hourly=frozenset(builder.hourly))
    compulsory(builder, design, data)
    return Built(design, builder.faults)


def build_section(section: type[Node], data: object) -> tuple[Node | None, list[Fault]]:
    """Build one section from plain data, as programs do; a whole design when `section` is Design."""
    reading = Reading("data", "", data, {}, {}, [], {})
    if section is Design:
        built = build(reading)
        return built.design, built.faults
    builder = Builder(reading)
    return builder.record(section, data, "", None), builder.faults


def compulsory(builder: Builder, design: Design, data: dict[str, object]) -> None:
    """The few keys that every file must have."""
    if "design_format" not in data:
        builder.fault(
            "FILE-25",
            "design_format",
            "`design_format` is missing",
            f"begin the file with `design_format: {FORMAT}`",
        )
    elif design.design_format is not None and design.design_format != FORMAT:
        builder.fault("FILE-26", "design_format", f"`design_format: {design.design_format}` is not a format that this "
                      "version reads", f"write `design_format: {FORMAT}`")  # fmt: skip
    if design.project is None or design.project.title is None:
        at = "project" if "project" in data else "design_format"
        builder.fault(
            "FILE-25", at, "`project.title` is missing", "write `project: {title: what the design is called}`"
        )
    if not any(key not in ("design_format", "project", "accepted") for key in data):
        builder.fault("FILE-25", "project", "the file says nothing about a house yet",
                      "add one section, for example `fans:`, `rooms:` or `house:`")  # fmt: skip
