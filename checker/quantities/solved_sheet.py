"""A solved duct system on paper: the mover, every run and outlet with what it takes, the ways to the outlets, the dampers."""

from collections.abc import Sequence

from checker.design.airway import Airway
from checker.design.ducts import Outlet
from checker.physics.air import STANDARD_DENSITY
from checker.physics.friction import velocity_pressure
from checker.quantities.damper_balance import Balance, free_joint, outward, way_to
from checker.quantities.duct_mesh import Passage
from checker.quantities.duct_network import Answer
from checker.quantities.duct_solved import SolvedSystem
from checker.sizes import Size, show_size
from checker.units import DIMENSIONS, show, shown

COLUMNS = 102
LEAST_PRESSURE = 1e-3
"""Pa, below which a pressure is shown as none."""
COLUMN_UNITS = (("airflow", "airflow"), ("velocity", "velocity"), ("rate of friction", "friction_rate"), ("pressure", "pressure"))


def solved_lines(solved: SolvedSystem, system: str) -> list[str]:
    """The lines of a solved system in trade or metric units, none longer than a worksheet is wide."""
    network, model = solved.network, solved.network.model
    lines = [
        f"{solved.name}, ducts {solved.system}: {len(network.passages)} passages; the mover stands by {model.words}",
        "rooms, outdoors at zero pressure, dampers open; loss = rate x length + C x velocity pressure + other",
        ", ".join(f"{what} in {unit(dimension, system)}" for what, dimension in COLUMN_UNITS),
    ]
    if network.density_ratio != 1.0:
        ratio = network.density_ratio
        lines.append(f"air of {ratio:.3f} times standard density; flow x density ratio is what a loss sees in standard air")
    if network.leakage > 0.0:
        lines.append(f"duct leakage {show(network.leakage, 'leakage', system)}: none at best, all of it at the mover at worst")
    bounds = [("at best", solved.low, solved.balances[0]), ("at worst", solved.high, solved.balances[1])]
    if solved.high is not None and same(solved.low, solved.high):
        bounds = [("as drawn", solved.low, solved.balances[0])]
    for word, answer, balance in bounds:
        lines += ["", *(answer_lines(solved, word, answer, balance, system) if answer else [f"{word}: {solved.open}"])]
    return [part for line in lines for part in within(line)]


def within(line: str) -> list[str]:
    """A line in as many as it needs, the others further in."""
    if len(line) <= COLUMNS:
        return [line]
    from textwrap import wrap

    indent = " " * (len(line) - len(line.lstrip()))
    return wrap(line, COLUMNS, initial_indent=indent, subsequent_indent=indent + "    ")


def same(one: Answer, other: Answer) -> bool:
    """Whether two solutions are the same air."""
    return all(abs(flow - other.flows[key]) <= 1e-6 * abs(flow) + 1e-9 for key, flow in one.flows.items())


def answer_lines(solved: SolvedSystem, word: str, answer: Answer, balance: Balance | None, system: str) -> list[str]:
    """One solution: movers, runs, outlets, ways."""
    lines = [f"losses {word}:"]
    for each in (one for one in solved.network.passages if one.kind == "mover"):
        beyond = ", beyond its last printed point" if each.key in answer.extrapolated else ""
        flow, rise = show(answer.flows[each.key], "airflow", system), show(answer.rises[each.key], "pressure", system)
        ends = [bare(answer.pressures[joint], "pressure", system) for joint in (each.start, each.end)]
        lines.append(f"  {each.name} moves {flow} and lifts {rise}{beyond}; {ends[0]} at its inlet, {ends[1]} at its outlet")
        lines += [f"    {name} takes {show(loss, 'pressure', system)}" for name, loss in answer.losses[each.key].items()]
    for joint, leak in answer.leaks.items():
        lines.append(f"  leakage at {joint_name(solved, joint)}: {show(leak, 'airflow', system)}")
    ordered = outward(solved.network)
    ducts = [each for each in ordered if isinstance(each.thing, Airway)]
    lines += table(run_rows(solved, answer, ducts, system))
    others = [each for each in ordered if each.kind in ("outlet", "filter")]
    if others:
        lines += ["", *table(outlet_rows(solved, answer, others, balance, system))]
    return lines + way_lines(solved, answer, balance, system)


def bare(value: float, dimension: str, system: str) -> str:
    """A number without its unit, which a line above the tables tells, with digits enough to follow it by hand."""
    if dimension == "pressure" and abs(value) < LEAST_PRESSURE:
        return "0"
    return f"{shown(value, dimension, system)[0]:.4g}"


def unit(dimension: str, system: str) -> str:
    """The unit that heads a column."""
    kind = DIMENSIONS[dimension]
    return kind.trade if system == "trade" else kind.metric


def table(rows: Sequence[Sequence[str]], columns: int = COLUMNS) -> list[str]:
    """Rows in columns; where names make them too wide, each row's name takes a line of its own."""
    widths = [max(len(row[place]) for row in rows) for place in range(len(rows[0]))]
    if sum(widths) + 2 * len(widths) + 2 <= columns:
        return ["  " + "  ".join(cell.ljust(wide) for cell, wide in zip(row, widths, strict=True)).rstrip() for row in rows]
    lines = []
    rest = [max(len(row[place]) for row in rows) for place in range(2, len(rows[0]))]
    for row in rows:
        lines.append(f"  {row[0]}: {row[1]}")
        lines.append("      " + "  ".join(cell.ljust(wide) for cell, wide in zip(row[2:], rest, strict=True)).rstrip())
    return lines


def run_rows(solved: SolvedSystem, answer: Answer, ducts: list[Passage], system: str) -> list[list[str]]:
    """Head and rows of the table of runs."""
    rows = [["run", "from, to", "size", "length", "flow", "velocity", "rate", "C", "other", "loss", "end at"]]
    for each in ducts:
        duct = each.thing
        assert isinstance(duct, Airway)
        size, flow = duct.size, answer.flows[each.key]
        losses = answer.losses[each.key]
        friction = sum(loss for name, loss in losses.items() if name.startswith("friction in "))
        fittings = sum(loss for name, loss in losses.items() if name.startswith("fittings of "))
        length = (duct.length or 0.0) + (getattr(duct, "declared_equivalent_length", None) or 0.0)
        rows.append([
            each.name,
            f"{joint_name(solved, each.start)}, {joint_name(solved, each.end)}",
            "" if size is None else show_size(size, system),
            show(length, "length", system),
            bare(flow, "airflow", system),
            "" if size is None else bare(flow / size.area, "velocity", system),
            bare(friction / length, "friction_rate", system) if length > 0.0 else "",
            coefficient(fittings, flow, size, solved.network.density_ratio),
            bare(sum(losses.values()) - friction - fittings, "pressure", system),
            bare(sum(losses.values()), "pressure", system),
            bare(answer.pressures[each.end], "pressure", system),
        ])  # fmt: skip
    return rows


def coefficient(loss: float, flow: float, size: Size | None, ratio: float) -> str:
    """Loss coefficient of the fittings of a run, on its own velocity."""
    if size is None or flow == 0.0:
        return ""
    velocity = flow / size.area
    return f"{abs(loss) / velocity_pressure(velocity, STANDARD_DENSITY * ratio):.2f}"


def joint_name(solved: SolvedSystem, joint: str) -> str:
    """What a reader calls a joint."""
    return solved.joints.get(joint, joint)


def outlet_rows(
    solved: SolvedSystem, answer: Answer, others: list[Passage], balance: Balance | None, system: str
) -> list[list[str]]:
    """Head and rows of the table of outlets and filters."""
    last = "damper takes" if balance is not None else ""
    rows = [["outlet", "room", "design", "solved", "share", "loss", "joint at", last]]
    for each in others:
        design, flow = solved.designs[each.key], answer.flows[each.key]
        room = each.thing.room if isinstance(each.thing, Outlet) else None
        joint = each.start if each.kind == "filter" else free_joint(each)
        taken = balance.takes.get(each.key) if balance is not None else None
        rows.append([
            each.name,
            room or "",
            bare(design, "airflow", system) if design else "",
            bare(flow, "airflow", system) + (" backward" if flow < -1e-6 else ""),
            f"{100.0 * flow / design:.0f} %" if design else "",
            bare(sum(answer.losses[each.key].values()), "pressure", system),
            bare(answer.pressures[joint], "pressure", system),
            bare(taken, "pressure", system) if taken is not None else "",
        ])  # fmt: skip
    return rows


def way_lines(solved: SolvedSystem, answer: Answer, balance: Balance | None, system: str) -> list[str]:
    """The critical path, and what ideal dampers reach."""
    if balance is None or not balance.takes:
        return []
    terminal = next(each for each in solved.network.terminals if each.key == balance.critical)
    way = way_to(solved.network, terminal)
    steps = [f"{each.name} {show(sum(answer.losses[each.key].values()), 'pressure', system)}" for each in way]
    lines = ["", *folded("  critical path: ", steps)]
    less = "less than " if balance.is_less else ""
    lines.append(
        f"  with dampers set so that all get the same share of their design: {less}{100.0 * balance.share:.0f} % each"
    )
    if len(balance.takes) > 1 and not any(each.kind == "outlet" for each in solved.network.terminals):
        taken = [f"{each.name} {show(balance.takes[each.key], 'pressure', system)}" for each in solved.network.terminals]
        lines += folded("  dampers take: ", taken)
    return lines


def folded(head: str, steps: list[str], columns: int = COLUMNS) -> list[str]:
    """Steps joined by commas in lines that are not too long."""
    lines, line = [], head
    for place, step in enumerate(steps):
        text = step + (", " if place < len(steps) - 1 else "")
        if len(line) + len(text) > columns and line.strip() and line != head:
            lines.append(line.rstrip())
            line = " " * len(head)
        line += text
    return [*lines, line.rstrip()]
