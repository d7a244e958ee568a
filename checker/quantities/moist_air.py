"""The air indoors and outdoors on the winter and summer design days, and the water that people give off."""

from collections.abc import Callable
from typing import TypeVar

from checker.case import CannotJudge, Case, path_of, quantity
from checker.design.fields import Humidity, HumidityRatio, Pressure, Temperature
from checker.design.house import House, Indoor
from checker.design.site import Site, SummerDesign
from checker.each import blank
from checker.physics import air, psychrometrics
from checker.quantities.airtightness import house_of
from checker.quantities.ventilation_standard import site_of
from checker.record import Record

T = TypeVar("T")
DAY = 86_400.0
HUMIDITIES = ("dew_point", "wet_bulb", "humidity")


class AirState(Record):
    """Air at a temperature in K with a humidity ratio in kg/kg, its relative humidity and dew point in K."""

    temperature: Temperature
    humidity_ratio: HumidityRatio
    relative_humidity: Humidity
    dew_point: Temperature
    pressure: Pressure


def worked_out(formula: Callable[[], T]) -> T:
    """What a formula gives. CannotJudge where its inputs are out of range or belong to no real air."""
    try:
        return formula()
    except ValueError as fault:
        raise CannotJudge(str(fault)) from None


def state(case: Case, temperature: float, relative_humidity: float) -> AirState:
    """Air at a temperature and relative humidity at the elevation of the site."""
    at = pressure(case, case.design)
    ratio = worked_out(lambda: psychrometrics.humidity_ratio(temperature, relative_humidity, at))
    return state_of_ratio(case, temperature, ratio)


def state_of_ratio(case: Case, temperature: float, ratio: float) -> AirState:
    """Air at a temperature with a humidity ratio at the elevation of the site."""
    at = pressure(case, case.design)
    return worked_out(
        lambda: AirState(
            temperature,
            ratio,
            psychrometrics.relative_humidity(temperature, ratio, at),
            psychrometrics.dew_point(ratio, at),
            at,
        )
    )


@quantity("pressure", "standard atmosphere at the site's elevation", "ASHRAE Handbook - Fundamentals, chapter 1")
def pressure(case: Case, _node: object) -> float:
    """Air pressure at the site; of the sea level where no elevation is stated, since humidity hardly goes by it."""
    site = case.design.site
    elevation = None if site is None else case.maybe(site, "elevation")
    return air.STANDARD_PRESSURE if elevation is None else worked_out(lambda: air.standard_pressure(elevation))


@quantity("", "1.204 kg/m3 x p / p0", "ASHRAE Handbook - Fundamentals, chapter 1")
def air_density(case: Case, node: object) -> float:
    """Density of dry air of 20 C at the site, kg/m3."""
    return air.STANDARD_DENSITY * pressure(case, node) / air.STANDARD_PRESSURE


def indoor_or_usual(case: Case, field: str, key: str) -> float:
    """A value of the indoor air as the design states it, else the usual one of the codebook."""
    house = case.design.house
    indoor: Indoor | None = None if house is None else house.indoor
    stated = None if indoor is None else case.maybe(indoor, field)
    return float(case.limit(key)) if stated is None else float(stated)


@quantity()
def indoor_winter(case: Case, _node: object) -> AirState:
    """Room air in winter: as stated, else 70 F and, for condensation, 40 %."""
    return state(
        case,
        indoor_or_usual(case, "winter_temperature", "indoor-winter-temperature"),
        indoor_or_usual(case, "winter_humidity", "indoor-winter-humidity"),
    )


@quantity()
def indoor_summer(case: Case, _node: object) -> AirState:
    """Room air in summer: as stated, else 75 F and 50 %."""
    return state(
        case,
        indoor_or_usual(case, "summer_temperature", "indoor-summer-temperature"),
        indoor_or_usual(case, "summer_humidity", "indoor-summer-humidity"),
    )


@quantity("temperature")
def winter_design(case: Case, _node: object) -> float:
    """Winter design temperature outdoors."""
    return float(case.get(site_of(case), "winter_design"))


def has_frost(case: Case, node: object) -> bool:
    """The winter design temperature is not below freezing."""
    return winter_design(case, node) < psychrometrics.FREEZING


@quantity()
def outdoor_winter(case: Case, node: object) -> AirState:
    """Outdoor air on the winter design day; 80 % humid where the site does not say."""
    site: Site = site_of(case)
    stated = case.maybe(site, "winter_humidity")
    humidity = case.limit("outdoor-winter-humidity") if stated is None else stated
    return state(case, winter_design(case, node), float(humidity))


@quantity("", "by dew point, else wet bulb, else relative humidity at the design dry bulb")
def outdoor_summer(case: Case, _node: object) -> AirState:
    """Outdoor air on the summer design day."""
    site: Site = site_of(case)
    summer: SummerDesign = site.summer_design or blank(SummerDesign, path_of(site, "summer_design"))
    dry = float(case.get(summer, "dry_bulb"))
    at = pressure(case, case.design)

    field = next((each for each in HUMIDITIES if case.maybe(summer, each) is not None), "wet_bulb")
    value = float(case.get(summer, field))
    if field != "humidity" and value > dry:
        raise CannotJudge(f"the {field.replace('_', ' ')} of the summer design day is above its dry bulb")
    formulas: dict[str, Callable[[], float]] = {
        "dew_point": lambda: psychrometrics.humidity_ratio_from_dew_point(value, at),
        "wet_bulb": lambda: psychrometrics.humidity_ratio_from_wet_bulb(dry, value, at),
        "humidity": lambda: psychrometrics.humidity_ratio(dry, value, at),
    }
    return state_of_ratio(case, dry, worked_out(formulas[field]))


@quantity("temperature_difference")
def summer_daily_range(case: Case, _node: object) -> float:
    """Mean daily range of the summer temperature; the usual one where the site states none."""
    site = case.design.site
    stated = None if site is None or site.summer_design is None else case.maybe(site.summer_design, "daily_range")
    return float(case.limit("summer-daily-range")) if stated is None else float(stated)


@quantity("temperature")
def winter_dew_point(case: Case, node: object) -> float:
    """Dew point of the room air in winter."""
    return indoor_winter(case, node).dew_point


@quantity("temperature")
def summer_dew_point(case: Case, node: object) -> float:
    """Dew point of the outdoor air on the summer design day."""
    return outdoor_summer(case, node).dew_point


@quantity("", "as stated, else bedrooms and one")
def people(case: Case, _node: object) -> int:
    """People who live in the house."""
    house: House = house_of(case)
    stated = case.maybe(house, "occupants")
    return int(stated) if stated is not None else max(int(case.get(house, "bedrooms")), 1) + 1


@quantity("", "people x 3 kg a day", "lists of household moisture (common practice)")
def moisture_generation(case: Case, node: object) -> float:
    """Water that the people of the house give off, kg/s."""
    return people(case, node) * float(case.limit("moisture-per-person")) / DAY
