"""Fresh air does not reach a bedroom when its door is shut.

People spend a third of their time in a bedroom with the door closed. Outdoor air that is let in at the hall or
in a closet goes to the fan that exhausts, past the bedroom door, unless something leads it in: a duct, a
transfer fan, an air handler that mixes the rooms, or a bath behind the bedroom that exhausts all day. In an
exhaust-only house the fan must at least be able to draw on the room past its door.

Duct outdoor air to the bedroom, move the exhaust behind it, or add a transfer fan. Say with `door.to` where a
bath's door leads: a bath that opens to the bedroom draws its air through it.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.fans import Fan
from checker.design.rooms import Room
from checker.quantities.fresh_air import Reach, bedrooms, reach, short_circuit
from checker.quantities.whole_house import needed
from checker.rule import Finding, Meets, Rule


def rooms_to_sleep_in(case: Case) -> list[Room]:
    """Bedrooms of a house that fans ventilate. NotApplicable where the air goes nowhere: another rule says so."""
    for part in needed(case, case.design):
        if isinstance(part.device, Fan) and part.supplies and short_circuit(case, part.device):
            raise NotApplicable("the fresh air is drawn out again where it comes in")
    return bedrooms(case)


@quantity()
def way_of_air(case: Case, room: Room) -> Reach:
    """How outdoor air gets to the bedroom, or why not."""
    return reach(case, room)


def check(room: Room, found: Reach) -> Meets | Finding:
    """Some way must be there."""
    if found.reached:
        return Meets()
    return Finding(
        f"fresh air does not reach {room.name} behind its shut door: {found.way}",
        help="duct outdoor air to it, add a transfer fan or opening, or exhaust all day from a bath behind it",
    )


RULE = Rule(
    code="VENT-30", name="bedroom-without-fresh-air", severity="caution", since="0.1",
    over=rooms_to_sleep_in, needs=(way_of_air,), cites=("fresh-air-to-bedrooms",), check=check,
    nothing="the design has no bedrooms",
)  # fmt: skip
