"""A single-stage system is zoned, and its smallest zone cannot take a third of its air.

A single-stage unit always moves its whole airflow. When only the smallest zone calls, the surplus is forced through
a few ducts, with noise and a coil that frosts or a heat exchanger that overheats, or goes back by a bypass damper,
which makes both worse.

Use equipment that follows the load, join small zones, or enlarge the ducts of the smallest zone.
"""

from checker.case import CannotJudge, Case, Missing, gather, quantity
from checker.design.equipment import Equipment
from checker.quantities.sizing import stages_of, unit_airflow
from checker.rule import Finding, Meets, Num, Rule


def zoned(case: Case) -> list[Equipment]:
    """Equipment with two or more zones."""
    return [unit for unit in case.design.equipment.values() if len(unit.zones) > 1]


def is_single_stage(case: Case, unit: Equipment) -> bool:
    """Its capacity follows the load."""
    return stages_of(case, unit) == "single stage"


@quantity("airflow")
def smallest_zone_airflow(case: Case, unit: Equipment) -> float:
    """Airflow that the smallest zone can take."""
    zones = list(unit.zones.values())
    return float(min(gather([lambda zone=zone: float(case.get(zone, "airflow")) for zone in zones])))  # type: ignore[misc]


@quantity("share")
def smallest_share(case: Case, unit: Equipment) -> float:
    """Share of the blower's airflow that the smallest zone can take."""
    flow = unit_airflow(case, unit)
    if flow <= 0.0:
        raise CannotJudge("a blower without airflow has no zones")
    return min(1.0, smallest_zone_airflow(case, unit) / flow)


@quantity()
def has_bypass(case: Case, unit: Equipment) -> bool:
    """Whether a bypass damper is stated."""
    try:
        return bool(case.maybe(unit, "bypass_damper"))
    except Missing:
        return False


def check(unit: Equipment, share: float, zone: float, flow: float, bypass: bool, least: float) -> Meets | Finding:
    """Compare the smallest zone with its least share."""
    numbers = {"unit": Num(unit.name), "wanted": Num(least * flow, "airflow"), "bypass": Num(bypass)}
    if share >= least * (1 - 1e-9):
        return Meets(numbers)
    words = ", and the surplus goes back by a bypass damper" if bypass else ""
    return Finding(
        "the smallest zone of {unit} takes {smallest_zone_airflow}, {smallest_share} of the {unit_airflow} that its single "
        f"stage always moves{words}",
        at="zones",
        help="use equipment that follows the load, or size the smallest zone for {wanted}",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-21", name="zoned-single-stage", severity="caution", since="0.1",
    over=zoned, when=is_single_stage, needs=(smallest_share, smallest_zone_airflow, unit_airflow, has_bypass),
    limits=("smallest-zone",), check=check, nothing="no equipment has zones", answers=("H31",),
)  # fmt: skip
