"""What is said of a key that a section does not have. Imported only when there is one."""

import re
from typing import TYPE_CHECKING

from checker.design import NOT_READ_YET, Design
from checker.design.fields import Node
from checker.design.nearest import nearest
from checker.design.other_words import known_as
from checker.design.shape import fields_of

if TYPE_CHECKING:
    from checker.design.builder import Builder

THOUSANDS = re.compile(r"\d{3}(?!\w)")


def unknown_key(builder: "Builder", section: type[Node], key: str, path: str) -> None:
    """Note a key that the section does not have, with the nearest one."""
    if section is Design and key in NOT_READ_YET:
        builder.fault("FILE-27", path, f"section `{key}` is kept, but no rule reads it yet",
                      "nothing to change: it will be read by a later version", at_key=True)  # fmt: skip
        return
    called = re.sub(r"(?<!^)(?=[A-Z])", " ", section.__name__).lower()
    where = f"`{called}`" if section is not Design else "a design file"
    if THOUSANDS.match(key):
        builder.fault("FILE-20", path, f"{where} has no key `{key}`: between braces the comma in a number ends the value",
                      "write the number without a comma, such as `2000 ft2`", at_key=True)  # fmt: skip
        return
    remedy = known_as(section, key) or nearest(key, list(fields_of(section)), "keys")
    builder.fault("FILE-20", path, f"{where} has no key `{key}`", remedy, at_key=True)
