"""The insulation of a cold outdoor-air duct in heated rooms has no vapor jacket.

Insulation alone does not keep a cold duct dry: room air passes through it and its water condenses on the metal
underneath, where nobody sees it until the insulation is soaked and worth nothing.

Cover the insulation with a vapor retarder of 0.1 perm or less, seams and ends taped, from the outside wall to the
unit. Factory-insulated flexible duct and duct board come with one, which must not be torn at the collars.
"""

from checker.case import Case
from checker.quantities.cold_ducts import BASEMENT, HEATED, ColdDuct, cold_in_winter, surroundings
from checker.quantities.duct_surface import coldest_air, has_jacket, insulation
from checker.quantities.moist_air import winter_dew_point
from checker.rule import Finding, Meets, Num, Rule


def is_cold_and_insulated(case: Case, node: ColdDuct) -> bool:
    """The duct is bare, not in heated rooms, or not colder than the dew point of the room air."""
    if not surroundings(case, node.duct) & {HEATED, BASEMENT} or insulation(case, node.duct) <= 0.0:
        return False
    return coldest_air(case, node) < winter_dew_point(case, node)


def check(node: ColdDuct, _air: float, _dew_point: float, jacketed: bool, _limit: float) -> Meets | Finding:
    """There must be a jacket, and a tight one where its permeance is known."""
    numbers = {"duct": Num(node.name)}
    if jacketed:
        return Meets(numbers)
    return Finding(
        "{duct} at {coldest_air} has insulation without a vapor jacket of {limit} or less; room air with a dew point "
        "of {winter_dew_point} reaches the cold metal",
        at="vapor_jacket" if node.duct.jacket_permeance is None else "jacket_permeance",
        help="cover the insulation with a sealed vapor retarder of {limit} or less",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-62", name="outdoor-air-duct-without-jacket", severity="caution", since="0.1",
    over=cold_in_winter, when=is_cold_and_insulated, needs=(coldest_air, winter_dew_point, has_jacket),
    limits=("cold-duct-jacket",), check=check, nothing="no duct carries outdoor air",
)  # fmt: skip
