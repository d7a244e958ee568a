"""The `site` section: where the house stands and what the weather and the energy cost there."""

from checker.design.annotated import Annotated
from checker.design.fields import (
    Choice,
    DegreeDays,
    ElectricityPrice,
    FuelPrice,
    Humidity,
    Length,
    LengthOrNone,
    Money,
    Node,
    Number,
    Plain,
    Quantity,
    Temperature,
    TemperatureDifference,
    YearlyCost,
    listed,
    record,
    said,
)

CoolingRegion = Annotated[
    str,
    Choice("north", "southeast", "southwest", north="northern", southeast="south | south east", southwest="south west"),
]  # fmt: skip
Hours = Annotated[float, Quantity("time")]


@record
class SummerDesign(Node):
    """Outdoor air on the summer design day."""

    short = ("dry_bulb",)
    dry_bulb: Temperature | None = said("summer design dry bulb (1 %)", "88 degF")
    wet_bulb: Temperature | None = said("coincident wet bulb", "72 degF")
    dew_point: Temperature | None = said("summer design dew point", "68 degF")
    humidity: Humidity | None = said("relative humidity at the design dry bulb", "55 %")
    daily_range: TemperatureDifference | None = said("mean daily range", "20 delta_degF")


@record
class Prices(Node):
    """Energy prices, for the worth of heat recovery."""

    electricity: ElectricityPrice | None = said("price of electricity", "0.15 USD/kWh")
    fuel: FuelPrice | None = said("price of the heating fuel", "1.20 USD/therm")
    recovery_cost: Money | None = said(
        "extra first cost of ventilation with a recovery unit over ventilation without one", "1800 USD"
    )
    recovery_upkeep: YearlyCost | None = said(
        "extra cost of filters and cleaning of a recovery unit in a year", "40 USD/yr"
    )


@record
class TemperatureBin(Node):
    """Time of the year in which the outdoor air is about as warm as this."""

    temperature: Temperature | None = said("middle of the bin", "27 degF")
    time: Hours | None = said("time of the year in it", "620 h")
    dew_point: Temperature | None = said(
        "mean dew point outdoors in these hours; asked only of bins warmer than the room", "68 degF"
    )


@record
class CoolingSeason(Node):
    """The part of the year in which the outdoor air is warmer than 65 degF."""

    time: Hours | None = said("time of the year in which the outdoor air is warmer than 65 degF", "2400 h")
    dew_point: Temperature | None = said("mean dew point outdoors in that time", "66 degF")


@record
class Site(Node):
    """Climate, elevation, snow and prices."""

    place: Plain | None = said("town or county", "a northern lake town")
    climate_zone: Plain | None = said("climate zone of the energy code: number and moisture letter", "6A")
    elevation: Length | None = said("height above sea level", "690 ft")
    latitude: Annotated[float, Number(-90, 90)] | None = said("latitude in degrees, north positive", 46.8)
    winter_design: Temperature | None = said("winter design temperature (99 %)", "-4 degF")
    winter_humidity: Humidity | None = said("outdoor relative humidity on the winter design day", "80 %")
    coldest_month: Temperature | None = said("mean outdoor temperature of the coldest month", "18 degF")
    annual_mean: Temperature | None = said("mean outdoor temperature of the year", "41 degF")
    summer_design: SummerDesign | None = said("summer design condition")
    heating_degree_days: DegreeDays | None = said("heating degree days, base 65 degF", "7500 HDD65")
    cooling_degree_days: DegreeDays | None = said("cooling degree days, base 65 degF", "300 CDD65")
    cooling_season: CoolingSeason | None = said(
        "the warm part of the year, by which degree days tell what cooling ventilation air takes"
    )
    snow_depth: LengthOrNone | None = said("depth of snow to reckon with at grade, or `none`", "30 in")
    weather_factor: Annotated[float, Number(0, 3)] | None = said(
        "weather and shielding factor (wsf) of ASHRAE 62.2 for the nearest listed station", 0.6
    )
    prices: Prices | None = said("energy prices")
    temperature_bins: list[TemperatureBin] = listed(
        "time of the year by outdoor temperature: the heating season, or all 8,760 h",
        {"temperature": "27 degF", "time": "620 h"},
    )
    cooling_region: CoolingRegion | None = said(
        "region of the federal minimum efficiencies of air conditioners, by state", "north"
    )
    notes: Plain | None = said("anything a reader should know; no rule reads it")
