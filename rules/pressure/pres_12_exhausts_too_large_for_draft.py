"""The two largest exhausts take out more than a burner with buoyant draft allows under ASHRAE 62.2.

A water heater with a draft hood, or a fireplace, has nothing but warm gas to keep its draft. Where the two largest
exhausts of the house take out more than 15 cfm for each 100 ft2 of floor, carbon monoxide may come down the vent.

Count the dryer: it is often the second largest. Choose smaller exhausts, bring in compensating outdoor air that runs
with them, or choose direct-vent appliances. A licensed contractor tests the draft in the worst case.
"""

from checker import each
from checker.case import Case
from checker.design import Design
from checker.quantities.burners import atmospheric_burners
from checker.quantities.spillage import Largest, fires, floor_area, two_largest, two_largest_per_floor
from checker.rule import Finding, Meets, Num, Rule


def has_buoyant_draft(case: Case, design: Design) -> bool:
    """Nothing inside the air barrier vents by buoyancy alone."""
    return bool(atmospheric_burners(case, design))


def check(_design: Design, largest: Largest, per_floor: float, burners: str, area: float, limit: float) -> Meets | Finding:
    """Compare the net flow for each area of floor with the limit."""
    numbers = {"net": Num(largest.net, "airflow"), "most": Num(limit * area, "airflow"),
               "excess": Num(largest.net - limit * area, "airflow")}  # fmt: skip
    if per_floor <= limit * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        f"with {largest.names} running, {{net}} more goes out than comes in, above {{most}} for {{floor_area}} "
        f"of floor, beside {burners}, which drafts by buoyancy alone",
        at=f"combustion.{burners.partition(', ')[0]}",
        help="bring in {excess} of outdoor air that runs with them, choose smaller exhausts, or choose direct-vent appliances; "
        "carbon monoxide can spill: a licensed contractor tests the draft in the worst case",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-12", name="exhausts-too-large-for-draft", severity="correction", since="0.1",
    over=each.design, when=has_buoyant_draft, needs=(two_largest, two_largest_per_floor, fires, floor_area),
    limits=("two-largest-exhausts",), check=check, answers=("C12",),
)  # fmt: skip
