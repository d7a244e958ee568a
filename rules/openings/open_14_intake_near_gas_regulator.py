"""An outdoor air intake is close to a gas meter or the vent of a gas regulator.

A regulator breathes out gas when it relieves pressure or its diaphragm breaks. An intake beside it can bring that
gas into every room, where it can burn or explode.

The usual cause is that the utility sets its meter on the same wall after the drawing is made. Ask the utility for
its clearances, which are often larger than the usual 3 ft, and move the intake. Only the utility or a qualified
gas fitter may move meter or regulator.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import Neighbor, asked_for, neighbors, numbers_of, settled, spoken_of
from checker.quantities.opening_kinds import known_intakes
from checker.rule import Finding, Meets, Rule

GAS_FITTINGS = frozenset({"gas meter", "gas regulator"})


@quantity()
def gas_fittings(case: Case, intake: Opening) -> list[Neighbor]:
    """Gas meters and regulators around an intake."""
    return neighbors(case, intake, GAS_FITTINGS)


def burns_gas(case: Case) -> bool:
    """Whether anything in the design is said to burn gas."""
    design = case.design
    fuels = [burner.fuel for burner in design.combustion.values()]
    fuels += [dryer.fuel for dryer in design.dryers.values()]
    fuels += [hood.cooking.fuel for hood in design.hoods.values() if hood.cooking is not None]
    return any(fuel in ("gas", "propane") for fuel in fuels)


@quantity()
def unseen_regulator(case: Case, intake: Opening) -> list[str]:
    """The path that would place the regulator, where gas is burned and none is shown."""
    return [] if spoken_of(case, intake, GAS_FITTINGS) else [asked_for(case, intake, "gas regulator")]


def gas_is_near(case: Case, intake: Opening) -> bool:
    """No gas meter or regulator is shown, and nothing is said to burn gas."""
    return burns_gas(case) or spoken_of(case, intake, GAS_FITTINGS)


def check(_intake: Opening, around: list[Neighbor], unseen: list[str], least: float) -> Meets | Finding:
    """Hold meter and regulator against the usual distance."""
    verdict = settled(around, least, unplaced=unseen)
    numbers = numbers_of(verdict, least)
    if not verdict.offends:
        return Meets(numbers)
    return Finding(
        f"{{near}} is {{apart}} from this intake, nearer than the usual {{limit}}{verdict.also}",
        help="move the intake {short} farther away, and ask the gas utility for its own clearance",
        numbers=numbers,
    )


RULE = Rule(
    code="OPEN-14", name="intake-near-gas-regulator", severity="caution", since="0.1",
    over=known_intakes, when=gas_is_near, needs=(gas_fittings, unseen_regulator),
    limits=("intake-to-gas-regulator",), check=check, nothing="the design has no outdoor air intake",
    answers=("D12",),
)  # fmt: skip
