"""A passive make-up opening is too small to pass the air that must come in.

Air comes through a passive opening only as fast as the house is drawn down. A duct that would need 40 Pa to pass the
hood's flow is make-up air on paper only. The pressure allowed here is what the most sensitive burner bears, or, without
one, the pressure at which hoods are rated.

Enlarge the opening or duct, or show a make-up fan. Screens and louvers take away a part of the face: state free area.
"""

from checker.quantities.make_up_air import SLACK, Exhauster
from checker.quantities.make_up_capacity import (
    Capacity,
    area_that_fits,
    capacity,
    duct_that_fits,
    face_that_fits,
    wanted_flow,
    with_opening,
)
from checker.rule import Finding, Meets, Num, Rule


def check(
    device: Exhauster, passes: Capacity, wanted: float, duct: float | None, _area: float, _face: float, share: float, _low: float,
) -> Meets | Finding:
    """Compare what the opening passes with the make-up air that must come in."""
    numbers = {
        "passes": Num(passes.flow, "airflow"),
        "allowed": Num(passes.pressure, "house_pressure"),
    }
    if passes.flow >= share * wanted * (1 - SLACK):
        return Meets(numbers)
    if duct is not None:
        numbers["duct"] = Num(duct, "diameter")
    sized = "a duct of {duct} by the same way" if duct is not None else "no longer duct than needed"
    return Finding(
        f"the make-up opening of {device.name} passes {{passes}} at {{allowed}}, and {{wanted_flow}} must come in",
        at="make_up_air" if device.make_up_air is not None else "",
        help=f"show about {{area_that_fits}} of free area in hood, damper and screen (a metal louver of {{face_that_fits}}) "
        f"with {sized}, or a make-up fan that runs with the exhaust",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-21", name="make-up-opening-too-small", severity="caution", since="0.1",
    over=with_opening, needs=(capacity, wanted_flow, duct_that_fits, area_that_fits, face_that_fits),
    limits=("make-up-air-share", "house-drawn-down"), cites=("metal-louver-free-share",), check=check,
    nothing="no required make-up air comes by an opening of known size", answers=("C03",),
)  # fmt: skip
