"""U-value and solar gain of windows and doors without a label: the code's defaults, which lie on the unfavourable side."""

from typing import Any

from checker.case import Case, Missing, path_of, quantity
from checker.codebook import converted
from checker.design.envelope import Glazing, OutsideDoor

TABLES = "the code's default for a product without a label"
BY_GLASS = {"single clear": "single", "single tinted": "single"}
FIELDS = {"u": "U-value", "shgc": "solar heat gain coefficient"}


def panes_of(case: Case, kind: Glazing) -> str | None:
    """Panes as stated, else by the kind of glass where a frame is stated."""
    panes, glass = case.maybe(kind, "panes"), case.maybe(kind, "glass")
    if panes is None and glass is not None and kind.frame is not None:
        return BY_GLASS.get(str(glass), "double")
    return None if panes is None else str(panes)


def row_of(panes: str) -> str:
    """Row of the tables; they know no third pane."""
    return "double" if panes == "triple" else panes


@quantity("u_value", TABLES)
def default_window_u(case: Case, kind: Glazing) -> float:
    """U-value of an upright window by frame and panes. Raises Missing for `u` where they are not stated."""
    return from_table(case, kind, "window")


@quantity("u_value", TABLES)
def default_skylight_u(case: Case, kind: Glazing) -> float:
    """U-value of a skylight by frame and panes. Raises Missing for `u` where they are not stated."""
    return from_table(case, kind, "skylight")


def from_table(case: Case, kind: Glazing, use: str) -> float:
    """A cell of the table. A skylight of glass blocks has none."""
    frame, panes = case.maybe(kind, "frame"), panes_of(case, kind)
    table: dict[str, Any] = case.limit("default-window-u")
    if panes == "glass block" and use == "window":
        return float(converted(table["glass block"], "u_value"))
    if frame is None or panes is None or panes == "glass block":
        raise Missing(path_of(kind, "u"))
    return float(converted(table[use][str(frame)][row_of(panes)], "u_value"))


@quantity("", TABLES)
def default_gain(case: Case, kind: Glazing) -> float:
    """Solar heat gain coefficient by panes, tinted or clear. Raises Missing for `shgc` where they are not stated."""
    panes, glass = panes_of(case, kind), str(case.maybe(kind, "glass") or "")
    if panes is None:
        raise Missing(path_of(kind, "shgc"))
    table: dict[str, Any] = case.limit("default-window-gain")
    if panes == "glass block":
        return float(table["glass block"])
    return float(table[row_of(panes)]["tinted" if glass.endswith("tinted") else "clear"])


def of_kind(case: Case, kind: Glazing, field: str, skylight: bool) -> float:
    """A figure of a kind of window: as stated, else the code's default. Raises Missing."""
    stated = case.maybe(kind, field)
    if stated is not None:
        return float(stated)
    if field == "shgc":
        return default_gain(case, kind)
    return default_skylight_u(case, kind) if skylight else default_window_u(case, kind)


@quantity("u_value", f"as stated; else {TABLES}")
def door_u(case: Case, door: OutsideDoor) -> float:
    """U-value of a door. Raises Missing where neither it nor its kind is stated."""
    stated, kind = case.maybe(door, "u"), case.maybe(door, "kind")
    if stated is not None:
        return float(stated)
    if kind is None:
        raise Missing(path_of(door, "u"))
    return float(converted(case.limit("default-door-u")[str(kind)], "u_value"))


def lacking(part: Glazing | OutsideDoor) -> tuple[str, ...]:
    """What of a kind of window or a door the code's default stands for, where its frame, panes or kind is stated."""
    if isinstance(part, OutsideDoor):
        return ("u",) if part.u is None and part.kind is not None else ()
    if part.frame is None and part.panes is None:
        return ()
    return tuple(field for field in FIELDS if getattr(part, field) is None)


def assumption(part: Glazing | OutsideDoor, *fields: str) -> tuple[str, ...]:
    """The same as words for the line of a load."""
    absent = [FIELDS[field] for field in lacking(part) if field in fields]
    what = f"door {part.name}" if isinstance(part, OutsideDoor) else f"windows of the kind {part.name}"
    return (f"{' and '.join(absent)} of {what} by {TABLES}",) if absent else ()
