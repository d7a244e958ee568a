"""The refusals of formulas carry what they refused."""

import pytest

from checker.physics.validity import NoSolution, OutOfRange


@pytest.mark.parametrize("refusal", [OutOfRange, NoSolution])
def test_refusals_carry_method_and_reason(refusal: type[OutOfRange] | type[NoSolution]) -> None:
    raised = refusal("fan curve", "airflow is too high")
    assert isinstance(raised, ValueError)
    assert (raised.method, raised.reason) == ("fan curve", "airflow is too high")
    assert str(raised) == "fan curve: airflow is too high"
