"""A ducted hood or downdraft exhaust never reaches the airflow that a kitchen needs.

Where there is a ducted hood, one of its speeds has to give the kitchen rate of the local exhaust table, or it has
to run all day at the smaller rate.

The usual cause is a hood chosen by its looks, a recirculating model fitted with a duct, or a flow that was
worked out for a long thin duct. Choose a hood with a higher speed, or shorten and widen its duct. Make sure that
what the hood takes out can come back in.
"""


from checker.case import Case, Missing, path_of, quantity
from checker.design.fields import Airflow
from checker.design.hoods import Hood
from checker.quantities.exhaust_end import ducted_hoods
from checker.quantities.movers import exhaust_flow, is_continuous
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Speeds(Record):
    """Highest airflow of a hood that runs all the time, and of all its speeds, m3/s."""

    steady: Airflow
    most: Airflow


@quantity()
def speeds(case: Case, hood: Hood) -> Speeds:
    """The two airflows that count."""
    if not hood.settings:
        raise Missing(path_of(hood, "settings"))
    flows = [(exhaust_flow(case, each), is_continuous(case, each)) for each in case.get(hood, "settings").values()]
    steady = max((flow for flow, all_day in flows if all_day), default=0.0)
    return Speeds(steady, max(flow for flow, _ in flows))


def check(hood: Hood, speeds: Speeds, all_day: float, on_demand: float) -> Meets | Finding:
    """One of the two rates is enough."""
    numbers = {
        "name": Num(hood.name), "steady": Num(speeds.steady, "airflow"), "most": Num(speeds.most, "airflow"),
    }  # fmt: skip
    if speeds.steady >= all_day or speeds.most >= on_demand:
        return Meets(numbers)
    message = "{name} moves {most} at its highest speed, below {kitchen_exhaust_on_demand} on demand"
    if speeds.steady > 0:
        message += ", and {steady} all day, below {kitchen_exhaust_continuous}"
    return Finding(
        message, at="settings", help="choose a hood that moves {kitchen_exhaust_on_demand} through its duct",
        numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-05", name="hood-airflow-too-low", severity="correction", since="0.1",
    over=ducted_hoods, needs=(speeds,), limits=("kitchen-exhaust-continuous", "kitchen-exhaust-on-demand"),
    cites=("hood-rate",), check=check, nothing="the design has no ducted hood", answers=("B04",),
)  # fmt: skip
