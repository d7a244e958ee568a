"""Write checker/unit_table.py from the reviewed list of accepted spellings; `--check` reports drift.

Each spelling is given as a pint expression, and pint works out the factor and the offset. pint never sees
a user's text (it reads `80 cfm` as 80 centifermi). A spelling marked `=` counts in this case of letters
only; all others in any case, and with periods, spaces, `*`, `^`, brackets and `per`/`/` as one pleases.

Conventions: Btu is the International Table Btu, a therm 100,000 of them, a ton of cooling 12,000 Btu/h;
the inch of water is the conventional one of 249.08891 Pa (1000 kg/m3 and standard gravity, water near
4 degC); HDD and CDD without a base count in degF, as do those at 65 and 50; 18 and 10 count in degC.
"""

import sys
from decimal import Decimal
from pathlib import Path
from typing import Any

import pint

from checker.spelling import unit_key

TARGET = Path(__file__).parents[1] / "checker" / "unit_table.py"

FT3_MIN = "foot**3/minute"
WATER_INCH = "2.54*centimeter_H2O"
BTU_H = "Btu_it/hour"
R_US = "hour*foot**2*delta_degF/Btu_it"

# dimension -> (SI unit, {pint expression: spellings})
REVIEWED: dict[str, tuple[str, dict[str, str]]] = {
    "airflow": (
        "meter**3/second",
        {
            FT3_MIN: "cfm | ft3/min | cu ft/min | cubic feet per minute | cubic foot per minute",
            "foot**3/hour": "cfh | ft3/h | ft3/hr | cu ft/h | cu ft/hr",
            "liter/second": "L/s | lps | L/sec | litre/s | liter/s | litres per second | liters per second",
            "liter/minute": "L/min | lpm",
            "meter**3/hour": "m3/h | m3/hr | cmh | cubic metres per hour | cubic meters per hour",
            "meter**3/minute": "m3/min | cmm",
            "meter**3/second": "m3/s | m3/sec | cubic metres per second | cubic meters per second",
        },
    ),
    "length": (
        "meter",
        {
            "inch": "in | inch | inches | \" | ''",
            "foot": "ft | foot | feet | ' | lf | lin ft | linear ft | linear feet",
            "yard": "yd | yard | yards",
            "0.001*inch": "mil | mils",
            "millimeter": "mm | millimetre | millimetres | millimeter | millimeters",
            "centimeter": "cm | centimetre | centimetres | centimeter | centimeters",
            "meter": "m | metre | metres | meter | meters",
        },
    ),
    "area": (
        "meter**2",
        {
            "foot**2": "ft2 | sq ft | sf | sqft | square feet | square foot | sq feet | sq '",
            "inch**2": "in2 | sq in | sqin | square inches | square inch | sq inch | sq inches",
            "meter**2": "m2 | sq m | square metres | square meters | square metre | square meter",
            "centimeter**2": "cm2 | sq cm",
            "millimeter**2": "mm2 | sq mm",
        },
    ),
    "volume": (
        "meter**3",
        {
            "foot**3": "ft3 | cu ft | cf | cuft | cubic feet | cubic foot",
            "100*foot**3": "ccf",
            "inch**3": "in3 | cu in | cubic inches | cubic inch",
            "meter**3": "m3 | cubic metres | cubic meters | cubic metre | cubic meter",
            "liter": "L | litre | litres | liter | liters",
            "milliliter": "mL",
            "US_liquid_gallon": "gal | gallon | gallons | US gal | US gallon | US gallons",
            "imperial_gallon": "imp gal | imperial gal | imperial gallon | imperial gallons",
            "US_liquid_quart": "qt | quart | quarts",
            "US_pint": "pint | pints",
            "128*foot**3": "cord | cords",
        },
    ),
    "pressure": (
        "pascal",
        {
            WATER_INCH: "in w.c. | in wc | in w.g. | inwg | iwc | iwg | in H2O | in of water | inches of water"
            " | inch of water | inches w.c. | inch w.c. | inches w.g. | in water column"
            ' | inches water column | inches of water column | " w.c. | " w.g. | " H2O | w.c. | w.g.',
            "pascal": "Pa | pascal | pascals",
            "kilopascal": "kPa",
            "hectopascal": "hPa | mbar | millibar | millibars",
            "bar": "bar",
            "0.1*centimeter_H2O": "mm H2O | mm w.c. | mm w.g. | mm of water",
            "pound*g_0/inch**2": "psi | psig | lb/in2 | lbf/in2 | lb/sq in | pounds per square inch",
            "inch_Hg": "in Hg | inches of mercury",
            "millimeter_Hg": "mm Hg",
            "millimeter_Hg/1000": "micron | microns | um Hg",
        },
    ),
    "power": (
        "watt",
        {
            "watt": "W | watt | watts",
            "kilowatt": "kW | kilowatt | kilowatts",
            BTU_H: "Btu/h | Btu/hr",
        },
    ),
    "heat_rate": (
        "watt",
        {
            BTU_H: "Btu/h | Btu/hr | Btu/hour",
            "1000*Btu_it/hour": "kBtu/h | kBtu/hr | kBtuh | MBH | MBTUH",
            "1e6*Btu_it/hour": "MMBtu/h | MMBtu/hr | MMBH | MMBtuh",
            "12000*Btu_it/hour": "ton | tons | ton of cooling | tons of cooling | ton cooling | tons cooling"
            " | ton of refrigeration | tons of refrigeration | TR",
            "watt": "W | watt | watts",
            "kilowatt": "kW | kilowatt | kilowatts",
        },
    ),
    "temperature": (
        "kelvin",
        {
            "degF": "degF | F | degree F | degrees F | fahrenheit | degrees fahrenheit | deg fahrenheit",
            "degC": "degC | C | degree C | degrees C | celsius | degrees celsius | deg celsius",
            "kelvin": "=K | kelvin",
        },
    ),
    "temperature_difference": (
        "kelvin",
        {
            "delta_degF": "delta_degF | delta_F | degF difference | F difference | degrees F difference | degF diff | F diff",
            "delta_degC": "delta_degC | delta_C | degC difference | C difference | degrees C difference | degC diff | C diff",
            "kelvin": "=K | kelvin | kelvins | delta_K",
        },
    ),
    "resistance": (
        "meter**2*kelvin/watt",
        {
            R_US: "h*ft2*degF/Btu | h*ft2*F/Btu | hr*ft2*degF/Btu | hr*ft2*F/Btu | ft2*h*degF/Btu | ft2*degF*h/Btu",
            "meter**2*kelvin/watt": "RSI | m2*K/W | K*m2/W | m2*degC/W",
        },
    ),
    "u_value": (
        "watt/meter**2/kelvin",
        {
            f"1/({R_US})": "Btu/h*ft2*degF | Btu/h*ft2*F | Btu/hr*ft2*degF | Btu/hr*ft2*F | Btu/h/ft2/degF | Btu/h/ft2/F",
            "watt/meter**2/kelvin": "W/m2*K | W/m2/K | W/K*m2 | W/m2*degC",
        },
    ),
    "sound": ("1", {"1": "sone | sones | =S"}),
    "sound_level": ("1", {"1": "dB | dBA | db(A) | decibel | decibels"}),
    "ach50": (
        "1/hour",
        {
            "1/hour": "ACH50 | ACH 50 | ACH at 50 | ACH at 50 Pa | air changes/h at 50 Pa"
            " | air changes per hour at 50 Pa | 1/h at 50 Pa | at 50 | at 50 Pa"
        },
    ),
    "leakage": (
        "meter**3/second",
        {
            FT3_MIN: "cfm25 | cfm at 25 | cfm at 25 Pa | cfm at 25 pascals",
            "liter/second": "L/s at 25 Pa | L/s at 25 | lps25",
            "meter**3/hour": "m3/h at 25 Pa | m3/h at 25",
        },
    ),
    "leakage_50": (
        "meter**3/second",
        {
            FT3_MIN: "cfm50 | cfm at 50 | cfm at 50 Pa | cfm at 50 pascals",
            "liter/second": "L/s at 50 Pa | L/s at 50 | lps50",
            "meter**3/hour": "m3/h at 50 Pa | m3/h at 50",
        },
    ),
    "leakage_per_area": (
        "meter/second",
        {
            f"{FT3_MIN}/(100*foot**2)": "cfm25/100 ft2 | cfm25/100 sf | cfm25/100 sq ft | cfm25/100 square feet"
            " | cfm/100 ft2 at 25 Pa | cfm/100 sf at 25 Pa | cfm at 25 Pa/100 ft2"
            " | cfm at 25 Pa per 100 sq ft | cfm at 25/100 ft2",
            f"{FT3_MIN}/foot**2": "cfm25/ft2 | cfm25/sf | cfm25/sq ft | cfm/ft2 at 25 Pa",
            "liter/second/meter**2": "L/s/m2 at 25 Pa",
        },
    ),
    "flow50_per_floor": (
        "meter/second",
        {
            f"{FT3_MIN}/foot**2": "cfm50/ft2 of floor | cfm50/sf of floor | cfm50/sq ft of floor | cfm50/ft2 floor"
            " | cfm50/ft2 of floor area | cfm/ft2 of floor at 50 Pa",
            "meter**3/hour/meter**2": "m3/h/m2 of floor at 50 Pa | m3/h*m2 of floor at 50 Pa",
            "liter/second/meter**2": "L/s/m2 of floor at 50 Pa | L/s*m2 of floor at 50 Pa",
        },
    ),
    "flow50_per_envelope": (
        "meter/second",
        {
            f"{FT3_MIN}/foot**2": "cfm50/ft2 of envelope | cfm50/sf of envelope | cfm50/sq ft of envelope"
            " | cfm50/ft2 envelope | cfm50/ft2 of envelope area | cfm/ft2 of envelope at 50 Pa",
            "meter**3/hour/meter**2": "m3/h/m2 of envelope at 50 Pa | m3/h*m2 of envelope at 50 Pa",
            "liter/second/meter**2": "L/s/m2 of envelope at 50 Pa | L/s*m2 of envelope at 50 Pa",
        },
    ),
    "concentration": ("1", {"ppm": "ppm | ppmv | parts per million", "0.001*ppm": "ppb"}),
    "angle": ("radian", {"degree": "deg | degree | degrees", "radian": "rad"}),
    "slope": (
        "1",
        {
            "inch/foot": 'in/ft | in/foot | inch/ft | inch per foot | inches per foot | "/ft | "/foot | "/\' | in/12 in | "/12"',
            "percent": "% | percent | pct",
            "millimeter/meter": "mm/m",
            "1": "ft/ft | m/m | in/in",
        },
    ),
    "mass": (
        "kilogram",
        {
            "pound": "lb | lbs | lbm | pound | pounds",
            "ounce": "oz | ounce | ounces",
            "kilogram": "kg | kilogram | kilograms",
            "gram": "g | gram | grams",
        },
    ),
    "time": (
        "second",
        {
            "second": "s | sec | second | seconds",
            "minute": "min | minute | minutes | mins",
            "hour": "h | hr | hrs | hour | hours",
            "day": "d | day | days",
            "365*day": "year | years | yr",
        },
    ),
    "energy": (
        "joule",
        {
            "watt*hour": "Wh",
            "kilowatt*hour": "kWh | kilowatt hour | kilowatt hours",
            "1e6*watt*hour": "=MWh",
            "Btu_it": "Btu",
            "1000*Btu_it": "kBtu",
            "1e6*Btu_it": "MMBtu",
            "1e5*Btu_it": "therm | therms",
            "joule": "J",
            "kilojoule": "kJ",
            "megajoule": "=MJ",
            "gigajoule": "GJ",
        },
    ),
    "share": (
        "1",
        {
            "percent": "% | percent | pct",
            "minute/hour": "min/h | min/hr | minutes per hour | min/hour",
            "hour/day": "h/day | h/d | hr/day | hrs/day | hours per day",
            "minute/day": "min/day | minutes per day",
        },
    ),
    "velocity": (
        "meter/second",
        {
            "foot/minute": "fpm | ft/min | feet per minute | foot per minute",
            "foot/second": "ft/s | fps | ft/sec",
            "meter/second": "m/s | m/sec | metres per second | meters per second",
            "mile/hour": "mph",
            "kilometer/hour": "km/h | kph",
        },
    ),
    "friction_rate": (
        "pascal/meter",
        {
            f"{WATER_INCH}/(100*foot)": "in w.c./100 ft | in w.g./100 ft | inches w.c./100 ft | iwc/100 ft | iwg/100 ft"
            ' | in H2O/100 ft | " w.c./100 ft | " w.g./100 ft | w.c./100 ft | in w.c./100 feet'
            " | in w.c./100' | in w.g./100' | \" w.c./100' | in/100 ft | \"/100 ft | \"/100'",
            "pascal/meter": "Pa/m | pascals per metre | pascals per meter",
        },
    ),
    "relative_humidity": (
        "1",
        {"percent": "% | % RH | RH | percent | percent RH | pct | % relative humidity"},
    ),
    "efficacy": (
        "meter**3/joule",
        {
            f"{FT3_MIN}/watt": "cfm/W | cfm/watt | cfm per watt",
            "liter/second/watt": "L/s/W | L/s per W | L/s per watt | (L/s)/W",
        },
    ),
    "specific_fan_power": (
        "joule/meter**3",
        {
            f"watt/({FT3_MIN})": "W/cfm | watts per cfm | watt/cfm",
            "watt/(liter/second)": "W/(L/s) | W per L/s",
            "kilowatt/(meter**3/second)": "kW/(m3/s)",
            "watt/(meter**3/hour)": "W/(m3/h)",
        },
    ),
    "electricity_price": (
        "USD/joule",
        {
            "USD/(kilowatt*hour)": "USD/kWh | $/kWh | dollars per kWh",
            "0.01*USD/(kilowatt*hour)": "cents/kWh | cent/kWh | ¢/kWh",
        },
    ),
    "fuel_price": (
        "USD/joule",
        {
            "USD/(1e6*Btu_it)": "USD/MMBtu | $/MMBtu | dollars per MMBtu",
            "USD/(1e5*Btu_it)": "USD/therm | $/therm | dollars per therm",
            "USD/gigajoule": "USD/GJ | $/GJ",
            "USD/megajoule": "=USD/MJ | =$/MJ",
            "USD/(kilowatt*hour)": "USD/kWh | $/kWh",
            "0.01*USD/(kilowatt*hour)": "cents/kWh | ¢/kWh",
        },
    ),
    "degree_days": (
        "kelvin*second",
        {
            "delta_degF*day": "degF*day | degF*days | F*day | F*days | HDD | HDD65 | HDD65F | CDD | CDD65 | CDD65F | CDD50 | CDD50F",
            "delta_degC*day": "degC*day | degC*days | C*day | C*days | HDD18 | HDD18C | CDD18 | CDD18C | CDD10 | CDD10C | K*day | K*days",
        },
    ),
    "permeance": (
        "kilogram/second/meter**2/pascal",
        {
            "grain/(hour*foot**2*inch_Hg)": "perm | perms | US perm | US perms | gr/h*ft2*inHg",
            "nanogram/second/meter**2/pascal": "ng/(s*m2*Pa) | ng/(Pa*s*m2) | ng/s/m2/Pa",
        },
    ),
    "humidity_ratio": (
        "1",
        {
            "grain/pound": "grains/lb | gr/lb | grain/lb | grains | grain | gr | grains per pound",
            "1": "lb/lb | kg/kg",
            "gram/kilogram": "g/kg",
        },
    ),
    "air_changes": (
        "1/second",
        {
            "1/hour": "ACH | 1/h | /h | air changes/h | air changes/hr | air changes per hour | air change per hour"
            " | ach natural | ach nat",
        },
    ),
    "airflow_per_heat": (
        "meter**3/joule",
        {
            f"{FT3_MIN}/(12000*Btu_it/hour)": "cfm/ton | cfm per ton | cfm/ton of cooling",
            f"{FT3_MIN}/(1000*Btu_it/hour)": "cfm/MBH | cfm/kBtu/h | cfm/kBtuh",
            "liter/second/kilowatt": "L/s/kW | L/s per kW | (L/s)/kW",
            "meter**3/hour/kilowatt": "m3/h/kW | m3/h per kW",
        },
    ),
    "airflow_per_area": (
        "meter/second",
        {
            f"{FT3_MIN}/foot**2": "cfm/ft2 | cfm/sf | cfm/sq ft | cfm per square foot",
            f"{FT3_MIN}/(100*foot**2)": "cfm/100 ft2 | cfm/100 sf | cfm/100 sq ft",
            "liter/second/meter**2": "L/s/m2 | L/s*m2 | L/s per m2",
            "meter**3/hour/meter**2": "m3/h/m2 | m3/h*m2",
        },
    ),
    "water_flow": (
        "meter**3/second",
        {
            "US_liquid_gallon/minute": "gpm | gal/min | gallons per minute",
            "US_liquid_gallon/hour": "gph | gal/h | gal/hr | gallons per hour",
            "US_liquid_gallon/day": "gpd | gal/day | gallons per day",
            "US_pint/day": "pint/day | pints/day | pt/day | pints per day",
            "liter/minute": "L/min | lpm",
            "liter/hour": "L/h",
            "liter/day": "L/day | L/d",
            "liter/second": "L/s",
        },
    ),
    "voltage": ("volt", {"volt": "V | volt | volts | VAC | V AC | VDC"}),
    "current": ("ampere", {"ampere": "A | amp | amps | ampere | amperes", "milliampere": "mA"}),
    "density": (
        "kilogram/meter**3",
        {
            "pound/foot**3": "lb/ft3 | lb/cu ft | lbm/ft3 | pcf",
            "kilogram/meter**3": "kg/m3",
        },
    ),
}

# the same spellings, shown in another unit
SAME = {"diameter": "length", "small_area": "area", "liquid_volume": "volume", "house_pressure": "pressure"}

HEAD = '''"""Accepted unit spellings by dimension: (factor, offset) with SI value = number * factor + offset.

Generated by tests/make_unit_table.py from its reviewed list; do not edit. Besides each spelling as written
it holds the form that checker.spelling.unit_key makes of it.
"""

TABLE: dict[str, dict[str, tuple[float, float]]] = {
'''


def registry() -> Any:
    """pint in exact decimal arithmetic, with a currency."""
    units: Any = pint.UnitRegistry(non_int_type=Decimal)
    units.define("USD = [currency]")
    return units


def scale(units: Any, expression: str, si: str) -> tuple[float, float]:
    """(factor, offset) that take a number in the unit to SI, by pint."""
    if expression in ("degF", "degC"):
        zero, one = (units.Quantity(Decimal(n), expression).to(si).magnitude for n in (0, 1))
        return float(f"{one - zero:.16g}"), float(f"{zero:.16g}")
    return float(
        f"{units.parse_expression(expression).to(si).magnitude:.16g}" if expression != "1" else 1.0
    ), 0.0


def spellings(listed: str) -> list[tuple[str, bool]]:
    """(spelling, whether its case counts) of one line of the reviewed list."""
    return [(each.strip().removeprefix("="), each.strip().startswith("=")) for each in listed.split(" | ")]


def entries(dimension: str, units: Any) -> dict[tuple[float, float], list[str]]:
    """All keys of a dimension by scale; a key with two meanings is an error of the list."""
    si, lines = REVIEWED[dimension]
    meaning: dict[str, tuple[float, float]] = {}
    for expression, listed in lines.items():
        value = scale(units, expression, si)
        for spelling, exact in spellings(listed):
            for key in (spelling,) if exact else (spelling, unit_key(spelling)):
                if meaning.setdefault(key, value) != value:
                    raise ValueError(f"{dimension}: {key} has two meanings")
    return {value: [key for key in meaning if meaning[key] == value] for value in meaning.values()}


def wrapped(words: list[str], width: int = 108) -> str:
    """Words as lines of source at most `width` wide, the second and later ones set in."""
    lines = ["       "]
    for word in words:
        if len(lines[-1]) + 1 + len(word) > width:
            lines.append("           ")
        lines[-1] += f" {word}"
    return "\n".join(lines) + "\n"


def quote(text: str) -> str:
    return (
        f'"{text}"'
        if '"' not in text
        else f"'{text}'"
        if "'" not in text
        else '"' + text.replace('"', '\\"') + '"'
    )


def rendered() -> str:
    """The text of checker/unit_table.py."""
    units = registry()
    parts = [HEAD]
    for dimension in REVIEWED:
        parts.append(f'    "{dimension}": {{\n')
        for value, keys in entries(dimension, units).items():
            first, *rest = [f"{quote(key)}," for key in keys]
            parts.append(wrapped([f"**dict.fromkeys(({first}", *rest, f"), {value!r}),"]))
        parts.append("    },\n")
    parts.append("}\n")
    parts += [f'TABLE["{other}"] = TABLE["{like}"]\n' for other, like in SAME.items()]
    return "".join(parts)


def main(arguments: list[str]) -> int:
    text = rendered()
    if arguments == ["--check"]:
        same = TARGET.read_text(encoding="utf-8") == text
        print(
            "the unit table is up to date"
            if same
            else "the unit table differs from the reviewed list: run this without --check"
        )
        return 0 if same else 1
    TARGET.write_text(text, encoding="utf-8")
    print(
        f"wrote {TARGET.name}: {sum(len(spellings(s)) for _, lines in REVIEWED.values() for s in lines.values())} spellings"
    )
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
