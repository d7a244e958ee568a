"""A window or door leaves out the figures of its label, so the loads count it with the code's default.

The code gives a product without a label a U-value and a solar heat gain coefficient on the unfavourable side. Loads come out
larger than with the product that will be bought, and equipment sized on them runs short cycles.

Put the figures of the label, or of the window schedule, in place of frame and panes.
"""

from checker.case import Case, Missing, quantity
from checker.design.envelope import Glazing, OutsideDoor
from checker.quantities.default_glass import (
    FIELDS,
    default_gain,
    default_skylight_u,
    default_window_u,
    door_u,
    lacking,
)
from checker.rule import Finding, Meets, Num, Rule

Part = Glazing | OutsideDoor


def by_kind(case: Case) -> list[Part]:
    """Kinds of window that state a frame or panes, and doors that state their kind."""
    envelope = case.design.envelope
    if envelope is None:
        return []
    windows = [each for each in envelope.glazing.values() if case.speaks_of(each, "frame") or case.speaks_of(each, "panes")]
    return [*windows, *(each for each in envelope.doors.values() if case.speaks_of(each, "kind"))]


def is_overhead(case: Case, kind: Glazing) -> bool:
    """Whether a kind of window serves for skylights only."""
    envelope = case.design.envelope
    uses = [each for each in envelope.windows.values() if each.glazing == kind.name] if envelope is not None else []
    return bool(uses) and all(each.faces == "sky" for each in uses)


@quantity()
def defaults(case: Case, part: Part) -> tuple[tuple[str, Num], ...]:
    """(field, figure) for each that the code's default stands for. Raises Missing for what is not stated either."""
    for field in ("u",) if isinstance(part, OutsideDoor) else ("u", "shgc"):
        case.maybe(part, field)
    found: list[tuple[str, Num]] = []
    for field in lacking(part):
        try:
            found.append((field, figure(case, part, field)))
        except Missing:
            if not found and field == lacking(part)[-1]:
                raise
    return tuple(found)


def figure(case: Case, part: Part, field: str) -> Num:
    """The default of one field."""
    if isinstance(part, OutsideDoor):
        return Num(door_u(case, part), "u_value")
    if field == "shgc":
        return Num(f"{default_gain(case, part):.1f}")
    return Num(default_skylight_u(case, part) if is_overhead(case, part) else default_window_u(case, part), "u_value")


def check(part: Part, found: tuple[tuple[str, Num], ...]) -> Meets | Finding:
    """A finding where a default stands for a label."""
    if not found:
        return Meets({"name": Num(part.name)})
    numbers = {"name": Num(part.name), **dict(found)}
    words = " and ".join(f"its {FIELDS[field]}" for field, _ in found)
    values = " and ".join(f"{{{field}}}" for field, _ in found)
    return Finding(
        f"{{name}} leaves out {words}: the loads count it with the code's default, {values}",
        at=found[0][0], help="state the figures of its label or of the window schedule", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="LOAD-39", name="window-counted-by-default", severity="note", since="0.1",
    over=by_kind, needs=(defaults,), cites=("default-window-u", "default-window-gain", "default-door-u"), check=check,
    nothing="no window or door is described by its frame, panes or kind alone",
)  # fmt: skip
