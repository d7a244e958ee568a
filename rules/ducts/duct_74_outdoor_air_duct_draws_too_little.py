"""An outdoor-air duct on a return draws much less outdoor air than the design says.

Such a duct has no fan of its own. All that draws air through it is the suction in the return duct, and that is
often only a few hundredths of an inch of water: a wide return with a big clean grille gives the outdoor duct next
to nothing to work with.

Bring the outdoor duct in near the unit, after the filter grille, where suction is greatest; make it one size
larger, with fewer elbows; or give it a fan of its own.
"""

from checker.case import CannotJudge
from checker.quantities.solved_airflows import DEPENDS
from checker.quantities.solved_places import (
    Drawn,
    OutdoorAir,
    drawn_outdoor_air,
    outdoor_air_ducts,
    outdoor_airflow,
)
from checker.rule import Finding, Meets, Num, Rule


def check(of: OutdoorAir, drawn: Drawn, airflow: float, limit: float) -> Meets | Finding:
    """Compare the most that it can draw with the least share of the design."""
    least = limit * airflow * (1.0 - 1e-9)
    numbers = {"unit": Num(of.name), "drawn": Num(drawn.most, "airflow"), "wanted": Num(airflow, "airflow")}
    if drawn.most < least:
        return Finding(
            "the outdoor-air duct of {unit} draws {drawn} at most by the suction of its return; {wanted} is designed",
            at="airflow",
            help="make the outdoor-air duct larger, join it nearer the unit, or give it a fan of its own",
            numbers=numbers,
        )
    if drawn.least < least:
        raise CannotJudge(DEPENDS)
    return Meets(numbers)


RULE = Rule(
    code="DUCT-74", name="outdoor-air-duct-draws-too-little", severity="caution", since="0.1",
    over=outdoor_air_ducts, needs=(drawn_outdoor_air, outdoor_airflow), limits=("outdoor-air-shortage",),
    cites=("network-balance",), check=check,
    nothing="no unit draws outdoor air through a duct run without a fan",
)  # fmt: skip
