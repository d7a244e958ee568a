"""Cross-sections and filter sizes: what is read, what is refused, geometry and equivalent diameter."""

from math import pi

import fluids
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checker.sizes import Size, equivalent_diameter, parse_filter_size, parse_size, show_size
from checker.units import UnitFault

INCH = 0.0254


def assert_inches(size: Size, shape: str, width: float, height: float, depth: float | None = None) -> None:
    assert size.shape == shape
    assert (size.width / INCH, size.height / INCH) == pytest.approx((width, height), rel=1e-12)
    assert (size.depth is None) == (depth is None)
    assert (size.depth or 0.0) / INCH == pytest.approx(depth or 0.0, rel=1e-12)


@pytest.mark.parametrize(
    "text",
    [
        '6"',
        "6 in",
        "6in",
        "6 in.",
        "6in dia",
        '6"Ø',
        "Ø6 in",
        'ø6"',
        "⌀ 6 in",
        '6" rnd',
        "6 in rd",
        "6 in round",
        '6" dia.',
        "6″",
        "6''",
        "6 inches",
        "6\xa0in",
        "152.4 mm",
        "1/2 ft",
        "6.0 in",
        "6 IN",
        "ø 6 in",
    ],
)
def test_round_sizes(text: str) -> None:
    assert_inches(parse_size(text), "round", 6, 6)


@pytest.mark.parametrize(
    ("text", "width", "height"),
    [
        ("14x8 in", 14, 8),
        ('14"x8"', 14, 8),
        ("14 X 8 in", 14, 8),
        ("14×8 in", 14, 8),
        ('14x8"', 14, 8),
        ("3-1/4x10 in", 3.25, 10),
        ("3 1/4 x 10 in", 3.25, 10),
        ("3¼x10 in", 3.25, 10),
        ("3.25x10 in", 3.25, 10),
        ("3.25 in x 10 in", 3.25, 10),
        ("254x152.4 mm", 10, 6),
        ("1 ft x 6 in", 12, 6),
        ("3'-0\" x 5'-0\"", 36, 60),
        ("3'0\" X 6'8\"", 36, 80),
        ("2′-6″ × 4′", 30, 48),
        ("3'-6 1/2\"x5'", 42.5, 60),
    ],
)
def test_rectangular_sizes(text: str, width: float, height: float) -> None:
    assert_inches(parse_size(text), "rectangular", width, height)


@pytest.mark.parametrize("text", ["12x6 in oval", '12"x6" oval', "12x6 in flat oval", "12 x 6 in Oval"])
def test_oval_sizes(text: str) -> None:
    assert_inches(parse_size(text), "oval", 12, 6)


@pytest.mark.parametrize(
    "text", ["20x25x1", "20x25x1 in", "20X25X1", '20"x25"x1"', "20 x 25 x 1 in", "20×25×1"]
)
def test_filter_sizes_are_inches_without_a_unit(text: str) -> None:
    assert_inches(parse_filter_size(text), "rectangular", 20, 25, 1)


@pytest.mark.parametrize(
    ("text", "remedy"),
    [
        ("6", "`6 in`"),
        ("Ø6", "`6 in`"),
        ("6R", "`6 in`"),
        ("10x6", "`10x6 in`"),
        ("3068", "`36x80 in`"),
        ("3' x 5\"", "`10x6 in`"),
        ("14 X 8", "`14x8 in`"),
        ("14/8", "`14x8 in`"),
        ("3-1/4x10", "`3-1/4x10 in`"),
        ('14"x8', "`10x6 in`"),
        ("12 oval", "`10x6 in`"),
        ('8" flex', "`6 in`"),
        ("4x10-6", "`10x6 in`"),
        ("14x8 o.d.", "`10x6 in`"),
        ("max 6 in", "`6 in`"),
        ("10x6x2 in", "`10x6 in`"),
        ("0 in", "`6 in`"),
        ("10x0 in", "`6 in`"),
        ("-6 in", "`6 in`"),
        ("6 cfm", "`6 in`"),
        ("", "`6 in`"),
        ("x", "`6 in`"),
        ("R6 flex 8 in", "`6 in`"),
        ("9" * 90, "one number"),
    ],
)
def test_refused_sizes_say_how_to_write_it(text: str, remedy: str) -> None:
    with pytest.raises(UnitFault) as caught:
        parse_size(text)
    assert remedy in caught.value.remedy
    assert "?" not in caught.value.problem + caught.value.remedy


@pytest.mark.parametrize("text", ["20x25", "20", "20x25x", "20x25x0 in", "", "large", "20x25x1x1 in"])
def test_refused_filter_sizes(text: str) -> None:
    with pytest.raises(UnitFault):
        parse_filter_size(text)


def test_geometry() -> None:
    assert parse_size("6 in").area == pytest.approx(pi * (6 * INCH) ** 2 / 4)
    assert parse_size("6 in").hydraulic_diameter == pytest.approx(6 * INCH)
    assert parse_size("10x6 in").area == pytest.approx(60 * INCH**2)
    assert parse_size("10x6 in").hydraulic_diameter == pytest.approx(2 * 10 * 6 / 16 * INCH)
    oval = parse_size("12x6 in oval")  # a 6 in circle and a 6x6 in square between its halves
    assert oval.area == pytest.approx((pi * 9 + 36) * INCH**2)
    assert oval.perimeter == pytest.approx((pi * 6 + 12) * INCH)
    assert parse_size("6x12 in oval").area == oval.area
    assert parse_size("6x12 in oval").perimeter == oval.perimeter


def test_equivalent_diameter_of_a_rectangle() -> None:
    # ASHRAE Handbook, Fundamentals 2021, chapter 21, table of circular equivalents: 10x6 in 8.4, 12x8 in 10.7
    assert equivalent_diameter(parse_size("10x6 in")) / INCH == pytest.approx(8.4, abs=0.05)
    assert equivalent_diameter(parse_size("12x8 in")) / INCH == pytest.approx(10.7, abs=0.05)
    assert equivalent_diameter(parse_size("6 in")) == parse_size("6 in").width


def test_equivalent_diameters_meet_where_shapes_do() -> None:
    # a flat oval as wide as high is a circle: 1.55 (pi/4)^0.625 / pi^0.25 = 1.0009
    circle = Size("oval", 0.3, 0.3)
    assert equivalent_diameter(circle) == pytest.approx(0.3, rel=2e-3)
    assert circle.hydraulic_diameter == pytest.approx(0.3)


@settings(deadline=None)
@given(st.floats(0.05, 1.0), st.floats(0.05, 1.0))
def test_friction_of_the_equivalent_round_duct_is_close(width: float, height: float) -> None:
    # equal flow and friction factor: pressure drop ~ 1/(A^2 Dh); the fitted formula keeps it within 12 %
    # up to an aspect ratio of 4
    if max(width, height) > 4 * min(width, height):
        return
    size = Size("rectangular", width, height)
    diameter = equivalent_diameter(size)
    round_ = Size("round", diameter, diameter)
    flow, roughness, kinematic_viscosity = 0.1, 9e-5, 1.5e-5

    def friction(section: Size) -> float:
        velocity = flow / section.area
        reynolds = velocity * section.hydraulic_diameter / kinematic_viscosity
        factor = fluids.friction_factor(Re=reynolds, eD=roughness / section.hydraulic_diameter)
        return float(factor * velocity**2 / section.hydraulic_diameter)

    assert friction(size) == pytest.approx(friction(round_), rel=0.12)


@pytest.mark.parametrize(
    ("text", "trade", "metric"),
    [
        ("6 in", "6 in", "152 mm"),
        ("10x6 in", "10x6 in", "254x152 mm"),
        ("12x6 in oval", "12x6 in oval", "305x152 mm oval"),
        ("3-1/4x10 in", "3.25x10 in", "82.5x254 mm"),
        ("3/8 in", "0.375 in", "9.5 mm"),
        ("150 mm", "5.906 in", "150 mm"),
    ],
)
def test_shown_sizes(text: str, trade: str, metric: str) -> None:
    assert show_size(parse_size(text)) == trade
    assert show_size(parse_size(text), "metric") == metric


def test_a_shown_filter_size_has_its_depth() -> None:
    assert show_size(parse_filter_size("20x25x1")) == "20x25x1 in"


@settings(deadline=None)
@given(st.sampled_from(["round", "rectangular", "oval"]), st.integers(1, 480), st.integers(1, 480))
def test_shown_sizes_in_eighths_of_an_inch_read_back(shape: str, width: int, height: int) -> None:
    size = parse_size(f"{width / 8} in")
    if shape != "round":
        size = Size(shape, size.width, parse_size(f"{height / 8} in").width)  # type: ignore[arg-type]
    assert parse_size(show_size(size)) == size
