"""A duct with cold outdoor air runs bare or thinly insulated through heated rooms and sweats in winter.

The intake of a supply fan, both outdoor ducts of a recovery unit and the make-up air duct of a hood are as cold as
the weather. Where such a duct passes warm, moist room air, water condenses on its outside, freezes, and drips
into walls and ceilings.

The outside of the duct is compared with the dew point of the room air at the winter design temperature; the room
counts as 70 degF and 40 % where the file states nothing else. Insulate to the R-value given from the outside wall
to the unit, without a gap at collars and dampers, under a sealed vapor retarder; or shorten the run.
"""

from checker.case import Case
from checker.quantities.cold_ducts import BASEMENT, HEATED, ColdDuct, cold_in_winter, surroundings
from checker.quantities.duct_surface import Surface, coldest_air, winter_surface
from checker.rule import Finding, Meets, Num, Rule


def is_in_heated_rooms(case: Case, node: ColdDuct) -> bool:
    """The duct does not pass through heated rooms."""
    return bool(surroundings(case, node.duct) & {HEATED, BASEMENT})


def check(node: ColdDuct, _air: float, found: Surface) -> Meets | Finding:
    """The surface must not be below the dew point."""
    numbers = {
        "duct": Num(node.name),
        "surface": Num(found.temperature, "temperature"),
        "dew_point": Num(found.dew_point, "temperature"),
        "least": Num(found.needed, "resistance"),
    }
    if not found.is_wet:
        return Meets(numbers)
    return Finding(
        "{duct} carries air of {coldest_air} through heated rooms in winter; its outside at {surface} sweats below "
        "their dew point of {dew_point}",
        at="insulation",
        help="insulate it to {least} or more over its whole length indoors, with a sealed vapor retarder outside",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-61", name="outdoor-air-duct-sweats", severity="caution", since="0.1",
    over=cold_in_winter, when=is_in_heated_rooms, needs=(coldest_air, winter_surface),
    cites=("outdoor-air-duct-surface",), check=check, nothing="no duct carries outdoor air",
)  # fmt: skip
