"""In a humid climate the cooling runs too little on mild days to keep the rooms dry.

On a warm, clouded day or at night little heat comes in, so that the thermostat hardly calls; the outdoor air that the
ventilation brings in is as moist as ever. A tight, well insulated house has many such days, and the better it is
built, the more of them. Equipment that is larger than its load makes it worse: after each short run the water on the
coil goes back into the air, all the more where its blower runs on.

About a third of the sensible load of the design hour counts as that of a mild day, and room air of 60 % as the most
that is good; air leakage would add to the load. Show a dehumidifier with what it takes out (rated in warmer or moister
air it takes out less in the rooms), a core that returns moisture to the outgoing air, or equipment that runs slowly.
"""

from checker import each
from checker.case import Case
from checker.design import Design
from checker.physics.air import HEAT_OF_VAPORIZATION
from checker.quantities.humid_days import (
    Dried,
    cooling_units,
    is_humid,
    is_short_at_design,
    mild_sensible_load,
    moisture_load,
    settled,
)
from checker.quantities.latent_balance import WATER_DENSITY
from checker.quantities.moisture_balance import outdoor_air
from checker.quantities.unit_loads import loads_spoken_of
from checker.rule import Finding, Meets, Num, Rule


def is_humid_and_cooled(case: Case, design: Design) -> bool:
    """The climate is not humid, nothing cools the house, no cooling load is held, or the design day is too humid already."""
    cooled = is_humid(case, design) and bool(cooling_units(case)) and loads_spoken_of(case, "cooling_load")
    return cooled and not is_short_at_design(case, design)


def blower_runs_on(design: Design) -> bool:
    """Whether a blower runs on for the outdoor air when the cooling stops."""
    units = design.equipment.values()
    return any(unit.outdoor_air is not None and unit.outdoor_air.control == "continuous fan" for unit in units)


def check(
    design: Design, load: float, found: Dried, _sensible: float, _flow: float, limit: float
) -> Meets | Finding:
    """Compare what comes in with what is taken out."""
    taken = found.least if found.least >= load * (1 - 1e-9) else found.most
    numbers = {"taken": Num(taken, "heat_rate"), "run": Num(found.run_share, "share")}
    if taken >= load * (1 - 1e-9):
        return Meets(numbers)
    numbers["water"] = Num((load - taken) / HEAT_OF_VAPORIZATION / WATER_DENSITY, "moisture_flow")
    numbers["first"] = Num("let the blower stop with the cooling, or " if blower_runs_on(design) else "")
    return Finding(
        "on a mild humid day {outdoor_air} of outdoor air and the people bring {moisture_load} of latent heat above "
        "{limit} indoors; the equipment takes out {taken}, as little heat calls for cooling",
        at="equipment",
        help="{first}show a dehumidifier for {water} more, or a core that returns moisture",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-48", name="humid-days-leave-rooms-damp", severity="caution", since="0.1",
    over=each.design, when=is_humid_and_cooled, needs=(moisture_load, settled, mild_sensible_load, outdoor_air),
    limits=("summer-humidity-most",),
    cites=("mild-day-sensible-share", "latent-kept-blower-cycling", "latent-kept-blower-on", "humid-summer-zones",
           "humid-dew-point"),
    check=check, answers=("H32",),
)  # fmt: skip
