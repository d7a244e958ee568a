"""An assembly holds more insulation than fits into it, or loses less than it can.

R-30 does not fit between 2x4 studs: pressed into a thinner cavity it keeps only what the depth holds. A figure
like that is a slip of the pen, or the R-value of another part of the house, and the loads come out too small.

Give the cavity what its depth holds, and put what lies across the framing under `continuous` or `layers`.
"""

from checker.case import Case, given
from checker.design.envelope import Assembly
from checker.physics.assemblies import MEMBER_DEPTH, greatest_cavity
from checker.quantities.assembly_values import kind_by_name
from checker.rule import Finding, Meets, Num, Rule


def framed(case: Case) -> list[Assembly]:
    """Framed assemblies with something between the framing; ceilings hold loose fill over the joists."""
    envelope = case.design.envelope
    return [
        each
        for each in (envelope.assemblies.values() if envelope is not None else [])
        if each.framing in MEMBER_DEPTH
        and (each.cavity is not None or f"{each.path}.cavity" in case.design.tbd)
        and (each.kind or kind_by_name(each)) != "ceiling"
    ]


def check(assembly: Assembly, cavity: float) -> Meets | Finding:
    """At most what the depth holds."""
    most = greatest_cavity(MEMBER_DEPTH[str(assembly.framing)])
    numbers = {"most": Num(most, "resistance"), "name": Num(assembly.name), "framing": Num(str(assembly.framing))}
    if cavity <= most * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{name} has {cavity} between its {framing} framing, which holds {most} at the most",
        at="cavity", help="state what the cavity holds, and the rest under `continuous`", numbers=numbers,
    )


RULE = Rule(
    code="LOAD-22", name="insulation-beyond-its-cavity", severity="caution", since="0.1",
    over=framed, needs=(given("cavity"),), cites=("insulation-per-depth",), check=check,
    nothing="no framed assembly with insulation in its cavity is described",
)  # fmt: skip
