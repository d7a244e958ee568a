"""The duct of a fan is smaller than its collar or than its maker asks for.

A supply or recovery fan is rated with a duct of its collar's size. One size less doubles or triples the friction
and throttles the fan at the first inch; makers print a least duct size for that reason.

Run the duct at the size of the collar or larger. A larger duct is always allowed.
"""

from checker.case import Case, quantity
from checker.design.airway import Airway
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_scope import one_line_ducts
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import Size, equivalent_diameter, show_size


def collared(case: Case) -> list[Airway]:
    """Ducts of supply and recovery fans whose collar or least duct the file states."""
    return [
        duct
        for duct in one_line_ducts(case)
        if duct.up.outlet_size is not None
        or f"{duct.up.path}.outlet_size" in case.design.tbd
        or (duct.up.by_maker is not None and duct.up.by_maker.least_duct is not None)
    ]


@quantity("diameter")
def least_diameter(case: Case, duct: Airway) -> float:
    """The maker's least duct; else the collar."""
    fan = duct.up
    stated = case.maybe(fan.by_maker, "least_duct") if fan.by_maker is not None else None
    return float(stated if stated is not None else case.get(fan, "outlet_size"))


@quantity()
def duct_size(case: Case, duct: Airway) -> Size:
    """Size of the duct."""
    found: Size = case.get(duct, "size")
    return found


def check(duct: Airway, size: Size, least: float) -> Meets | Finding:
    """Compare the diameter that gives equal friction."""
    by_maker = duct.up.by_maker is not None and duct.up.by_maker.least_duct is not None
    numbers = {"duct": Num(duct_label(duct)), "size": Num(show_size(size))}
    if equivalent_diameter(size) >= least * (1.0 - 1e-9):
        return Meets(numbers)
    whose = "its maker asks for {least_diameter} or more" if by_maker else "its collar is {least_diameter}"
    return Finding(
        f"{{duct}} is {{size}}; {whose}",
        at="size",
        help="make it {least_diameter} or larger all the way",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-29", name="duct-smaller-than-fan-asks", severity="caution", since="0.1",
    over=collared, needs=(duct_size, least_diameter), cites=("maker-duct-limits",), check=check,
    nothing="no supply or recovery fan with a duct states its collar or least duct",
)  # fmt: skip
