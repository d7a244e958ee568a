"""Outdoor air and room air mix to a fog on the winter design day.

Tempering by mixing works while much room air meets a little outdoor air. With too much cold air for the moisture of
the rooms, the mixture is saturated: fog and frost settle on filter, damper and box, and water stands in them.

The mixture is worked out from both airflows, the winter design temperature and the room air that the file states, else
70 degF and 40 %. Raise the room air to the flow given, warm the outdoor air first, or pass it through a recovery unit.
"""

from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.quantities.air_mixing import Mixed, mixed, mixing_points
from checker.quantities.moist_air import winter_design
from checker.rule import Finding, Meets, Num, Rule


def check(node: Fan | Equipment, _outdoor: float, found: Mixed) -> Meets | Finding:
    """The mixture must not be a fog."""
    numbers = {
        "name": Num(node.name),
        "outdoor": Num(found.outdoor, "airflow"),
        "room": Num(found.room, "airflow"),
        "mixture": Num(found.temperature, "temperature"),
    }
    if not found.is_fog:
        return Meets(numbers)
    help_ = "warm the outdoor air before it meets the room air"
    if found.clear is not None:
        numbers["clear"] = Num(found.clear, "airflow")
        help_ = "mix it with {clear} of room air or more, or warm it first"
    return Finding(
        "{name} mixes {outdoor} of outdoor air at {winter_design} with {room} of room air; the mixture at {mixture} is a fog",
        at="tempering.mixed_with" if isinstance(node, Fan) else "outdoor_air.airflow",
        help=help_,
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-45", name="mixed-air-fogs", severity="caution", since="0.1",
    over=mixing_points, needs=(winter_design, mixed), cites=("mixture-without-fog",), check=check,
    nothing="no outdoor air is tempered by mixing",
)  # fmt: skip
