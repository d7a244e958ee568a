"""Numbers in messages."""

import pytest

from checker.outputs.numbers import filled, text_of
from checker.rule import Num
from checker.sizes import parse_size
from checker.units import parse, parse_airtightness


@pytest.mark.parametrize(
    ("number", "trade", "metric"),
    [
        (Num(parse("80 cfm", "airflow"), "airflow"), "80 cfm", "38 L/s"),  # 80 * 0.4719474 L/s
        (Num(parse("68 degF", "temperature"), "temperature"), "68 degF", "20 degC"),  # (68 - 32) / 1.8
        (Num(parse_size("10x6 in")), "10x6 in", "254x152 mm"),  # 25.4 mm to the inch
        (Num(parse_airtightness("1.5 ACH50"), "airtightness"), "1.5 ACH50", "1.5 ACH50"),
        (Num(2), "2", "2"),
        (Num(0.123456), "0.1235", "0.1235"),
        (Num(123456.7), "123457", "123457"),
        (Num(True), "yes", "yes"),
        (Num(None, "length"), "none", "none"),
        (Num("balanced"), "balanced", "balanced"),
    ],
)
def test_text(number: Num, trade: str, metric: str) -> None:
    assert (text_of(number, "trade"), text_of(number, "metric")) == (trade, metric)


def test_slots_are_filled_and_others_left() -> None:
    assert filled("{flow} of {name} {unknown}", {"flow": Num(0.0, "airflow"), "name": Num("x")}, "trade") == (
        "0 cfm of x {unknown}"
    )


def test_numbers_that_would_look_alike_get_more_digits() -> None:
    numbers = {"flow": Num(parse("49.98 cfm", "airflow"), "airflow"), "least": Num(parse("50 cfm", "airflow"), "airflow")}
    assert filled("{flow} is less than {least}", numbers, "trade") == "49.98 cfm is less than 50 cfm"
