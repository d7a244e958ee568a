"""A furnace or boiler gives far more heat than the house loses.

An oversized burner runs in short bursts: hot and cold rooms, noise, more wear, and in a condensing unit less
condensing. The selection procedure lets the output be up to 1.4 times the heating load, because it comes in steps;
for a furnace whose blower has to move the air for cooling up to twice.

Choose the next smaller size, or one with stages that run down to the load. A larger load on the paper is no remedy.
"""

from checker.case import Case, either, quantity
from checker.quantities.equipment import Group, all_cooling, all_heating, burns
from checker.quantities.heat_pump import heating_of
from checker.quantities.sizing import burner_output, least_of
from checker.quantities.unit_loads import group_heating_load, loads_spoken_of
from checker.rule import Finding, Meets, Num, Rule


def single_burners(case: Case) -> list[Group]:
    """Furnaces and boilers that heat their rooms alone."""
    return [group for group in all_heating(case) if len(group.units) == 1 and burns(group.units[0])]


def has_load(case: Case, group: Group) -> bool:
    """Its rooms lose no heat, or the file holds no load at all."""
    return loads_spoken_of(case, "heating_load") and group_heating_load(case, group) > 0.0


@quantity("heat_rate")
def output(case: Case, group: Group) -> float:
    """Output of the burner at the elevation of the site."""
    return burner_output(case, group.units[0])


@quantity()
def moves_cooling_air(case: Case, group: Group) -> bool:
    """Whether a furnace's blower also moves the air for cooling."""
    unit = group.units[0]
    joined = unit.cooling is not None or unit.coil is not None
    return unit.kind == "furnace" and (
        joined or any(each.kind == "air conditioner" for group in all_cooling(case) for each in group.units)
    )


@quantity()
def turns_down(case: Case, group: Group) -> bool:
    """Whether a burner with stages can run at the load."""
    unit = group.units[0]
    if unit.heating is None or unit.stages == "single stage":
        return False
    least = either(lambda: least_of(case, unit, heating_of(unit)), lambda: None)
    return least is not None and least <= group_heating_load(case, group)


def check(
    group: Group, heat: float, load: float, cooling_air: bool, follows: bool, most: float, with_cooling: float
) -> Meets | Finding:
    """Compare the output with the window."""
    limit = with_cooling if cooling_air else most
    numbers = {"unit": Num(group.name), "ratio": Num(round(heat / load, 2)), "most": Num(limit * load, "heat_rate")}
    if follows or heat <= limit * load * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} gives {output} for a heating load of {group_heating_load}, {ratio} times as much",
        at="heating",
        help="choose an output of no more than {most}, or a burner with stages that runs down to the load",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-06", name="burner-above-size-window", severity="caution", since="0.1",
    over=single_burners, when=has_load, needs=(output, group_heating_load, moves_cooling_air, turns_down),
    limits=("burner-size", "burner-size-with-cooling"), check=check,
    nothing="no furnace or boiler heats rooms alone", answers=("H02", "H06", "H07"),
)  # fmt: skip
