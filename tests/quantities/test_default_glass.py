"""Windows and doors without a label: the code's default in the loads, by hand, and what is asked for."""

from typing import Any

import pytest

from checker.case import Case, Missing
from checker.design.envelope import Fenestration, OutsideDoor
from checker.quantities.cooling_terms import cooling_term
from checker.quantities.envelope_parts import of_window
from checker.quantities.heating_terms import heating_term
from tests.quantities.test_loads import case

U_UNIT = 5.678263  # W/(m2 K) in one Btu/(h ft2 F)


def with_glazing(kind: dict[str, Any], faces: str = "south") -> tuple[Case, Fenestration]:
    """The box with windows of a kind and none of their own figures."""
    window = {"room": "day", "area": "5 m2", "count": 2, "faces": faces, "glazing": "kind"}
    change = {"envelope": {"glazing": {"kind": kind}, "windows": {"day": {**window, "u": "(gone)", "shgc": "(gone)"}}}}
    made = case(change)
    assert made.design.envelope is not None
    return made, made.design.envelope.windows["day"]


@pytest.mark.parametrize(
    ("kind", "faces", "u", "gain"),
    [
        ({"frame": "metal", "panes": "double"}, "south", 0.80, 0.7),
        ({"frame": "vinyl", "panes": "triple"}, "south", 0.55, 0.7),
        ({"frame": "vinyl", "glass": "double tinted"}, "south", 0.55, 0.6),
        ({"frame": "wood", "panes": "double"}, "sky", 1.05, 0.7),
        ({"frame": "metal", "glass": "single clear"}, "sky", 2.00, 0.8),
        ({"panes": "glass block"}, "north", 0.60, 0.6),
    ],
)
def test_default_of_a_window(kind: dict[str, Any], faces: str, u: float, gain: float) -> None:
    made, window = with_glazing(kind, faces)
    assert of_window(made, window, "u") == pytest.approx(u * U_UNIT, rel=1e-6)
    assert of_window(made, window, "shgc") == gain
    term = heating_term(made, window)
    assert term.watts == pytest.approx(u * U_UNIT * 10.0 * 30.0, rel=1e-6)
    assert "code's default" in term.line("trade")


def test_stated_figures_come_first() -> None:
    made, window = with_glazing({"frame": "metal", "panes": "double", "u": "1.5 W/m2K", "shgc": 0.4})
    assert of_window(made, window, "u") == 1.5
    assert "code's default" not in heating_term(made, window).line("trade") + cooling_term(made, window).line("trade")
    made, window = with_glazing({"frame": "metal", "panes": "double", "u": "1.5 W/m2K"})
    assert heating_term(made, window).assumed == ()
    begins = "solar heat gain coefficient of windows of the kind"
    assert any(each.startswith(begins) and "the code's default" in each for each in cooling_term(made, window).assumed)


@pytest.mark.parametrize(
    ("kind", "missing"),
    [
        ({"glass": "low-e low-solar"}, {"u", "shgc"}),  # glass alone is no unlabeled product: its figures are asked for
        ({"frame": "wood"}, {"u", "shgc"}),
        ({"panes": "double"}, {"u"}),
    ],
)
def test_what_is_asked_for(kind: dict[str, Any], missing: set[str]) -> None:
    made, window = with_glazing(kind)
    with pytest.raises(Missing) as caught:
        cooling_term(made, window)
    assert set(caught.value.paths) == {f"envelope.glazing.kind.{field}" for field in missing}


def test_a_skylight_of_glass_blocks_has_no_default() -> None:
    made, window = with_glazing({"panes": "glass block"}, "sky")
    with pytest.raises(Missing):
        of_window(made, window, "u")


def test_default_of_a_door() -> None:
    made = case({"envelope": {"doors": {"night": {"u": "(gone)", "kind": "insulated metal"}}}})
    assert made.design.envelope is not None
    door: OutsideDoor = made.design.envelope.doors["night"]
    assert heating_term(made, door).watts == pytest.approx(0.60 * U_UNIT * 2.0 * 30.0, rel=1e-6)
    assert "code's default" in heating_term(made, door).line("trade") + cooling_term(made, door).line("trade")
