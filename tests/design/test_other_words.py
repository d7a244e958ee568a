"""What people call a key by another word leads them to a key that there is."""

import pytest

from checker.design import Design
from checker.design.build import build_section
from checker.design.fields import Node
from checker.design.other_words import WORDS, known_as
from checker.design.shape import Shape, fields_of


def sections(of: type[Node]) -> set[type[Node]]:
    """A section and all below it."""
    found = {of}
    for field in fields_of(of).values():
        shape: Shape | None = field.shape
        while shape is not None:
            if shape.section is not None:
                found |= sections(shape.section)
            shape = shape.of
    return found


BY_NAME = {section.__name__: section for section in sections(Design)}


@pytest.mark.parametrize("section", sorted(WORDS))
def test_words_lead_to_keys_that_exist_and_are_none_themselves(section: str) -> None:
    keys = set(fields_of(BY_NAME[section]))
    spelled = {key.replace("_", " ") for key in keys}
    for words, name in WORDS[section].items():
        assert name in keys or " " in name, (section, name)
        assert not spelled & set(words.split(" | ")), (section, words)


def test_a_run_knows_the_words_of_a_duct() -> None:
    assert known_as(BY_NAME["Run"], "Diameter") == "the key is `size`"


@pytest.mark.parametrize(
    ("data", "path", "help"),
    [
        ({"hoods": {"hood": {"height": "28 in"}}}, "hoods.hood.height", "the key is `mounting_height`"),
        ({"fans": {"bath": {"cfm": 50}}}, "fans.bath.cfm", "write it as a setting"),
        ({"house": {"bedroms": 2}}, "house.bedroms", "the nearest spelling is `bedrooms`"),
        ({"house": {"floor_area": "2", "000 sq ft": None}}, "house.000 sq ft", "without a comma"),
        ({"fans": {"bath": {"settings": "50 cfm"}}}, "fans.bath.settings", "give it a name, such as `{high: 50 cfm}`"),
    ],
)
def test_help_for_a_key(data: dict[str, object], path: str, help: str) -> None:
    whole = {"design_format": 1, "project": {"title": "words"}, **data}
    _, faults = build_section(Design, whole)
    assert [fault.path for fault in faults if help in fault.help] == [path]


def test_a_room_may_be_its_use_alone_and_a_list_of_one_a_value() -> None:
    data = {"design_format": 1, "project": {"title": "words"}, "rooms": {"den": "bedroom", "hall": {"use": ["hall"]}}}
    design, faults = build_section(Design, data)
    assert isinstance(design, Design)
    assert not faults
    assert [room.use for room in design.rooms.values()] == ["bedroom", "hall"]


@pytest.mark.parametrize(
    ("data", "path"),
    [
        ({"combustion": {"tank": {"kind": "water heater", "draft": "magic"}}}, "combustion.tank.draft"),
        ({"hoods": {"hood": {"duct": "six inch"}}}, "hoods.hood.duct.size"),
        ({"hoods": {"hood": {"width": [1, 2]}}}, "hoods.hood.width"),
        ({"ducts": {"system": {"runs": "two of them"}}}, "ducts.system.runs"),
    ],
)
def test_what_cannot_be_read_counts_as_to_be_decided(data: dict[str, object], path: str) -> None:
    design, faults = build_section(Design, {"design_format": 1, "project": {"title": "words"}, **data})
    assert isinstance(design, Design)
    assert [fault.path for fault in faults] == [path]
    assert path in design.tbd
