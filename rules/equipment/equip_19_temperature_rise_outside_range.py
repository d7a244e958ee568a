"""The air through a furnace warms by more or less than its nameplate allows.

The rise is the output divided by what the air can carry. Above the range the heat exchanger overheats and can
crack, which lets flue gas into the house; below it a furnace that is not built for it condenses and rusts.

The usual cause is a duct system that passes less air than the blower table promises. Correct the airflow first; a
heating contractor measures the rise at start-up and sets the blower speed.
"""

from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.quantities.sizing import furnace_rise
from checker.rule import Finding, Meets, Num, Rule


def furnaces(case: Case) -> list[Equipment]:
    """Furnaces with an airflow or a nameplate range."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.kind == "furnace"
        and (case.speaks_of(unit, "airflow") or unit.settings or case.speaks_of(unit, "by_maker"))
    ]


@quantity()
def nameplate_range(case: Case, unit: Equipment) -> tuple[float, float]:
    """Least and greatest rise by the nameplate, K."""
    if unit.by_maker is None:
        raise Missing(f"{unit.path}.by_maker.greatest_rise", f"{unit.path}.by_maker.least_rise")
    least, greatest = case.all(unit.by_maker, "least_rise", "greatest_rise")
    return float(least), float(greatest)


def check(unit: Equipment, rise: float, span: tuple[float, float]) -> Meets | Finding:
    """Compare with both ends."""
    least, most = span
    numbers = {
        "unit": Num(unit.name),
        "least": Num(least, "temperature_difference"),
        "most": Num(most, "temperature_difference"),
    }
    if least * (1 - 1e-9) <= rise <= most * (1 + 1e-9):
        return Meets(numbers)
    word = "less" if rise > most else "more"
    return Finding(
        "the air through {unit} warms by {furnace_rise}; its nameplate allows {least} to {most}: it gets {word} air than "
        "it must have",
        at="airflow",
        help="choose blower speed and ducts for a rise between {least} and {most}; a heating contractor sets it",
        numbers={**numbers, "word": Num(word)},
    )


RULE = Rule(
    code="EQUIP-19", name="temperature-rise-outside-range", severity="caution", since="0.1",
    over=furnaces, needs=(furnace_rise, nameplate_range), cites=("temperature-rise",), check=check,
    nothing="no furnace states an airflow or a nameplate", answers=("H23",),
)  # fmt: skip
