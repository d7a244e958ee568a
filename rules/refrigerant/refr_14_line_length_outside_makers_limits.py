"""A refrigerant line is longer or shorter than the equipment's maker allows.

Long lines cost capacity and keep oil from coming back to the compressor; very short ones can make it noisy or leave
too much charge in it. The code defers to the maker's instructions.

Move the outdoor unit nearer, or choose equipment made for the distance. The length is that of the pipe as it runs, one
way, not the distance on the plan.
"""

from checker.case import Case, given, quantity
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Num, Rule


@quantity("length")
def least_length(case: Case, line: RefrigerantLine) -> float | None:
    """Least length by the maker; None where only the greatest is stated."""
    stated = None if line.by_maker is None else case.maybe(line.by_maker, "least_length")
    return None if stated is None else float(stated)


def check(line: RefrigerantLine, length: float, greatest: float, least: float | None) -> Meets | Finding:
    """Between the maker's least and greatest length."""
    if length > greatest:
        return Finding(
            f"{line.name} is {{length}} long, more than the {{greatest_length}} that its maker allows",
            at="length",
            help="shorten the line by {excess}, or choose equipment made for longer lines",
            numbers={"excess": Num(length - greatest, "length")},
        )
    if least is not None and length < least:
        return Finding(
            f"{line.name} is {{length}} long, less than the {{least_length}} that its maker asks for",
            at="length",
            help="lead the line by a longer way, {least_length} or more",
        )
    return Meets()


RULE = Rule(
    code="REFR-14", name="line-length-outside-makers-limits", severity="correction", since="0.1",
    over=drawn_lines, when=due("by_maker"), needs=(given("length"), given("by_maker.greatest_length"), least_length),
    cites=("lines-by-maker",), check=check, nothing="no refrigerant line is drawn", answers=("I20",),
)  # fmt: skip
