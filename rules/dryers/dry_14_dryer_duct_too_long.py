"""A dryer's exhaust duct with its elbows is longer than allowed.

In a long duct the air is slow and the lint settles. The dryer runs twice as long, its heater runs hot, and the
lint is fuel.

The usual cause is a laundry in the middle of the house, with four tight elbows that count 5 ft each. Move the
dryer to an outer wall, use smooth elbows of large radius, look into the dryer's instructions, which may allow
more, or plan a power ventilator that is listed for dryers. From a gas dryer the exhaust carries carbon monoxide:
let a qualified person change it.
"""

from checker import each
from checker.case import Missing
from checker.design.hoods import Dryer
from checker.physics.distances import ROUNDING
from checker.quantities.dryer_duct import greatest_by_maker, is_vented, length_with_fittings
from checker.quantities.places import Span
from checker.rule import Finding, Meets, Num, Rule


def check(_dryer: Dryer, length: Span, by_maker: float | None, by_code: float) -> Meets | Finding:
    """Compare with the instructions' length where there is one, else with the code's."""
    most = by_code if by_maker is None else by_maker
    if length.high <= most + ROUNDING:
        return Meets({"length": Num(length.high, "length")})
    if length.low <= most + ROUNDING:
        raise Missing(*length.missing)
    least = "" if length.known else "at least "
    whose = "" if by_maker is None else " by its instructions"
    return Finding(
        f"this dryer's duct counts {least}{{length}} with its fittings, more than the {{most}} allowed{whose}",
        at="duct.length",
        help="shorten the way by {over}, use elbows of larger radius, or plan a listed power ventilator",
        numbers={
            "length": Num(length.low, "length"),
            "most": Num(most, "length"),
            "over": Num(length.low - most, "length"),
        },
    )


RULE = Rule(
    code="DRY-14", name="dryer-duct-too-long", severity="correction", since="0.1",
    over=each.dryer, when=is_vented, needs=(length_with_fittings, greatest_by_maker), limits=("dryer-duct-length",),
    cites=("dryer-fitting-allowances", "dryer-duct-length-by-maker"), check=check,
    nothing="the design has no clothes dryer", answers=("E07", "E08", "E09", "E10", "E11", "E12"),
)  # fmt: skip
