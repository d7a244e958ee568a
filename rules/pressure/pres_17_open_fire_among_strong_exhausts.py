"""The two largest exhausts take out more than an open fire keeps its draft against.

A fireplace or a stove that draws room air has little draft while the fire is small and when it dies down. That is when
it gives off most carbon monoxide, and when people sleep. Strong exhausts then draw the smoke into the room.

The figure is that of ASHRAE 62.2, applied to open fires by new-homes programs. It stands in where the pressure of the
house cannot be worked out because its airtightness is not known. Bring in outdoor air that runs with the
exhausts, choose smaller ones, or choose a fireplace or stove with its own outdoor air and a tight door. A licensed
contractor or chimney specialist judges the draft.
"""

from checker import each
from checker.case import CannotJudge, Case, Missing
from checker.design import Design
from checker.quantities.spillage import (
    Largest,
    floor_area,
    open_fires,
    spillage,
    two_largest,
    two_largest_per_floor,
)
from checker.quantities.spillage import names_of_open_fires as fires
from checker.rule import Finding, Meets, Num, Rule


def has_open_fire(case: Case, design: Design) -> bool:
    """No open fire draws room air, or its draft is judged by the pressure of the house or by ASHRAE 62.2."""
    if design.project is not None and design.project.ventilation_standard is not None:
        return False
    return bool(open_fires(case, design)) and not is_worked_out(case, design)


def is_worked_out(case: Case, design: Design) -> bool:
    """Whether the pressure of the house in the worst case is known."""
    try:
        spillage(case, design)
    except (Missing, CannotJudge):
        return False
    return True


def check(_design: Design, largest: Largest, per_floor: float, burners: str, area: float, limit: float) -> Meets | Finding:
    """Compare the net flow for each area of floor with the limit."""
    numbers = {"net": Num(largest.net, "airflow"), "most": Num(limit * area, "airflow"),
               "excess": Num(largest.net - limit * area, "airflow")}  # fmt: skip
    if per_floor <= limit * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        f"with {largest.names} running, {{net}} more goes out than comes in, above {{most}} for {{floor_area}} "
        f"of floor, beside {burners}, an open fire that draws room air",
        at=f"combustion.{burners.partition(', ')[0]}",
        help="bring in {excess} of outdoor air that runs with them, choose smaller exhausts, or choose one with its own "
        "outdoor air; carbon monoxide can spill: a licensed contractor tests the draft in the worst case",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-17", name="open-fire-among-strong-exhausts", severity="caution", since="0.1",
    over=each.design, when=has_open_fire, needs=(two_largest, two_largest_per_floor, fires, floor_area),
    limits=("two-largest-exhausts-open-fire",), check=check, answers=("C12",),
)  # fmt: skip
