"""The indoor units together are too large or too small for their outdoor unit.

Makers let the indoor units of a multi-zone heat pump add up to somewhat more than the outdoor unit, because rooms
rarely peak together. Beyond their limit the refrigerant is spread too thin: no unit gives what its label says. Too
little connected capacity lets the compressor start and stop.

Add up the indoor sizes from the maker's combination table, and choose the outdoor unit or the heads to fit it.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import indoor_units
from checker.quantities.sizing import connected_capacity, outdoor_rated
from checker.rule import Finding, Meets, Num, Rule


def of_several_zones(case: Case) -> list[Equipment]:
    """Outdoor units with two or more indoor units."""
    return [unit for unit in case.design.equipment.values() if len(indoor_units(case, unit)) > 1]


@quantity("share")
def greatest_share(case: Case, outdoor: Equipment) -> float:
    """Greatest share by the maker, else the usual one."""
    stated = None if outdoor.by_maker is None else case.maybe(outdoor.by_maker, "greatest_connected")
    return float(case.limit("connected-capacity")) if stated is None else float(stated)


@quantity("share")
def least_share(case: Case, outdoor: Equipment) -> float:
    """Least share by the maker; none where it gives none."""
    stated = None if outdoor.by_maker is None else case.maybe(outdoor.by_maker, "least_connected")
    return 0.0 if stated is None else float(stated)


def check(outdoor: Equipment, together: float, own: float, most: float, least: float) -> Meets | Finding:
    """Compare the sum with both ends."""
    numbers = {
        "unit": Num(outdoor.name),
        "greatest": Num(most * own, "heat_rate"),
        "smallest": Num(least * own, "heat_rate"),
        "ratio": Num(together / own, "share") if own > 0 else Num("unknown"),
    }
    if together > most * own * (1 + 1e-9):
        return Finding(
            "the indoor units of {unit} add up to {connected_capacity}, {ratio} of its {outdoor_rated}; it takes "
            "{greatest_share}",
            help="choose indoor units of no more than {greatest} together, or a larger outdoor unit",
            numbers=numbers,
        )
    if together < least * own * (1 - 1e-9):
        return Finding(
            "the indoor units of {unit} add up to {connected_capacity}, {ratio} of its {outdoor_rated}; it asks for "
            "{least_share}",
            help="choose a smaller outdoor unit, or indoor units of {smallest} or more together",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="EQUIP-09", name="connected-capacity-off", severity="caution", since="0.1",
    over=of_several_zones, needs=(connected_capacity, outdoor_rated, greatest_share, least_share),
    cites=("connected-capacity",), check=check, nothing="no outdoor unit serves several indoor units",
    answers=("H30",),
)  # fmt: skip
