"""The ducts of a system with a mildly flammable refrigerant hold a heater, a flame or a large switch.

Refrigerants of group A2L, such as R-32 and R-454B, can burn if enough of them leaks into a duct and meets a hot
wire or flame. From 2024 the code keeps field-installed electric heating elements, open flames and devices that
switch more than 2.5 kVA out of such ducts.

The usual cause is a duct heater carried over from an older design. Leave it out or move the heat to the room; the
equipment's maker and a licensed contractor say what may stand in the duct.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.equipment import Equipment
from checker.rule import Finding, Meets, Num, Rule

HOT = ("heater", "heat strip", "strip heat", "heating element", "heat kit", "flame", "burner", "reheat")


def units_with_accessories(case: Case) -> list[Equipment]:
    """Units whose ducts hold accessories, stated or to be decided."""
    named = case.design.equipment.values()
    return [unit for unit in named if unit.duct_accessories or path_of(unit, "duct_accessories") in case.design.tbd]


@quantity()
def refrigerant(case: Case, unit: Equipment) -> str:
    """Refrigerant of a unit, as stated for it or for its outdoor unit, in capitals without spaces and hyphens."""
    outdoor = case.design.equipment.get(unit.outdoor_unit or "")
    stated = case.maybe(unit, "refrigerant") or (case.maybe(outdoor, "refrigerant") if outdoor is not None else None)
    if stated is None:
        if unit.kind in ("furnace", "electric heat", "boiler") and outdoor is None and unit.cooling is None:
            return ""
        raise Missing(path_of(unit, "refrigerant"))
    return str(stated).upper().replace("-", "").replace(" ", "")


@quantity()
def accessories(case: Case, unit: Equipment) -> tuple[str, ...]:
    """What stands in its ducts."""
    return tuple(case.get(unit, "duct_accessories"))


@quantity("power")
def switched(case: Case, unit: Equipment) -> float:
    """Load that the accessories switch; asked for unless one of them is hot anyway."""
    if any(word in each.lower() for each in accessories(case, unit) for word in HOT):
        return float(case.maybe(unit, "accessory_power") or 0.0)
    return float(case.get(unit, "accessory_power"))


def in_a_mildly_flammable_system(case: Case, unit: Equipment) -> bool:
    """Its refrigerant is not of group A2L."""
    return refrigerant(case, unit) in case.limit("mildly-flammable-refrigerants")


def check(unit: Equipment, found: tuple[str, ...], load: float, word: str, most: float) -> Meets | Finding:
    """No hot part, and no more switched load than allowed."""
    hot = [each for each in found if any(part in each.lower() for part in HOT)]
    numbers = {"accessory": Num(", ".join(hot or found))}
    if hot:
        return Finding(
            f"{{accessory}} stands in the ducts of {unit.name}, whose refrigerant {{refrigerant}} is mildly flammable",
            at="duct_accessories",
            help="take it out of the duct and heat the room another way; have the equipment's maker confirm the rest",
            numbers=numbers,
        )
    if load > most:
        return Finding(
            f"{{accessory}} in the ducts of {unit.name} ({{refrigerant}}) switches {{switched}}, more than {{limit}}",
            at="accessory_power",
            help="use a device that switches {limit} or less, or move it out of the duct",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="FILT-14", name="ignition-source-in-duct", severity="correction", since="0.1",
    over=units_with_accessories, when=in_a_mildly_flammable_system, needs=(accessories, switched, refrigerant),
    limits=("mildly-flammable-duct-load",), check=check, nothing="no accessory is named in the ducts of a unit",
    answers=("G13",),
)  # fmt: skip
