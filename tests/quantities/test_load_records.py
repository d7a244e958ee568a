"""Lines of the terms of a load, in the units of the reader."""

from checker.quantities.load_records import Factor, Term


def test_a_difference_of_temperatures_is_written_as_the_file_writes_it() -> None:
    """92 ft2 = 8.547 m2, U-0.037 = 0.2101 W/m2 K, 83 F = 46.1 K."""
    factors = (Factor(8.547, "area"), Factor(0.2101, "u_value"), Factor(83.0 / 1.8, "temperature_difference"))
    term = Term("ceiling", 82.8, factors)
    assert "92 ft2 x U-0.037 x 83.0 delta_degF = " in term.line("trade")
    assert " x 46.1 K = " in term.line("metric")
