"""An intake or exhaust of a ventilation fan stays open when the fan is off.

An open duct is a hole in the wall: cold air falls in, indoor air and its moisture drift out, and insects
follow. The energy chapter asks for a damper, gravity or automatic, that closes when the fan rests. That holds
for a fan that is meant to run all day too, since it will be off in a power cut or when somebody stops it.

Show the damper in the fan, in its duct or in the hood outdoors. A recovery unit needs one on either side.
"""

from checker import each
from checker.case import Case, Missing, path_of, quantity
from checker.design.airway import Airway, Run
from checker.design.fans import Fan
from checker.quantities.duct_scope import mover_or_none
from checker.quantities.whole_house import NOT_VENTILATION
from checker.rule import Finding, Meets, Num, Rule

SIDES = {"supply": ("intake",), "exhaust": ("exhaust",), "recovery": ("intake", "exhaust")}


def is_ventilator(fan: Fan) -> bool:
    """Exhaust, supply and recovery fans of rooms."""
    return (fan.role is None or fan.role in SIDES) and fan.kind not in NOT_VENTILATION


def is_no_make_up_fan(_case: Case, fan: Fan) -> bool:
    """It brings make-up air for another exhaust, whose rules ask for the damper."""
    return fan.role != "supply" or not fan.settings or not all(each.runs_with for each in fan.settings.values())


def closes(case: Case, fan: Fan, side: str) -> bool | None:
    """Whether something closes a side of a fan; None where the file does not tell."""
    duct = fan.exhaust_duct if side == "exhaust" and fan.role == "recovery" else fan.duct
    ends = {*(fan.from_ if side == "intake" else fan.to)}
    told = [case.maybe(fan, "damper")]
    for run in runs_of(case, fan):
        end = run.from_ if side == "intake" else run.to
        if end in case.design.openings or end == "outdoors":
            ends.add(end)
            told.append(closes_duct(case, run))
    if duct is not None:
        told.append(closes_duct(case, duct))
    for name in sorted(ends & {*case.design.openings}):
        kind = case.maybe(case.design.openings[name], "damper")
        told.append(None if kind is None else kind != "none")
    if any(told):
        return True
    return False if any(each is False for each in told) else None


def runs_of(case: Case, fan: Fan) -> list[Run]:
    """The runs of the duct systems that a fan moves the air of."""
    systems = [system for system in case.design.ducts.values() if mover_or_none(case, system) is fan]
    return [run for system in systems for run in system.runs.values()]


def closes_duct(case: Case, duct: Airway) -> bool | None:
    """Whether a damper stands in a duct; None where the file does not tell."""
    return True if "backdraft-damper" in duct.pieces else case.maybe(duct, "damper")


@quantity()
def open_sides(case: Case, fan: Fan) -> list[str]:
    """The sides that nothing closes. Raises Missing where the file does not tell of one."""
    found = {side: closes(case, fan, side) for side in SIDES[case.get(fan, "role")]}
    left_open = [side for side, closed in found.items() if closed is False]
    if None in found.values() and not left_open:
        raise Missing(path_of(fan, "damper"))
    return left_open


def check(fan: Fan, sides: list[str]) -> Meets | Finding:
    """No side may stay open."""
    if not sides:
        return Meets()
    return Finding(
        f"nothing closes the {{sides}} of {fan.name} when it is off",
        at="damper",
        help="show a gravity or motorized damper in the fan, its duct or its outdoor hood",
        numbers={"sides": Num(" and ".join(sides))},
    )


RULE = Rule(
    code="VENT-13", name="ventilation-stays-open-when-off", severity="correction", since="0.1",
    over=each.where(each.fan, is_ventilator), when=is_no_make_up_fan, needs=(open_sides,),
    cites=("ventilation-dampers",), check=check, nothing="the design has no ventilation fans", answers=("A11",),
)  # fmt: skip
