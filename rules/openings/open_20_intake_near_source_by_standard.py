"""An air inlet is closer to a source of contamination than the ventilation standard allows.

The standard counts more sources than the code does: exhaust hoods of bath and kitchen, dryers and vehicles as
well as vents. Its distance is that of a stretched string.

The usual cause is one wall for everything. Move the inlet. An inlet in a wall may be 3 ft from a dryer exhaust
or from a source that leaves through the roof; fuel vents follow the fuel gas code, and combined terminals for
living space are free. Where the design is held against the code only, this does not apply.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import Neighbor, Verdict, neighbors, numbers_of, settled
from checker.quantities.opening_kinds import is_mechanical, kind, known_intakes, stated
from checker.rule import Finding, Meets, Num, Rule

SOURCES = frozenset({"exhaust", "kitchen exhaust", "dryer exhaust", "plumbing vent", "street", "parking", "driveway"})


@quantity()
def far_sources(case: Case, inlet: Opening) -> list[Neighbor]:
    """Sources that the whole distance counts for."""
    return neighbors(case, inlet, SOURCES, lambda other: not eased(case, inlet, other))


@quantity()
def near_sources(case: Case, inlet: Opening) -> list[Neighbor]:
    """Dryer exhausts and sources through the roof, for an inlet in a wall."""
    found = neighbors(case, inlet, SOURCES, lambda other: eased(case, inlet, other))
    return [each for each in found if each.opening is not None and not each.unsure]


def eased(case: Case, inlet: Opening, other: Opening) -> bool:
    """Whether the shorter distance counts between the two."""
    if stated(case, inlet, "on") == "roof":
        return False
    return stated(case, other, "on") == "roof" or kind(case, other) == "dryer exhaust"


def inlets(case: Case) -> list[Opening]:
    """Outdoor air intakes, where the design is held against the standard at all."""
    case.codebook.require("standard-intake-to-source")
    return known_intakes(case)


def driven(case: Case, inlet: Opening) -> bool:
    """The inlet is passive, or a combined terminal."""
    return is_mechanical(case, inlet) and kind(case, inlet) != "combined intake and exhaust"


def check(
    _inlet: Opening, far: list[Neighbor], near: list[Neighbor], least: float, eased_to: float
) -> Meets | Finding:
    """Hold both groups against their distances."""
    verdicts: list[tuple[Verdict, float]] = [(settled(near, eased_to), eased_to), (settled(far, least), least)]
    for verdict, limit in verdicts:
        if verdict.offends:
            return Finding(
                f"{{near}} is {{apart}} from this inlet by a stretched string, nearer than {{asked}}{verdict.also}",
                help="move the inlet {short} farther away",
                numbers={**numbers_of(verdict, limit), "asked": Num(limit, "length")},
            )
    return Meets(numbers_of(*verdicts[1]))


RULE = Rule(
    code="OPEN-20", name="intake-near-source-by-standard", severity="caution", since="0.1",
    over=inlets, when=driven, needs=(far_sources, near_sources),
    limits=("standard-intake-to-source", "standard-intake-to-roof-source"), check=check,
    nothing="the design has no outdoor air intake", answers=("D09",),
)  # fmt: skip
