"""Numbers as readers see them: in their units, put into the slots of a message."""

import re
from collections.abc import Mapping

from checker.rule import Num
from checker.sizes import Size, show_size
from checker.units import DIMENSIONS, Airtightness, show

SLOT = re.compile(r"\{([a-z][a-z0-9_]*)\}")


def text_of(number: Num, system: str) -> str:
    """A number as text: with its unit, or a word as it is."""
    value = number.value
    if isinstance(value, Size):
        return show_size(value, system)
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, Airtightness) or (number.dimension in DIMENSIONS and value is not None):
        return show(value, number.dimension, system)
    if isinstance(value, float):
        return f"{value:.4g}" if abs(value) < 1e4 else f"{value:.0f}"
    return "none" if value is None else str(value)


def filled(message: str, numbers: Mapping[str, Num], system: str) -> str:
    """A message with its {slots} filled; two numbers that would look alike get more digits."""
    texts = {name: text_of(number, system) for name, number in numbers.items()}
    names = [name for name in SLOT.findall(message) if name in numbers]
    for place, one in enumerate(names):
        for other in names[place + 1 :]:
            a, b = numbers[one], numbers[other]
            if texts[one] == texts[other] and a.dimension == b.dimension and a.dimension in DIMENSIONS:
                from checker.units import show_pair

                texts[one], texts[other] = show_pair(a.value, b.value, a.dimension, system)
    return SLOT.sub(lambda slot: texts.get(slot.group(1), slot.group(0)), message)
