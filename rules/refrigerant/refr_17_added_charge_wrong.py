"""The charge to be added for a long line is not what the maker's rule gives.

The factory charge covers a certain length of pipe. Beyond it each foot needs so much more; too little makes the unit
starve, too much can slug the compressor, and either costs capacity and life.

Work it out as (length less included length) times the charge per length, write it on the drawing, and have a certified
technician weigh it in.
"""

from checker.case import Case, given
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import charge_to_add, drawn_lines
from checker.rule import Finding, Meets, Rule


def maker_tells(case: Case, line: RefrigerantLine) -> bool:
    """The length that its factory charge covers is not stated."""
    return line.by_maker is not None and case.maybe(line.by_maker, "included_length") is not None


def check(line: RefrigerantLine, planned: float, wanted: float, tolerance: float) -> Meets | Finding:
    """Compare the charge to be added with the maker's rule."""
    if abs(planned - wanted) <= tolerance * (1.0 + 1e-9):
        return Meets()
    return Finding(
        f"{{added_charge}} is to be added for {line.name}, where the maker's rule gives {{charge_to_add}}",
        at="added_charge",
        help="write {charge_to_add} as the charge to be weighed in by a certified technician",
    )


RULE = Rule(
    code="REFR-17", name="added-charge-wrong", severity="caution", since="0.1",
    over=drawn_lines, when=maker_tells, needs=(given("added_charge"), charge_to_add),
    cites=("lines-by-maker",), limits=("added-charge-tolerance",), check=check,
    nothing="no refrigerant line is drawn", answers=("I20",),
)  # fmt: skip
