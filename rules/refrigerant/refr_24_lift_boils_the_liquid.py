"""The liquid loses more pressure on its way up than its subcooling covers.

A column of liquid weighs: every ten feet of rise take 4 to 5 psi. If the liquid is not cold enough below its boiling
point, it starts to boil before the valve of the indoor unit, which then starves and hisses.

Place the outdoor unit higher, or ask the maker for the subcooling or the line sizes for this rise. Friction is not
counted here, so a small margin is none. Ductless units expand the liquid outdoors and are not judged by this.
"""

from checker.case import Case, given, quantity
from checker.design.refrigerant import RefrigerantLine
from checker.physics.refrigerant import lift_pressure, subcooling_for_lift
from checker.quantities.refrigerant import designation, drawn_lines, expands_indoors, system_of
from checker.rule import Finding, Meets, Rule


def lifts_liquid(case: Case, line: RefrigerantLine) -> bool:
    """Its subcooling is not stated, or no valve at its indoor unit depends on it."""
    return expands_indoors(case, line) and case.maybe(line, "subcooling") is not None


@quantity("house_pressure", "density of the liquid x gravity x rise")
def pressure_lost(case: Case, line: RefrigerantLine) -> float:
    """Pressure that the column of liquid takes; negative where it falls."""
    name, warm = designation(case, system_of(case, line)), float(case.limit("liquid-line-temperature"))
    return lift_pressure(name, float(case.get(line, "rise")), warm)


@quantity("temperature_difference", "pressure lost / slope of the vapor pressure")
def subcooling_needed(case: Case, line: RefrigerantLine) -> float:
    """Subcooling that the rise uses up."""
    name, warm = designation(case, system_of(case, line)), float(case.limit("liquid-line-temperature"))
    return subcooling_for_lift(name, float(case.get(line, "rise")), warm)


def check(line: RefrigerantLine, subcooling: float, needed: float, _lost: float) -> Meets | Finding:
    """Compare the subcooling with what the rise uses up."""
    if needed <= subcooling * (1.0 + 1e-9):
        return Meets()
    return Finding(
        f"the rise of {line.name} uses up {{subcooling_needed}} of subcooling; the liquid has {{subcooling}}",
        at="rise",
        help="raise the outdoor unit toward the indoor one, or ask the maker for the subcooling that this rise needs",
    )


RULE = Rule(
    code="REFR-24", name="lift-boils-the-liquid", severity="caution", since="0.1",
    over=drawn_lines, when=lifts_liquid, needs=(given("subcooling"), subcooling_needed, pressure_lost),
    cites=("liquid-line-temperature",), check=check, nothing="no refrigerant line is drawn", answers=("I20",),
)  # fmt: skip
