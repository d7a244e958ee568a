"""A heater without a vent burns inside a house that is tight.

An unvented heater or fireplace leaves all its gases in the room: water vapor, nitrogen dioxide, and carbon monoxide when
it burns badly. A leaky house thins them; a house tight enough to need mechanical ventilation does not. New-homes
programs keep such heaters out altogether.

Choose a direct-vent or electric heater. Where one stays, its instructions, the room volume and carbon monoxide alarms
are checked by a licensed contractor. A kitchen range is no heater and is served by its hood.
"""

from checker.design.combustion import Burner
from checker.quantities.airtightness import air_changes_at_50
from checker.quantities.burners import unvented_heaters
from checker.rule import Finding, Meets, Rule


def check(burner: Burner, leakage: float, limit: float) -> Meets | Finding:
    """Compare the airtightness with the limit."""
    if leakage >= limit * (1 - 1e-9):
        return Meets()
    return Finding(
        f"{burner.name} burns without a vent in a house of {{air_changes_at_50}}, tighter than {{limit}}",
        at="draft",
        help="choose a direct-vent or electric heater; carbon monoxide and moisture stay in the room: have a licensed "
        "contractor judge any that stays",
    )


RULE = Rule(
    code="PRES-18", name="unvented-burner-in-tight-house", severity="caution", since="0.1",
    over=unvented_heaters, needs=(air_changes_at_50,), limits=("unvented-burners",), check=check,
    nothing="no heater burns without a vent inside the air barrier",
)  # fmt: skip
