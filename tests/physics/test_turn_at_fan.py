"""A direct 180-degree turn at a fan outlet."""

from math import pi

import pytest

from checker.physics.turn_at_fan import TURNS, diameter_for_share, share_of_static, turn_loss

CFM = 0.3048**3 / 60.0
IN = 0.0254
IN_WG = 249.089


def test_loss_is_the_coefficient_times_velocity_pressure() -> None:
    # (V / 4005)^2 in. w.g.: 200 cfm in 6 in round is 1,019 fpm, 0.0647 in. w.g.
    loss = turn_loss(200 * CFM, 6 * IN, 1.0) / IN_WG
    assert loss == pytest.approx((200 / (pi * 0.25**2) / 4005) ** 2, rel=0.005)
    assert loss == pytest.approx(0.0647, rel=0.005)


@pytest.mark.parametrize("kind", TURNS)
def test_six_inch_duct_takes_a_turn_at_a_small_flow_where_four_inch_does_not(kind: str) -> None:
    coefficient = TURNS[kind].loss_coefficient
    small = turn_loss(80 * CFM, 6 * IN, coefficient)
    assert turn_loss(80 * CFM, 4 * IN, coefficient) / small == pytest.approx(1.5**4)
    assert share_of_static(small, 0.25 * IN_WG) < 0.11


def test_mitered_turn_in_four_inch_at_eighty_cfm() -> None:
    # 917 fpm, velocity pressure 0.0524 in. w.g., coefficient 2 x 1.2: half of a 0.25 in. w.g. fan.
    loss = turn_loss(80 * CFM, 4 * IN, TURNS["two mitered elbows"].loss_coefficient)
    assert loss / IN_WG == pytest.approx(0.126, abs=0.001)
    assert share_of_static(loss, 0.25 * IN_WG) == pytest.approx(0.503, abs=0.005)


def test_a_smooth_bend_costs_least_and_mitres_most() -> None:
    by_loss = sorted(TURNS, key=lambda kind: TURNS[kind].loss_coefficient)
    assert by_loss[0] == "smooth u-bend"
    assert by_loss[-1] == "two mitered elbows"
    assert all("memory" in turn.source or "common practice" in turn.source for turn in TURNS.values())


def test_diameter_for_a_share_of_the_static() -> None:
    diameter = diameter_for_share(80 * CFM, 2.4, 0.25 * IN_WG, 0.1)
    assert turn_loss(80 * CFM, diameter, 2.4) == pytest.approx(0.1 * 0.25 * IN_WG)
    assert 4 * IN < diameter < 6 * IN


@pytest.mark.parametrize(
    "call",
    [
        lambda: turn_loss(0.0, 0.1, 1.0),
        lambda: turn_loss(0.05, 0.0, 1.0),
        lambda: share_of_static(10.0, 0.0),
        lambda: diameter_for_share(0.05, 1.0, 60.0, 0.0),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must be positive"):
        call()
