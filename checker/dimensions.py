"""The kinds of quantity that a design holds: their SI unit, and how they are shown in trade and metric units.

The accepted spellings of each are in unit_table.py, which is generated.
"""

_LARGEST = 1e15  # in any SI unit, far beyond a house
_ANY = -_LARGEST
_COLDEST = 100.0  # K; a temperature of `20 K` is a difference written in the wrong place


class Dimension:
    """A kind of quantity.

    `noun` carries its article; `digits` are the significant figures shown at least, `places` the decimals
    shown at most; `prefix` is set where the trade writes it before the number (`R-8`); `least` and `most`
    bound the SI value.
    """

    __slots__ = (
        "digits",
        "example",
        "least",
        "metric",
        "most",
        "name",
        "noun",
        "places",
        "prefix",
        "si",
        "trade",
    )

    def __init__(
        self,
        name: str,
        noun: str,
        si: str,
        trade: str,
        metric: str,
        example: str,
        digits: int = 3,
        places: int = 3,
        least: float = 0.0,
        most: float = _LARGEST,
        prefix: str = "",
    ) -> None:
        self.name = name
        self.noun = noun
        self.si = si
        self.trade = trade
        self.metric = metric
        self.example = example
        self.digits = digits
        self.places = places
        self.least = least
        self.most = most
        self.prefix = prefix

    def write(self, number: str, system: str = "trade") -> str:
        """The number with this dimension's display unit, as it would be written in a design file."""
        if system == "metric":
            return f"{number} {self.metric}"
        return f"{self.prefix}{number}" if self.prefix else f"{number} {self.trade}"


# Order matters: a unit that serves several dimensions is named after the first of them in messages.
_ALL = (
    Dimension("airflow", "an airflow", "m3/s", "cfm", "L/s", "80 cfm", 2, 1),
    Dimension("length", "a length", "m", "ft", "m", "7 ft 6 in", 5, 2, _ANY),
    Dimension("diameter", "a diameter", "m", "in", "mm", "6 in", 4, 2),
    Dimension("area", "an area", "m2", "ft2", "m2", "120 ft2", 3, 2),
    Dimension("small_area", "an area", "m2", "in2", "cm2", "50 in2", 3, 2),
    Dimension("volume", "a volume", "m3", "ft3", "m3", "9500 ft3", 3, 2),
    Dimension("liquid_volume", "a volume", "m3", "gal", "L", "50 gal", 3, 2),
    Dimension("pressure", "a pressure", "Pa", "in w.c.", "Pa", "0.2 in w.c.", 3, 4),
    Dimension("house_pressure", "a pressure", "Pa", "Pa", "Pa", "-3 Pa", 2, 2, _ANY),
    Dimension("power", "a power", "W", "W", "W", "14 W", 3, 2),
    Dimension("heat_rate", "a heat rate", "W", "Btu/h", "kW", "12,000 Btu/h", 3, 2),
    Dimension("share", "a share", "1", "%", "%", "33 %", 3, 2, 0.0, 1.0),
    Dimension("temperature", "a temperature", "K", "degF", "degC", "-4 degF", 5, 1, _COLDEST),
    Dimension(
        "temperature_difference",
        "a temperature difference",
        "K",
        "delta_degF",
        "K",
        "20 delta_degF",
        3,
        1,
        _ANY,
    ),
    Dimension(
        "resistance", "a thermal resistance", "m2*K/W", "h*ft2*degF/Btu", "RSI", "R-8", 3, 2, prefix="R-"
    ),
    Dimension("u_value", "a U-value", "W/(m2*K)", "Btu/h*ft2*degF", "W/m2*K", "U-0.28", 3, 3, prefix="U-"),
    Dimension("sound", "a loudness", "sone", "sone", "sone", "1.0 sone", 2, 1),
    Dimension("sound_level", "a sound level", "dB", "dB", "dB", "45 dB", 2, 1, _ANY),
    Dimension("airtightness", "an airtightness", "1/h", "ACH50", "ACH50", "1.5 ACH50", 3, 2),
    Dimension("ach50", "a house leakage at 50 Pa", "1/h", "ACH50", "ACH50", "1.5 ACH50", 3, 2),
    Dimension("leakage", "a leakage at 25 Pa", "m3/s", "cfm25", "L/s at 25 Pa", "45 cfm25", 3, 1),
    Dimension("leakage_50", "a leakage at 50 Pa", "m3/s", "cfm50", "L/s at 50 Pa", "650 cfm50", 3, 1),
    Dimension(
        "leakage_per_area",
        "a duct leakage per floor area at 25 Pa",
        "m3/(s*m2)",
        "cfm25/100 ft2",
        "L/s/m2 at 25 Pa",
        "4 cfm25/100 ft2",
        3,
        3,
    ),
    Dimension(
        "flow50_per_floor",
        "a house leakage at 50 Pa per floor area",
        "m3/(s*m2)",
        "cfm50/ft2 of floor",
        "m3/h/m2 of floor at 50 Pa",
        "0.25 cfm50/ft2 of floor",
        3,
        3,
    ),
    Dimension(
        "flow50_per_envelope",
        "a house leakage at 50 Pa per envelope area",
        "m3/(s*m2)",
        "cfm50/ft2 of envelope",
        "m3/h/m2 of envelope at 50 Pa",
        "0.25 cfm50/ft2 of envelope",
        3,
        3,
    ),
    Dimension("concentration", "a concentration", "1", "ppm", "ppm", "9 ppm", 3, 1),
    Dimension("angle", "an angle", "rad", "deg", "deg", "45 deg", 3, 2, _ANY),
    Dimension("slope", "a slope", "1", "in/ft", "%", "1/4 in/ft", 3, 3, 0.0, 100.0),
    Dimension("mass", "a mass", "kg", "lb", "kg", "7 lb 4 oz", 3, 2),
    Dimension("charge_per_length", "a charge per length", "kg/m", "oz/ft", "g/m", "0.6 oz/ft", 3, 3),
    Dimension("time", "a duration", "s", "h", "h", "20 min", 3, 2),
    Dimension("energy", "an amount of energy", "J", "kWh", "kWh", "300 kWh", 3, 2),
    Dimension("velocity", "a velocity", "m/s", "fpm", "m/s", "600 fpm", 3, 2),
    Dimension(
        "friction_rate", "a friction rate", "Pa/m", "in w.c./100 ft", "Pa/m", "0.08 in w.c./100 ft", 3, 4
    ),
    Dimension("relative_humidity", "a relative humidity", "1", "%", "%", "40 %", 3, 1, 0.0, 1.0),
    Dimension("efficacy", "a fan efficacy", "m3/J", "cfm/W", "L/s/W", "2.8 cfm/W", 3, 2),
    Dimension(
        "specific_fan_power", "a fan power per airflow", "J/m3", "W/cfm", "W/(L/s)", "0.35 W/cfm", 3, 3
    ),
    Dimension(
        "electricity_price", "a price of electricity", "USD/J", "USD/kWh", "USD/kWh", "0.15 USD/kWh", 3, 4
    ),
    Dimension("fuel_price", "a price of fuel", "USD/J", "USD/MMBtu", "USD/GJ", "12 USD/MMBtu", 3, 2),
    Dimension("money", "an amount of money", "USD", "USD", "USD", "1800 USD", 3, 2),
    Dimension("yearly_cost", "a cost of each year", "USD/s", "USD/yr", "USD/yr", "40 USD/yr", 3, 2),
    Dimension("degree_days", "a count of degree days", "K*s", "degF*day", "degC*day", "7500 degF*day", 3, 1),
    Dimension("permeance", "a vapor permeance", "kg/(s*m2*Pa)", "perm", "ng/(s*m2*Pa)", "0.05 perm", 3, 4),
    Dimension("humidity_ratio", "a humidity ratio", "kg/kg", "grains/lb", "g/kg", "29 grains/lb", 3, 2),
    Dimension("air_changes", "an air change rate", "1/s", "ACH", "ACH", "0.35 ACH", 3, 3),
    Dimension(
        "airflow_per_heat", "an airflow per capacity", "m3/J", "cfm/ton", "L/s/kW", "400 cfm/ton", 3, 1
    ),
    Dimension(
        "airflow_per_area", "an airflow per area", "m3/(s*m2)", "cfm/ft2", "L/s/m2", "0.03 cfm/ft2", 3, 4
    ),
    Dimension("heat_flux", "a heat rate per area", "W/m2", "Btu/h/ft2", "W/m2", "20 Btu/h/ft2", 3, 2),
    Dimension("water_flow", "a water flow", "m3/s", "gpm", "L/min", "3 gpm", 3, 3),
    Dimension("moisture_flow", "water taken out of the air", "m3/s", "pints/day", "L/day", "70 pints/day", 3, 1),
    Dimension("voltage", "a voltage", "V", "V", "V", "120 V", 3, 1),
    Dimension("current", "a current", "A", "A", "A", "15 A", 3, 2),
    Dimension("density", "a density", "kg/m3", "lb/ft3", "kg/m3", "0.075 lb/ft3", 3, 4),
)
DIMENSIONS: dict[str, Dimension] = {dimension.name: dimension for dimension in _ALL}
