"""How what moves air stands in a duct network: by its curve, or at a held airflow up to the pressure it can do."""

from math import inf
from typing import NamedTuple

from checker.case import CannotJudge, Case, Missing, path_of
from checker.design.equipment import Equipment
from checker.design.fans import Fan, Setting
from checker.design.fields import fold
from checker.physics.fan import FanCurve
from checker.physics.losses import Fan as FanPart
from checker.physics.losses import Part, Resistance
from checker.quantities.circuits import Circuit, circuit_flow
from checker.quantities.duct_flow import fastest, mover_flow
from checker.quantities.duct_graph import Mover
from checker.quantities.duct_mesh import Passage
from checker.quantities.static_offer import curve_of, fan_curve, offer

ROUND = 0.7853981633974483
CONSTANT_WORDS = ("constant airflow", "constant air flow", "constant flow", "constant volume", "constant cfm")


class MoverModel(NamedTuple):
    """A mover at a setting: its curve, else the airflow in m3/s that it holds up to `greatest` Pa.

    `words` says on what it rests; `outlet_area` m2 takes the velocity pressure off a curve of total pressure.
    """

    words: str
    curve: FanCurve | None
    flow: float
    greatest: float
    outlet_area: float | None = None

    def parts(self, density_ratio: float) -> list[Part]:
        """The fan as parts, in flows and pressures that are the real ones times the density ratio.

        Every passive loss then follows its law in standard air, and the curve scales as with the speed.
        """
        assert self.curve is not None
        found: list[Part] = [FanPart(self.curve.scaled(speed_ratio=density_ratio))]
        if self.outlet_area is not None:
            found.append(Resistance(1.0, self.outlet_area))
        return found


def holds_airflow(mover: Mover) -> bool:
    """Whether the file calls the motor one that holds its airflow."""
    motor = getattr(mover, "motor", None)
    return motor is not None and any(word in fold(motor).replace("-", " ") for word in CONSTANT_WORDS)


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
    if holds_airflow(mover):
        return held(case, mover, setting, flow, "a blower that holds its airflow")
    curve = curve_of(mover, setting)
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
    greatest = mover.by_maker.greatest_static if mover.by_maker is not None else None
    if holds_airflow(mover) and greatest is not None:
        return MoverModel(words, None, flow, float(greatest))
    offered = offer(case, mover, setting, flow)
    if offered.low <= 0.0 < offered.high:
        raise Missing(offered.ask or path_of(mover, "curves"))
    return MoverModel(words, None, flow, offered.low)
