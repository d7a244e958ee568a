"""Records of the loads: one line for each term, so that a reader can follow room by room."""


from checker.record import Record
from checker.units import show

BTU_PER_SQUARE_FOOT = 3.154591  # W/m2 in one Btu/h ft2
BTU_PER_FOOT = 1.730735  # W/(m K) in one Btu/(h ft F)
BTU_PER_CFM = 1117.8  # W s/(m3 K) in one Btu/(h cfm F)
BTU_PER_CFM_GRAIN = 4.3469e6  # W s kg/(m3 kg) in one Btu lb/(h cfm grain)

DUCTS = "ducts"
"""Group of the terms that ducts outside the shell add in proportion to the others."""


def heat(watts: float, system: str) -> str:
    """Heat of one term in the reader's units: kilowatts would round the terms of a tight house away."""
    return f"{watts:.0f} W" if system == "metric" else show(watts, "heat_rate", system)


class Factor(Record):
    """One factor of a term: its SI value, its dimension, and what it is.

    `flux`, `edge`, `air`, `moist air`: per area, per length, per flow, per flow and moisture.
    """

    value: float
    dimension: str
    name: str = ""

    def text(self, system: str) -> str:
        """The factor in the reader's units."""
        if self.dimension == "flux":
            shown = f"{self.value:.2f} W/m2"
            if system == "trade":
                shown = f"{self.value / BTU_PER_SQUARE_FOOT:.2f} Btu/h ft2"
        elif self.dimension == "edge":
            shown = f"{self.value:.3f} W/m K" if system == "metric" else f"{self.value / BTU_PER_FOOT:.2f} Btu/h ft degF"
        elif self.dimension == "air":
            shown = f"{self.value * 1e-3:.3f} W s/L K" if system == "metric" else f"{self.value / BTU_PER_CFM:.3f} Btu/h cfm degF"
        elif self.dimension == "moist air":
            shown = f"{self.value * 1e-6:.2f} W s/L g/kg"
            if system == "trade":
                shown = f"{self.value / BTU_PER_CFM_GRAIN:.3f} Btu/h cfm grain/lb"
        elif self.dimension == "heat_rate":
            shown = heat(self.value, system)
        elif self.dimension == "temperature_difference" and system == "trade":
            shown = f"{self.value * 1.8:.1f} delta_degF"
        elif self.dimension:
            shown = show(self.value, self.dimension, system)
        else:
            shown = f"{self.value:.3g}"
        return f"{self.name} {shown}" if self.name else shown


class Term(Record):
    """One part of a load in W: what it is, the factors whose product it is, what was assumed, where it is from."""

    what: str
    watts: float
    factors: tuple[Factor, ...] = ()
    assumed: tuple[str, ...] = ()
    source: str = ""
    from_memory: bool = False
    group: str = ""

    def line(self, system: str) -> str:
        """The term as one line."""
        product = " x ".join(factor.text(system) for factor in self.factors)
        notes = [*self.assumed, *(["from memory"] if self.from_memory else [])]
        tail = f" ({'; '.join(notes)})" if notes else ""
        watts = heat(self.watts, system)
        return f"{self.what}: {product} = {watts}{tail}" if product else f"{self.what}: {watts}{tail}"

    def worksheet_lines(self, system: str) -> list[str]:
        """The term, and where its formula is from."""
        return [self.line(system), f"by {self.source}"] if self.source else [self.line(system)]


class Load(Record):
    """The load of a room, or of the house, in W, with its terms."""

    name: str
    terms: tuple[Term, ...]

    @property
    def watts(self) -> float:
        """The sum of the terms."""
        return sum(term.watts for term in self.terms)

    @property
    def from_memory(self) -> tuple[str, ...]:
        """What rests on coefficients from memory."""
        return tuple(term.what for term in self.terms if term.from_memory)

    @property
    def surely(self) -> float:
        """What is left in W without terms from memory, but for those that lower the load."""
        own = [term for term in self.terms if term.group != DUCTS]
        kept = sum(min(0.0, term.watts) if term.from_memory else term.watts for term in own)
        plain = sum(term.watts for term in own)
        ducts = sum(term.watts for term in self.terms if term.group == DUCTS)
        return kept + (ducts * max(0.0, kept) / plain if plain > 0.0 else 0.0)

    def worksheet_lines(self, system: str) -> list[str]:
        """One line for each term, and the sum."""
        lines = [term.line(system) for term in self.terms]
        return [*lines, f"sum for {self.name}: {heat(self.watts, system)}"]


class Loads(Record):
    """The loads of the rooms beside that of the house, in W."""

    house: Load
    rooms: tuple[Load, ...]

    @property
    def sum_of_rooms(self) -> float:
        """The sum over the rooms, W."""
        return sum(room.watts for room in self.rooms)

    @property
    def from_memory(self) -> tuple[str, ...]:
        """What rests on coefficients from memory."""
        return self.house.from_memory

    @property
    def surely(self) -> float:
        """What is left of the house in W without terms from memory; ducts by what is left of their rooms."""
        own = Load(self.house.name, tuple(term for term in self.house.terms if term.group != DUCTS))
        ducts = [room.surely - Load(room.name, tuple(each for each in room.terms if each.group != DUCTS)).surely
                 for room in self.rooms]  # fmt: skip
        return own.surely + sum(ducts)

    def worksheet_lines(self, system: str) -> list[str]:
        """The sum of every room, whose terms stand at the room, then the house by groups."""
        lines = [f"{room.name}: {heat(room.watts, system)}" for room in self.rooms]
        for group in dict.fromkeys(term.group for term in self.house.terms):
            watts = sum(term.watts for term in self.house.terms if term.group == group)
            lines.append(f"whole house, {group}: {heat(watts, system)}")
        lines.append(f"whole house: {heat(self.house.watts, system)}; sum of the rooms: "
                     f"{heat(self.sum_of_rooms, system)}")  # fmt: skip
        memory = ", ".join(self.from_memory)
        lines += [f"coefficients from memory in: {memory}"] if memory else []
        return lines
