"""Equipment is listed by a standard that is not the one of its kind.

The listing is the test that stands behind clearances, wiring and safety cutouts. A heat pump, a baseboard and a
duct heater each have a standard of their own; an inspector looks for its number on the label.

The usual cause is a number copied from another line of the schedule. State the standard on the product's label, or
choose a product that has the right one.
"""

import re

from checker.case import CannotJudge, Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import HEADS
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Listed(Record):
    """A thing whose listing is stated, and the kind whose standard it must have."""

    path: str
    name: str
    kind: str
    listing: str | None


def kind_of(unit: Equipment) -> str:
    """The kind by which a unit is listed, "" where none is laid down."""
    if unit.kind in HEADS or unit.kind == "heat pump":
        return "heat pump"
    if unit.kind == "furnace" and unit.fuel == "oil":
        return "oil furnace"
    return str(unit.kind) if unit.kind in ("air conditioner", "electric heat") else ""


def stated_listings(case: Case) -> list[Listed]:
    """Equipment and duct heaters whose listing is stated or to be decided."""
    found = []
    for unit in case.design.equipment.values():
        if case.speaks_of(unit, "listing") and kind_of(unit):
            found.append(Listed(unit.path, str(unit.name), kind_of(unit), unit.listing))
        heater = unit.duct_heater
        if heater is not None and case.speaks_of(heater, "listing"):
            found.append(Listed(heater.path, f"the duct heater of {unit.name}", "duct heater", heater.listing))
    return found


@quantity()
def listing(case: Case, node: Listed) -> str:
    """The stated listing. CannotJudge where it names no standard, or for electric heat one of no kind here."""
    stated = str(case.get(node, "listing") or "none")
    table: dict[str, list[str]] = case.limit("heating-equipment-listing")
    if stated != "none" and not re.search(r"\d{3}", stated):
        raise CannotJudge(f"`{stated}` names no standard")
    known = [number for numbers in table.values() for number in numbers]
    if node.kind == "electric heat" and stated != "none" and not any(number in stated for number in known):
        raise CannotJudge("radiant, cove and floor heaters have standards of their own")
    return stated


def check(node: Listed, named: str, standards: dict[str, list[str]]) -> Meets | Finding:
    """Look for the number of one of the standards."""
    wanted = standards[node.kind]
    if any(number in named for number in wanted):
        return Meets()
    numbers = {"name": Num(node.name), "wanted": Num(" or ".join(f"UL {number}" for number in wanted))}
    told = "{name} has no listing" if named == "none" else "{name} is listed by {listing}"
    return Finding(
        told + "; equipment of its kind is listed by {wanted}",
        at="listing",
        help="state the standard on the label, or choose a product that is listed by {wanted}",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-26", name="listing-of-another-kind", severity="correction", since="0.1",
    over=stated_listings, needs=(listing,), limits=("heating-equipment-listing",), check=check,
    nothing="no equipment states its listing", answers=("H26", "H36", "H37"),
)  # fmt: skip
