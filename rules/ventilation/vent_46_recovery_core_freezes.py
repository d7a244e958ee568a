"""A recovery unit without frost control freezes at the winter design temperature.

A core cools the outgoing room air far down. When that air leaves below freezing with more water than it can hold,
ice grows in the core until the exhaust stops; the unit then presses cold air in unbalanced, or cracks.

Worked out from the recovery that the file states and the room air, else 70 degF and 40 %. A core that returns
moisture freezes later but does freeze. Choose a unit with recirculating defrost, or a preheater ahead of it,
rated by its maker for the winter design temperature.
"""

from checker.design.fans import Fan
from checker.quantities.air_mixing import Frost, frost, recovery_units
from checker.quantities.moist_air import has_frost, winter_design
from checker.rule import Finding, Meets, Num, Rule


def check(fan: Fan, _outdoor: float, found: Frost) -> Meets | Finding:
    """There must be frost control where the outgoing air freezes."""
    if found.outgoing is None:
        return Meets()
    numbers = {"fan": Num(fan.name), "outgoing": Num(found.outgoing, "temperature")}
    help_ = "choose a unit with frost control that its maker rates for {winter_design}"
    if found.heat is not None:
        numbers["heat"] = Num(found.heat, "power")
        help_ += ", or show a preheater of {heat} or more"
    return Finding(
        "{fan} has no frost control; at {winter_design} its outgoing air leaves at {outgoing} and freezes in the core",
        at="recovery.frost_control",
        help=help_,
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-46", name="recovery-core-freezes", severity="caution", since="0.1",
    over=recovery_units, when=has_frost, needs=(winter_design, frost),
    cites=("recovery-frost-control",), check=check, nothing="the design has no recovery unit",
)  # fmt: skip
