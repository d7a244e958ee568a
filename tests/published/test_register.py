"""Every published value of the register against our functions; misprints are not reproduced."""

from math import isfinite

import pytest

from tests.published import agreement
from tests.published.reach import unreached
from tests.published.register import Check, agrees, checks, named, registers

IDLE = {
    "air.density": "published examples are in air of other temperatures; the tool reckons with 20 degC at the site's pressure",
    "air.viscosity": "the same, and it confirms the viscosity of standard air",
}
"""Formulas that no rule and no quantity leads to, and why they are kept."""

CHECKS = [check for file in registers() for check in checks(file)]


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.name)
def test_published_value(check: Check) -> None:
    value = check.ours()
    assert agrees(check, value), f"{check.published.text(value, 3)} beside {check.as_printed}, {check.source}"
    if check.misprint is not None:
        assert abs(value - check.misprint.value) > check.off_by, f"the misprint {check.misprint} is reproduced"
        assert check.why


def test_names_are_unique() -> None:
    names = [check.name for check in CHECKS]
    assert sorted({name for name in names if names.count(name) > 1}) == []


def test_sources_name_a_place_and_no_address() -> None:
    for check in CHECKS:
        assert len(check.source) > 6 and "http" not in check.source and "www" not in check.source, check.name


def test_only_our_functions_are_asked() -> None:
    with pytest.raises(ValueError, match="none of ours"):
        named("math.sqrt")


def test_a_wrong_value_would_be_seen() -> None:
    bounded = [check for check in CHECKS if isfinite(check.published.value) and check.allowed]
    assert [check.name for check in bounded if agrees(check, check.published.value + 1.01 * check.allowed)] == []
    assert len(bounded) > 500


def test_what_the_rules_reach() -> None:
    idle = unreached()
    assert "friction.friction_per_meter" not in idle  # by way of the network and the exhaust table
    assert "psychrometrics.saturation_pressure" not in idle  # by way of other formulas
    assert "moisture.exchange_for" not in idle  # by its module's name
    assert idle == sorted(IDLE)


def test_the_page_is_as_written() -> None:
    told = "run python -m tests.published.agreement --write"
    assert agreement.PAGE.read_text(encoding="utf-8") == agreement.page(), told
