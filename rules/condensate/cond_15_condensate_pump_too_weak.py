"""The condensate pump cannot lift the water high enough or fast enough.

A pump's flow falls as it lifts higher, to nothing at its greatest lift. One that keeps up on a mild day may not on a humid
one. A usual margin is half as much again as the greatest condensate.

Compare the maker's curve at the real height, from the pump to the highest point of the tube.
"""

from checker.case import Case, given, quantity
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import condensate_flow, drains
from checker.rule import Finding, Meets, Rule


def lift_is_stated(case: Case, drain: CondensateDrain) -> bool:
    """No pump is drawn, or its lift is not stated."""
    pump = case.maybe(drain, "pump")
    return pump is not None and case.maybe(pump, "lift") is not None


@quantity("water_flow")
def flow_at_lift(case: Case, drain: CondensateDrain) -> float | None:
    """Flow of the pump at its lift; None where only the lift is stated."""
    stated = None if drain.pump is None else case.maybe(drain.pump, "flow_at_lift")
    return None if stated is None else float(stated)


@quantity("water_flow", "margin x greatest condensate")
def flow_wanted(case: Case, drain: CondensateDrain) -> float | None:
    """Flow that the pump needs; None where its own flow is not stated."""
    if flow_at_lift(case, drain) is None:
        return None
    return float(case.limit("condensate-pump-margin")) * condensate_flow(case, drain)


def check(
    drain: CondensateDrain, lift: float, greatest: float, flow: float | None, wanted: float | None
) -> Meets | Finding:
    """Height first, then flow at that height."""
    if lift > greatest:
        return Finding(
            f"the condensate pump of {drain.name} has to lift {{lift}}, more than its {{greatest_lift}}",
            at="pump.lift",
            help="choose a pump for {lift} or more, or end the tube lower",
        )
    if flow is not None and wanted is not None and flow < wanted * (1.0 - 1e-9):
        return Finding(
            f"the condensate pump of {drain.name} gives {{flow_at_lift}} at its lift, less than {{flow_wanted}}",
            at="pump.flow_at_lift",
            help="choose a pump that gives {flow_wanted} or more at {lift}",
        )
    return Meets()


RULE = Rule(
    code="COND-15", name="condensate-pump-too-weak", severity="caution", since="0.1",
    over=drains, when=lift_is_stated,
    needs=(given("pump.lift"), given("pump.greatest_lift"), flow_at_lift, flow_wanted),
    cites=("condensate-pump-margin",), check=check,
    nothing="no condensate drain is drawn", answers=("J14",),
)  # fmt: skip
