"""Numbers as readers see them: in their units, put into the slots of a message."""

import re
from collections.abc import Mapping

from checker.rule import Num
from checker.units import DIMENSIONS, show

SLOT = re.compile(r"\{([a-z][a-z0-9_]*)\}")


def text_of(number: Num, system: str) -> str:
    """A number as text: with its unit, or a word as it is."""
    if number.dimension in DIMENSIONS:
        return show(number.value, number.dimension, system)
    if isinstance(number.value, float):
        return f"{number.value:.4g}"
    return str(number.value)


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
