"""Small results of duct systems in words for a worksheet, in trade or metric units."""

from typing import TYPE_CHECKING

from checker.units import show

if TYPE_CHECKING:
    from checker.quantities.duct_balance import Excess, Range, RoomShare
    from checker.quantities.duct_solution import Division
    from checker.quantities.fan_operation import Overrun, Stall
    from checker.quantities.solved_airflows import Moved, Reach
    from checker.quantities.solved_places import Backward, Drawn, RingShare


def air(value: float, system: str) -> str:
    """An airflow."""
    return show(value, "airflow", system)


def reach_lines(found: "Reach", system: str) -> list[str]:
    """What arrives at the outlet that is worst off."""
    less = "less than " if found.is_less else ""
    head = f"{found.outlet}, whose way takes most: {less}{air(found.reached, system)} of {air(found.wanted, system)} at best"
    return [f"{head} ({100.0 * found.low:.1f} %), {100.0 * found.high:.1f} % with all losses at worst"]


def moved_lines(found: "Moved", system: str) -> list[str]:
    """What a mover settles at."""
    if found.is_less:
        return [f"less than {air(found.low, system)}, where the stable, printed part of the curve begins"]
    worst = air(found.high, system) if found.high > 0.0 else "left of the stable, printed part of the curve"
    return [f"{air(found.low, system)} with all losses at best, {worst} with all at worst"]


def stall_lines(found: "Stall", system: str) -> list[str]:
    """Fan and ducts at the peak."""
    fan, ducts = show(found.peak, "pressure", system), show(found.taken, "pressure", system)
    return [f"at {air(found.peak_flow, system)} the fan gives {fan}, its ducts take {ducts} at best"]


def overrun_lines(found: "Overrun", system: str) -> list[str]:
    """The airflow with all losses at worst."""
    return [f"{air(found.least, system)} or more{', which dampers can hold back' if found.held_back else ''}"]


def backward_lines(found: "Backward", system: str) -> list[str]:
    """What goes backward."""
    return [f"{air(found.flow, system)} or more through {found.name}"]


def drawn_lines(found: "Drawn", system: str) -> list[str]:
    """Outdoor air at most and at least."""
    return [f"{air(found.least, system)} to {air(found.most, system)}"]


def ring_lines(found: "RingShare", system: str) -> list[str]:
    """What an outlet on a ring takes."""
    damper = "with" if found.is_damped else "without"
    return [f"{air(found.least, system)} or more of {air(found.design, system)} by design, {damper} a damper of its own"]


def excess_lines(found: "Excess", system: str) -> list[str]:
    """What a branch takes."""
    if found.has_damper:
        return [f"{air(found.design, system)} by design, with a damper"]
    return [f"{air(found.low, system)} to {air(found.high, system)} undamped, {air(found.design, system)} by design"]


def room_share_lines(found: "RoomShare", _system: str) -> list[str]:
    """Shares of airflow and load of a room."""
    loads = f"{100.0 * found.least:.1f} % to {100.0 * found.most:.1f} %"
    return [f"{found.room}: {100.0 * found.airflow:.1f} % of the air, {loads} of the load"]


def range_lines(found: "Range", system: str) -> list[str]:
    """Both ends of what a mover reaches."""
    return [f"{air(found.low, system)} to {air(found.high, system)}"]


def division_lines(found: "Division", system: str) -> list[str]:
    """Every run with its airflow at best and at worst."""
    return [f"{name}: {air(flow, system)} to {air(found.high[name], system)}" for name, flow in found.low.items()]
