"""Reading and showing quantities: the spellings of the field, refusals with their remedies, display."""

import math
import re
import sys

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from checker.units import (
    DIMENSIONS,
    Airtightness,
    UnitFault,
    example,
    parse,
    parse_airtightness,
    show,
    show_airtightness,
    show_pair,
    shown,
)
from tests.unit_cases import ACCEPTED, REFUSED

CFM, FOOT = 0.0004719474432, 0.3048


@pytest.mark.parametrize(
    ("dimension", "value", "text"), [(d, value, text) for d, value, texts in ACCEPTED for text in texts]
)
def test_accepted(dimension: str, value: float, text: str) -> None:
    assert parse(text, dimension) == pytest.approx(value, rel=1e-9)


@pytest.mark.parametrize(("dimension", "text", "remedy"), REFUSED)
def test_refused_with_a_remedy(dimension: str, text: str, remedy: str) -> None:
    with pytest.raises(UnitFault) as caught:
        parse(text, dimension)
    fault = caught.value
    assert remedy in fault.remedy
    assert fault.remedy.startswith(("write", "keep"))
    assert "?" not in fault.problem + fault.remedy
    assert "\n" not in fault.problem + fault.remedy
    assert str(fault) == f"{fault.problem}; {fault.remedy}"


@pytest.mark.parametrize(
    ("text", "dimension", "problem", "remedy"),
    [
        (
            "80 in",
            "airflow",
            "`80 in` is a length; an airflow is wanted",
            "write an airflow, for example `80 cfm`",
        ),
        ("80 cmf", "airflow", "`cmf` is not a known unit; an airflow is wanted", "write `80 cfm`"),
        (
            "60 kbut/h",
            "heat_rate",
            "`kbut/h` is not a known unit; a heat rate is wanted",
            "write `60 kBtu/h`",
        ),
        (
            "-5 cfm",
            "airflow",
            "`-5 cfm` is negative; an airflow is zero or more",
            "write an airflow, for example `80 cfm`",
        ),
        ("80", "airflow", "`80` has no unit; an airflow is wanted", "write `80 cfm` or `80 L/s`"),
        ("11/2 in", "length", "`11/2` may be 1 1/2 or 5.5", "write `1 1/2` or a decimal number"),
        (
            "1,5 ft",
            "length",
            "the comma in `1,5` may be a decimal mark, 1.5, or part 1 and 5",
            "write a decimal point, `1.5`, or one value",
        ),
        (
            "60 MBtu",
            "heat_rate",
            "`60 MBtu`: M may be a thousand or a million",
            "write `60 kBtu/h` or `60 MMBtu/h`",
        ),
        (
            "0.35 W/cfm",
            "efficacy",
            "`0.35 W/cfm` is a fan power per airflow; a fan efficacy is wanted",
            "write a fan efficacy, for example `2.8 cfm/W`",
        ),
        (
            "5\x00 cfm",
            "airflow",
            "`\\x00 cfm` is not a known unit; an airflow is wanted",
            "write an airflow, for example `80 cfm`",
        ),
    ],
)
def test_the_wording(text: str, dimension: str, problem: str, remedy: str) -> None:
    with pytest.raises(UnitFault) as caught:
        parse(text, dimension)
    assert (caught.value.problem, caught.value.remedy) == (problem, remedy)


@pytest.mark.parametrize(
    "texts",
    [
        ("4 in", "4 in", '4"', "0'-4\"", "4.0 in"),
        ("10 ft", "120 in", "10'-0\"", "3.048 m", "3048 mm"),
        ("3 ft", "36 in", "1 yd"),
        ("1.1 ft", "13.2 in"),
    ],
)
def test_one_length_in_several_units_is_equal_to_the_bit(texts: tuple[str, ...]) -> None:
    assert len({parse(text, "length") for text in texts}) == 1


@pytest.mark.parametrize(
    ("text", "kind", "value"),
    [
        *(
            (text, "ach50", 1.5)
            for text in ("1.5 ACH50", "1.5ach50", "1.5 @50", "n50 = 1.5", "n50 1.5 1/h", "1.5 ach@50Pa")
        ),
        *(
            (text, "flow50", 650 * CFM)
            for text in ("650 CFM50", "650 cfm@50Pa", "650 cfm at 50 Pa", "650 cfm50")
        ),
        *(
            (text, "flow50-per-envelope", 0.25 * CFM / FOOT**2)
            for text in (
                "0.25 cfm50/ft2 of envelope",
                "0.25 cfm50/sf of envelope",
                ".25 cfm50 per sq. ft. of envelope",
            )
        ),
        ("3 m3/h·m2 of envelope @ 50 Pa", "flow50-per-envelope", 3 / 3600),
        ("0.25 cfm50/ft2 of floor", "flow50-per-floor", 0.25 * CFM / FOOT**2),
    ],
)
def test_airtightness(text: str, kind: str, value: float) -> None:
    airtightness = parse_airtightness(text)
    assert airtightness.kind == kind
    assert airtightness.value == pytest.approx(value, rel=1e-9)


@pytest.mark.parametrize(
    ("text", "remedy"),
    [
        ("3 ACH", "`3 ACH50`"),
        ("1.5 air changes", "`1.5 ACH50`"),
        ("650 cfm", "`650 cfm50` or `1.5 ACH50`"),
        ("0.25 cfm50/sf", "`0.25 cfm50/ft2 of envelope` or `0.25 cfm50/ft2 of floor`"),
        (".25 cfm/ft2 @50", "`.25 cfm50/ft2 of envelope` or `.25 cfm50/ft2 of floor`"),
        ("3 m3/h·m2@50", "`3 m3/h/m2 of envelope at 50 Pa` or `3 m3/h/m2 of floor at 50 Pa`"),
        ("3", "`3 ACH50` or `3 cfm50`"),
        ("ELA 60 in2", "`1.5 ACH50`"),
        ("tight", "`1.5 ACH50`"),
        ("-1 ACH50", "`1.5 ACH50`"),
        ("-650 cfm50", "`1.5 ACH50`"),
        ("1,5 ACH50", "`1.5`"),
        ("none", "`1.5 ACH50`"),
        ("2 ACH5O", "`2 ACH50`"),
    ],
)
def test_refused_airtightness(text: str, remedy: str) -> None:
    with pytest.raises(UnitFault) as caught:
        parse_airtightness(text)
    assert remedy in caught.value.remedy


def test_an_airtightness_is_not_one_number() -> None:
    with pytest.raises(TypeError):
        parse("1.5 ACH50", "airtightness")
    with pytest.raises(KeyError):
        parse("1.5 ACH50", "tightness")


@pytest.mark.parametrize(
    ("dimension", "text", "trade", "metric"),
    [
        ("airflow", "55 cfm", "55 cfm", "26 L/s"),
        ("airflow", "1234.4 cfm", "1234 cfm", "583 L/s"),
        ("airflow", "7.56 cfm", "7.6 cfm", "3.6 L/s"),
        ("airflow", "9.96 cfm", "10 cfm", "4.7 L/s"),
        ("airflow", "0.003 cfm", "0.003 cfm", "0.0014 L/s"),
        ("airflow", "0 cfm", "0 cfm", "0 L/s"),
        ("length", "7 ft 6 in", "7.5 ft", "2.29 m"),
        ("length", "12 in", "1 ft", "304.8 mm"),
        ("length", "3/4 in", "0.75 in", "19.05 mm"),
        ("length", "0.0157 in", "0.0157 in", "0.3988 mm"),
        ("length", "-6 in", "-6 in", "-152.4 mm"),
        ("length", "0 ft", "0 ft", "0 m"),
        ("diameter", "14 in", "14 in", "355.6 mm"),
        ("diameter", "150 mm", "5.91 in", "150 mm"),
        ("small_area", "50 in2", "50 in2", "323 cm2"),
        ("pressure", "0.25 in w.c.", "0.25 in w.c.", "62.3 Pa"),
        ("pressure", "0.083 in w.c.", "0.083 in w.c.", "20.7 Pa"),
        ("house_pressure", "-3.04 Pa", "-3 Pa", "-3 Pa"),
        ("house_pressure", "-0.04 in w.c.", "-10 Pa", "-10 Pa"),
        ("heat_rate", "12,000 Btu/h", "12000 Btu/h", "3.52 kW"),
        ("heat_rate", "2 ton", "24000 Btu/h", "7.03 kW"),
        ("power", "14 W", "14 W", "14 W"),
        ("temperature", "-4 degF", "-4 degF", "-20 degC"),
        ("temperature", "0 degF", "0 degF", "-17.8 degC"),
        ("temperature", "0 degC", "32 degF", "0 degC"),
        ("temperature_difference", "20 delta_degF", "20 delta_degF", "11.1 K"),
        ("resistance", "R-8", "R-8", "1.41 RSI"),
        ("resistance", "R-4.2", "R-4.2", "0.74 RSI"),
        ("u_value", "U-0.28", "U-0.28", "1.59 W/m2*K"),
        ("slope", "1/4 in/ft", "0.25 in/ft", "2.08 %"),
        ("time", "20 min", "20 min", "20 min"),
        ("time", "90 min", "1.5 h", "1.5 h"),
        ("time", "30 s", "30 s", "30 s"),
        ("share", "20 min/h", "33.3 %", "33.3 %"),
        ("friction_rate", "0.08 in w.c./100 ft", "0.08 in w.c./100 ft", "0.654 Pa/m"),
        ("electricity_price", "$0.15/kWh", "0.15 USD/kWh", "0.15 USD/kWh"),
        ("fuel_price", "$1.20/therm", "12 USD/MMBtu", "11.4 USD/GJ"),
        ("degree_days", "7500 HDD65", "7500 degF*day", "4167 degC*day"),
    ],
)
def test_shown_text(dimension: str, text: str, trade: str, metric: str) -> None:
    value = parse(text, dimension)
    assert (show(value, dimension), show(value, dimension, "metric")) == (trade, metric)


def test_shown_airtightness() -> None:
    tight = Airtightness("flow50", 650 * CFM)
    assert show_airtightness(tight) == show(tight, "airtightness") == "650 cfm50"
    assert show_airtightness(tight, "metric") == "307 L/s at 50 Pa"
    assert (
        show(Airtightness("ach50", 1.5), "airtightness", "metric") == "1.5 ACH50" == show(1.5, "airtightness")
    )
    assert shown(Airtightness("flow50-per-floor", 0.25 * CFM / FOOT**2), "airtightness") == (
        0.25,
        "cfm50/ft2 of floor",
    )


def test_numbers_for_machines() -> None:
    assert shown(parse("55 cfm", "airflow"), "airflow") == (55.0, "cfm")
    number, unit = shown(parse("55 cfm", "airflow"), "airflow", "metric")
    assert (round(number, 7), unit) == (25.9571094, "L/s")
    assert shown(parse("R-8", "resistance"), "resistance") == (8.0, "h*ft2*degF/Btu")
    assert shown(parse("6 in", "length"), "length") == (6.0, "in")
    assert math.copysign(1.0, shown(-0.0, "house_pressure")[0]) == 1.0


def test_a_system_is_trade_or_metric() -> None:
    with pytest.raises(KeyError):
        show(1.0, "airflow", "imperial")


def test_no_minus_before_zero() -> None:
    assert show(-0.0, "house_pressure") == "0 Pa"
    assert show(-1e-12, "house_pressure") == "0 Pa"
    assert show(255.37222222222222 - 1e-10, "temperature") == "0 degF"
    assert math.copysign(1.0, parse("-0 ft", "length")) == 1.0


@pytest.mark.parametrize(
    ("dimension", "first", "second", "texts"),
    [
        ("airflow", "55 cfm", "55.04 cfm", ("55 cfm", "55.04 cfm")),
        ("airflow", "55 cfm", "56 cfm", ("55 cfm", "56 cfm")),
        ("length", "5.999 in", "6 in", ("5.999 in", "6 in")),
        ("length", "11.9999 in", "12 in", ("0.99999 ft", "1 ft")),
        ("length", "3 in", "10 ft", ("0.25 ft", "10 ft")),
        ("temperature", "70 degF", "70.01 degF", ("70 degF", "70.01 degF")),
        ("resistance", "R-8", "R-7.999", ("R-8", "R-7.999")),
        ("airflow", "55 cfm", "55 cfm", ("55 cfm", "55 cfm")),
    ],
)
def test_a_pair_that_differs_looks_different(
    dimension: str, first: str, second: str, texts: tuple[str, str]
) -> None:
    assert show_pair(parse(first, dimension), parse(second, dimension), dimension) == texts


def test_values_that_differ_by_rounding_noise_look_equal() -> None:
    assert show_pair(55 * CFM, 55 * CFM * (1 + 1e-12), "airflow") == ("55 cfm", "55 cfm")


ORDINARY = sorted(
    set(DIMENSIONS) - {"airtightness", "temperature", "relative_humidity", "slope", "share", "u_value"}
)


@settings(deadline=None, max_examples=400)
@given(st.sampled_from(ORDINARY), st.sampled_from(["trade", "metric"]), st.floats(0.002, 90000.0))
def test_what_is_shown_reads_back_within_its_decimals(dimension: str, system: str, number: float) -> None:
    unit = DIMENSIONS[dimension].trade if system == "trade" else DIMENSIONS[dimension].metric
    value = parse(f"{number!r} {unit}", dimension)
    text = show(value, dimension, system)
    again = parse(text, dimension)
    match = re.search(r"[0-9]+(?:\.([0-9]*))?(e-[0-9]+)?", text)
    assert match is not None
    last = parse(text.replace(match[0], "1", 1), dimension) * 10.0 ** -len(match[1] or "")
    kind = DIMENSIONS[dimension]
    # trailing zeros are not written: the last decimal shown may be finer than it seems, never coarser
    assert abs(again - value) <= 0.5000001 * max(last, 0.0) + 1e-7 * value
    assert kind.least <= again <= kind.most


@settings(deadline=None)
@given(st.sampled_from(["trade", "metric"]), st.floats(-60.0, 2000.0))
def test_a_temperature_reads_back_within_a_tenth(system: str, celsius: float) -> None:
    value = celsius + 273.15
    assert parse(show(value, "temperature", system), "temperature") == pytest.approx(value, abs=0.051)


@settings(deadline=None, max_examples=300)
@given(
    st.sampled_from(ORDINARY),
    st.floats(1e-3, 1e4),
    st.floats(1e-3, 1e4),
    st.sampled_from(["trade", "metric"]),
)
def test_pairs_never_look_equal(dimension: str, a: float, b: float, system: str) -> None:
    unit = DIMENSIONS[dimension].trade
    first, second = parse(f"{a!r} {unit}", dimension), parse(f"{b!r} {unit}", dimension)
    assume(abs(first - second) > 1e-6 * max(first, second))
    one, other = show_pair(first, second, dimension, system)
    assert one != other


@settings(deadline=None, max_examples=500)
@given(st.text(max_size=30), st.sampled_from(sorted(set(DIMENSIONS) - {"airtightness"})))
def test_any_text_is_read_or_refused(text: str, dimension: str) -> None:
    for candidate in (text, f"7 {text}", f"7{text}"):
        try:
            value = parse(candidate, dimension)
        except UnitFault as fault:
            assert fault.problem and fault.remedy
        else:
            assert math.isfinite(value)


@settings(deadline=None, max_examples=300)
@given(
    st.lists(
        st.sampled_from(
            ["7", "1/2", "-", ",", "'", '"', "in", "ft", "x", " ", ".", "e9", "R", "U", "%", ":", "12"]
        )
    ),
    st.sampled_from(sorted(set(DIMENSIONS) - {"airtightness"})),
)
def test_any_mixture_of_marks_is_read_or_refused(parts: list[str], dimension: str) -> None:
    try:
        assert math.isfinite(parse("".join(parts), dimension))
    except UnitFault as fault:
        assert fault.remedy


@pytest.mark.parametrize("dimension", sorted(set(DIMENSIONS) - {"airtightness"}))
def test_examples_can_be_read(dimension: str) -> None:
    assert math.isfinite(parse(example(dimension), dimension))


def test_the_example_of_an_airtightness_can_be_read() -> None:
    assert parse_airtightness(example("airtightness")) == ("ach50", 1.5)


def test_good_texts_need_neither_pint_nor_the_refusals() -> None:
    import subprocess

    program = (
        "import sys; from checker.units import parse; parse('80 cfm', 'airflow'); parse('7 ft 6 in', 'length'); "
        "heavy = {'pint', 'difflib', 'decimal', 'checker.refusals', 'dataclasses', 'pathlib'} & set(sys.modules); "
        "sys.exit(' '.join(heavy) or None)"
    )
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (0, "")
