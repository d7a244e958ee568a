"""What a setting's static pressure vouches for, on each side of a recovery unit."""

from math import inf

import pytest

from checker.quantities.static_offer import offer
from tests.quantities.test_house_figures import CFM, case_of

UNIT = """\
fans:
  unit:
    role: recovery
    settings: {continuous: {supply_airflow: 80 cfm, exhaust_airflow: 110 cfm, static: 100 Pa}}
"""


@pytest.mark.parametrize(
    ("flow", "low", "high"),
    [
        (80, 100.0, 100.0),  # its supply side
        (110, 100.0, 100.0),  # its exhaust side
        (83.9, 100.0, 100.0),  # within 5 percent
        (95, 100.0, inf),  # neither: more than at the greater flow
        (130, 0.0, 100.0),
    ],
)
def test_each_side_has_what_the_setting_states(flow: float, low: float, high: float) -> None:
    case = case_of(UNIT)
    unit = case.design.fans["unit"]
    found = offer(case, unit, unit.settings["continuous"], flow * CFM)
    assert (found.low, found.high) == (low, high)
