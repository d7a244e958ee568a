"""A duct in the garage, or through its separation from the house, is not of steel thick enough.

The wall and ceiling between garage and house hold back fire and fumes. A duct through them is part of that: it is
of sheet steel of No. 26 gage (about 0.019 in) at least, or another material that the authority approves, without
openings into the garage. Flexible duct burns through in minutes.

Run steel duct where it passes the garage, or lead the duct around it.
"""

from checker.case import CannotJudge, Case, NotApplicable, quantity
from checker.design.airway import Airway
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_scope import ducts
from checker.quantities.duct_sets import STEELS
from checker.quantities.room_uses import room_use
from checker.rule import Finding, Meets, Num, Rule

SOFT = ("flexible", "semi-rigid aluminum", "duct board", "rigid plastic", "gypsum", "framing cavity")


@quantity()
def garage_material(case: Case, duct: Airway) -> str:
    """What a duct in the garage is made of. Raises NotApplicable where it does not pass a garage."""
    rooms = case.design.rooms
    places = case.get(duct, "location")
    if not any(place == "garage" or (place in rooms and room_use(case, rooms[place]) == "garage") for place in places):
        raise NotApplicable("it does not pass a garage")
    return str(case.get(duct, "material"))


@quantity("length")
def sheet(case: Case, duct: Airway) -> float:
    """Thickness of the steel; asked for only of steel."""
    material = garage_material(case, duct)
    if material in SOFT:
        return 0.0
    if material not in (*STEELS, "unknown metal"):
        raise CannotJudge(f"{material} in a garage needs the approval of the authority")
    return float(case.get(duct, "thickness"))


def check(duct: Airway, material: str, thickness: float, least: float) -> Meets | Finding:
    """Steel, thick enough."""
    numbers = {"duct": Num(duct_label(duct)), "material": Num(material)}
    if material in SOFT:
        return Finding(
            "{duct} passes the garage and is {material}, not sheet steel",
            at="material",
            help="use sheet steel of No. 26 gage ({limit}) or more there, or lead it around the garage",
            numbers=numbers,
        )
    if thickness < least:
        return Finding(
            "{duct} passes the garage in steel of {sheet}, thinner than No. 26 gage ({limit})",
            at="thickness",
            help="use steel of No. 26 gage ({limit}) or more there",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="DUCT-50", name="garage-duct-too-thin", severity="correction", since="0.1",
    over=ducts, needs=(garage_material, sheet), limits=("garage-duct-thickness",), check=check,
    nothing="no duct is drawn", answers=("F41",),
)  # fmt: skip
