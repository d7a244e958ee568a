"""A supply grille sweats in summer at the humidity that the rooms are to have.

Where cold duct air passes a metal grille, its face can fall below the dew point of the room air. Water then beads on
the blades, drips, and stains the ceiling around it.

The face lies between the duct air that rushes along one side and the still room air on the other. Rooms count at the
humidity that the file states for summer, else 50 %. Usual supply air of 55 degF sweats from about 63 % on. Keep the
rooms drier, or let the unit send out warmer air: more airflow over its coil, or a warmer coil.
"""

from checker.design.ducts import DuctSystem
from checker.quantities.delivered_air import Grille, coldest_grille, cooling_systems
from checker.quantities.moist_air import AirState, indoor_summer
from checker.rule import Finding, Meets, Num, Rule


def check(system: DuctSystem, found: Grille, room: AirState) -> Meets | Finding:
    """The face of the coldest grille must not be below the dew point of the rooms."""
    numbers = {
        "system": Num(system.name),
        "air": Num(found.air, "temperature"),
        "surface": Num(found.surface, "temperature"),
        "dew_point": Num(found.dew_point, "temperature"),
        "humidity": Num(room.relative_humidity, "relative_humidity"),
    }
    if found.surface >= found.dew_point - 1e-9:
        return Meets(numbers)
    where = "its grilles" if found.outlet is None else f"outlet {found.outlet.name}"
    return Finding(
        f"{{system}} brings air of {{air}} to {where}, whose face at {{surface}} sweats in rooms of {{humidity}}, with a dew "
        "point of {dew_point}",
        at="" if found.outlet is None else f"outlets.{found.outlet.name}",
        help="keep the rooms drier in summer, or send out warmer air by more airflow over the coil",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-82", name="cold-grille-sweats", severity="caution", since="0.1",
    over=cooling_systems, needs=(coldest_grille, indoor_summer), cites=("cold-grille-surface",), check=check,
    nothing="no duct carries cooled air",
)  # fmt: skip
