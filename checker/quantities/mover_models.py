"""How what moves air stands in a duct network: by its curve, or at a held airflow up to the pressure it can do.

A blower that holds its airflow does so up to its own curve, or to the greatest static pressure of its maker; asked for
more it moves less. That is drawn as a curve whose last piece is all but upright.
"""

from math import inf

from checker.case import CannotJudge, Case, Missing, path_of
from checker.design.equipment import Equipment
from checker.design.fans import Fan, Setting
from checker.design.fields import Airflow, Pressure, SmallArea
from checker.physics.fan import FanCurve
from checker.physics.losses import Fan as FanPart
from checker.physics.losses import Part, Resistance
from checker.quantities.circuits import Circuit, circuit_flow
from checker.quantities.duct_flow import fastest, mover_flow
from checker.quantities.duct_mesh import Passage
from checker.quantities.static_offer import curve_of, fan_curve, greatest_of, holds_airflow, offer
from checker.record import Record

ROUND = 0.7853981633974483
UPRIGHT = 1e-4
"""Share of the held airflow by which its upright piece leans, so that a search for the operating point settles."""
LEAST_HELD = 0.05
"""Share of the held airflow below which nobody asks what a blower at its greatest pressure moves."""


class MoverModel(Record):
    """A mover at a setting: its curve, else the airflow in m3/s that it holds up to `greatest` Pa.

    `words` says on what it rests; `outlet_area` m2 takes the velocity pressure off a curve of total pressure.
    """

    words: str
    curve: FanCurve | None
    flow: Airflow
    greatest: Pressure
    outlet_area: SmallArea | None = None

    def parts(self, density_ratio: float) -> list[Part]:
        """The fan as parts, in flows and pressures that are the real ones times the density ratio.

        Every passive loss then follows its law in standard air, and the curve scales as with the speed.
        """
        assert self.curve is not None
        found: list[Part] = [FanPart(self.curve.scaled(speed_ratio=density_ratio))]
        if self.outlet_area is not None:
            found.append(Resistance(1.0, self.outlet_area))
        return found


def mover_model(case: Case, circuit: Circuit, passage: Passage) -> MoverModel:
    """A mover of a network. Raises Missing where neither curve nor rating is stated."""
    mover = passage.thing
    if not isinstance(mover, Fan | Equipment):
        raise CannotJudge(f"{passage.name} has no fan curve")
    if mover is circuit.mover:
        setting, flow = circuit.setting, circuit_flow(case, circuit)
    else:
        setting = fastest(case, mover.settings)
        flow = mover_flow(case, setting, mover)
    curve = curve_of(mover, setting)
    if holds_airflow(mover):
        return holding(case, mover, None if curve is None else fan_curve(case, curve), setting, flow)
    if curve is None:
        return held(case, mover, setting, flow, "one rated point, taken as held up to its pressure")
    drawn, area = fan_curve(case, curve), None
    if drawn.basis == "total":
        if isinstance(mover, Equipment):
            raise CannotJudge(f"the curve of {mover.name} is one of total pressure, its outlet is not known")
        area = ROUND * float(case.get(mover, "outlet_size")) ** 2
    return MoverModel(f"its curve of {drawn.basis} pressure", drawn, flow, inf, area)


def held(case: Case, mover: Fan | Equipment, setting: Setting | None, flow: float, words: str) -> MoverModel:
    """A mover at an airflow that it holds against what it offers there."""
    if flow <= 0.0:
        raise CannotJudge(f"{mover.name} moves no air at the setting that is judged")
    offered = offer(case, mover, setting, flow)
    if offered.low <= 0.0 < offered.high:
        raise Missing(offered.ask or path_of(mover, "curves"))
    return MoverModel(words, None, flow, offered.low)


def holding(
    case: Case, mover: Fan | Equipment, drawn: FanCurve | None, setting: Setting | None, flow: float
) -> MoverModel:
    """A blower that holds its airflow up to its curve of static pressure or its maker's greatest, and moves less beyond.

    Where neither is stated it holds against what it is rated for, and nothing tells what comes beyond.
    """
    words = "a blower that holds its airflow"
    greatest = greatest_of(mover)
    if flow <= 0.0 or (drawn is None and greatest is None):
        return held(case, mover, setting, flow, words)
    if drawn is None:
        assert greatest is not None
        points = [(LEAST_HELD * flow, greatest), (flow, greatest)]
        words += " up to its greatest static pressure"
    else:
        if drawn.basis == "total":
            raise CannotJudge(f"{mover.name} holds its airflow, and its curve is one of total pressure")
        if flow >= drawn.free_flow:
            return MoverModel(f"{words}, more than its curve gives", drawn, flow, inf)
        if flow <= drawn.lowest_stable_flow:
            return MoverModel(f"{words} up to where its curve begins", None, flow, drawn.pressure(drawn.lowest_stable_flow))
        points = [each for each in zip(drawn.flows, drawn.pressures, strict=True) if each[0] < flow]
        points.append((flow, drawn.pressure(flow)))
        words += " up to its curve and follows that beyond"
    return MoverModel(words, FanCurve([*points, (flow * (1.0 + UPRIGHT), 0.0)], "static"), flow, inf)
