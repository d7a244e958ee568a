"""Refrigerant lines against a condensing-unit manual, CoolProp and the safety standard's printed values."""

import pytest
from CoolProp.CoolProp import PropsSI

from checker.physics.refrigerant import (
    area_by_mixing,
    least_room_area,
    lift_pressure,
    liquid,
    liquid_velocity,
    mass_flow,
    subcooling_for_lift,
)
from checker.physics.validity import OutOfRange
from tests.make_refrigerant_table import FLUIDS, TARGET, rendered

FT, PSI, DEGF = 0.3048, 6894.757, 5.0 / 9.0
AT_110F = 316.4833


def test_table_is_as_generated() -> None:
    assert TARGET.read_text(encoding="utf-8") == rendered()


@pytest.mark.parametrize(
    ("refrigerant", "psi"),
    [("R410A", 4.138), ("R32", 3.798), ("R454B", 3.899)],
)
def test_newer_refrigerants_by_the_reference_equation(refrigerant: str, psi: float) -> None:
    # worked out with CoolProp 8.0 at 110 F, psi per 10 ft
    assert lift_pressure(refrigerant, 10 * FT, AT_110F) / PSI == pytest.approx(psi, rel=0.005)


@pytest.mark.parametrize("refrigerant", FLUIDS)
@pytest.mark.parametrize("temperature", [293.15, 299.0, 311.3, 316.48, 326.9, 328.15])
def test_between_the_rows(refrigerant: str, temperature: float) -> None:
    # oracle: CoolProp at temperatures that are no rows of the table
    found = liquid(refrigerant, temperature)
    fluid = FLUIDS[refrigerant]
    assert found.density == pytest.approx(PropsSI("D", "T", temperature, "Q", 0, fluid), rel=0.001)
    assert found.enthalpy == pytest.approx(PropsSI("H", "T", temperature, "Q", 0, fluid), rel=0.001)
    slope = (PropsSI("P", "T", temperature + 0.05, "Q", 0, fluid) - PropsSI("P", "T", temperature - 0.05, "Q", 0, fluid)) / 0.1
    assert found.slope == pytest.approx(slope, rel=0.002)


def test_falling_liquid_needs_no_subcooling() -> None:
    assert lift_pressure("R410A", -3.0, AT_110F) < 0.0
    assert subcooling_for_lift("R410A", -3.0, AT_110F) == 0.0


def test_mass_flow_and_velocity() -> None:
    # energy balance with CoolProp: 3 tons of R-410A, saturated vapor at 45 degF
    effect = PropsSI("H", "T", 280.35, "Q", 1, "R410A") - PropsSI("H", "T", AT_110F, "Q", 0, "R410A")
    flow = mass_flow("R410A", 10550.6, AT_110F)
    assert flow == pytest.approx(10550.6 / effect, rel=0.001)
    # in a 3/8 in line (inside 0.311 in): flow over density and area
    area = 3.14159265 / 4 * 0.0078994**2
    expected = flow / PropsSI("D", "T", AT_110F, "Q", 0, "R410A") / area
    assert liquid_velocity("R410A", 10550.6, AT_110F, 0.0078994) == pytest.approx(expected, rel=0.001)


@pytest.mark.parametrize("refrigerant", ["R999", "r-32", ""])
def test_unknown_refrigerants(refrigerant: str) -> None:
    with pytest.raises(OutOfRange, match="no properties"):
        lift_pressure(refrigerant, 3.0, AT_110F)


@pytest.mark.parametrize("temperature", [293.0, 328.2])
def test_outside_the_table(temperature: float) -> None:
    with pytest.raises(OutOfRange, match="outside"):
        liquid("R32", temperature)


def test_impossible_input() -> None:
    with pytest.raises(ValueError, match="capacity"):
        mass_flow("R32", 0.0, AT_110F)
    with pytest.raises(ValueError, match="inside diameter"):
        liquid_velocity("R32", 1000.0, AT_110F, 0.0)


def test_room_area_grows_with_the_square_of_the_charge() -> None:
    assert least_room_area(3.0, 0.307, 1.8) == pytest.approx(4 * least_room_area(1.5, 0.307, 1.8))
    assert area_by_mixing(3.0, 0.307, 1.8, 0.75) == pytest.approx(3.0 / (0.75 * 0.307 * 1.8))
