"""A whole-house flow measured on site is well below the designed one.

A duct crushed behind a wallboard, a screen full of lint or a damper that sticks takes half of a small fan's
flow. The measured figure is the one that the house gets, and the one that the inspector reads.

Find what holds the air back before raising the speed. A difference within 15 cfm or 15 %, whichever is more,
is let pass, as a national program for new homes does.
"""


from checker.case import Case, Missing, quantity
from checker.design.fans import Setting
from checker.design.fields import Airflow
from checker.quantities.ventilation import SLACK
from checker.quantities.whole_house import whole_house
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

FIELDS = ("airflow", "supply_airflow", "exhaust_airflow")


class Pair(Record):
    """A flow as designed and as measured, m3/s."""

    designed: Airflow
    measured: Airflow
    field: str


def measured_settings(case: Case) -> list[Setting]:
    """Settings that ventilate the house and are, or are due to be, measured."""
    built = case.design.project is not None and case.design.project.stage == "as-built"
    settings = [part.setting for part in whole_house(case, case.design) if part.setting is not None]
    return [setting for setting in settings if built or setting.measured is not None]


@quantity()
def worst_pair(case: Case, setting: Setting) -> Pair:
    """The flow that falls short most. Raises Missing where nothing was measured."""
    pairs = []
    if setting.measured is not None:
        for field in FIELDS:
            measured = case.maybe(setting.measured, field)
            if measured is not None:
                designed = case.maybe(setting, field)
                pairs.append(Pair(float(case.get(setting, "airflow") if designed is None else designed), measured, field))
    if not pairs:
        raise Missing(f"{setting.path}.measured.airflow")
    return max(pairs, key=lambda pair: pair.designed - pair.measured)


def check(setting: Setting, pair: Pair, share: float, flow: float) -> Meets | Finding:
    """The shortfall against what is let pass."""
    let_pass = max(share * pair.designed, flow)
    numbers = {
        "designed": Num(pair.designed, "airflow"),
        "measured": Num(pair.measured, "airflow"),
        "least": Num(max(0.0, pair.designed - let_pass), "airflow"),
    }
    if pair.designed - pair.measured <= let_pass * (1 + SLACK):
        return Meets(numbers)
    return Finding(
        f"{setting.up.name} at {setting.name} moves {{measured}} as measured, {{designed}} as designed",
        at=f"measured.{pair.field}",
        help="find what holds the air back and measure again; at least {least} is let pass",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-34", name="measured-flow-below-design", severity="caution", since="0.1",
    over=measured_settings, needs=(worst_pair,), limits=("measured-shortfall-share", "measured-shortfall-flow"),
    check=check, nothing="no whole-house flow has been measured yet",
)  # fmt: skip
