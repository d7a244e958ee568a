"""Numbers as books print them: `4000 cfm`, `0.23 in w.c./100 ft`, `28.86 in Hg` to SI, and back into the printed unit.

The tool's own spellings come first; `MORE` adds units that no design file needs.
"""

import re
from typing import NamedTuple

from checker.unit_table import TABLE

INCH_WATER = 249.08891
BTU = 1055.05585262
POUND = 0.45359237
FOOT = 0.3048

MORE = {
    "in Hg": 3386.389, "psia": 6894.757, "psi": 6894.757, "mbar": 100.0, "bar": 1e5,
    "kJ/kg": 1000.0, "Btu/lb": BTU / POUND, "m3/kg": 1.0, "ft3/lb": FOOT**3 / POUND, "g/m3": 1e-3, "g/s": 1e-3, "kg/s": 1.0,
    "g/h": 1e-3 / 3600.0, "kg/day": 1.0 / 86400.0,
    "W/m2": 1.0, "W/K": 1.0, "W/m K": 1.0, "Btu/h degF": 1.8 * 0.2930710702, "Btu/h ft degF": 1.730735,
    "Btu/h cfm degF": 0.2930710702 * 1.8 / (FOOT**3 / 60.0), "Btu/h cfm": 0.2930710702 / (FOOT**3 / 60.0),
    "W/(L/s)": 1000.0, "L/(s cm2)": 10.0, "L/s m2": 1e-3, "K h": 3600.0, "K/m": 1.0,
    "hp": 745.69987, "MMBtu": BTU * 1e6, "in2/kBtu/h": 0.0254**2 / 293.0710702, "USD": 1.0, "USD/yr": 1.0, "yr": 1.0,
    "phon": 1.0, "cfm/in2": FOOT**3 / 60.0 / 0.0254**2, "Pa/K": 1.0, "kg/m3": 1.0, "m2 K/W": 1.0, "W/m2 K": 1.0,
    "kg": 1.0, "J/kg K": 1.0, "Pa s": 1.0,
}  # fmt: skip
"""SI value of one of each; interval scales are in the tool's own table."""

UNITS: dict[str, tuple[float, float]] = {
    **{unit: scale for spellings in TABLE.values() for unit, scale in spellings.items()},
    **{unit: (factor, 0.0) for unit, factor in MORE.items()},
}
NUMBER = re.compile(r"([-+]?\d[\d,]*\.?\d*(?:e[-+]?\d+)?)(?: (.+))?")
LEVELS = ("dB", "phon")


class Printed(NamedTuple):
    """A printed number: its SI value, the unit it is printed in, and that unit's scale."""

    value: float
    unit: str
    factor: float = 1.0
    offset: float = 0.0
    decimals: int = 0

    def text(self, value: float, more: int = 0) -> str:
        """An SI value in this unit, with as many decimals as the print has and `more`."""
        if abs(value) == float("inf"):
            return "no limit"
        number = f"{(value - self.offset) / self.factor:,.{self.decimals + more}f}"
        return f"{number} {self.unit}".strip()

    @property
    def is_ratio(self) -> bool:
        """Whether a difference in percent means anything: not for temperatures and levels, nor against zero."""
        return self.offset == 0.0 and self.value != 0.0 and self.unit not in LEVELS and abs(self.value) != float("inf")


def printed(text: object) -> Printed:
    """A number or a number with its unit. ValueError for anything else."""
    if isinstance(text, int | float) and not isinstance(text, bool):
        return Printed(float(text), "", decimals=len(f"{text}".partition(".")[2]) if "e" not in f"{text}" else 0)
    found = NUMBER.fullmatch(str(text))
    if found is None:
        raise ValueError(f"{text!r} is not a printed number")
    number, unit = found[1].replace(",", ""), found[2] or ""
    if unit and unit not in UNITS:
        raise ValueError(f"{text!r}: no unit {unit!r} is known")
    factor, offset = UNITS[unit] if unit else (1.0, 0.0)
    decimals = len(number.partition(".")[2]) if "e" not in number else 6
    return Printed(float(number) * factor + offset, unit, factor, offset, decimals)


def looks_printed(text: str) -> bool:
    """Whether a text is a number, with or without a unit."""
    return NUMBER.fullmatch(text) is not None
