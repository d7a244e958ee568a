"""A dryer duct of another size than 4 in round resists more than the longest 4 in duct would.

The code's length is meant for 4 in pipe. A flat or narrow duct of the same length holds the air back far more, so
that the dryer dries slowly and the lint stays in the duct.

The usual cause is an oval or rectangular stack chosen to fit a thin wall. Shorten it, or use round pipe. The
friction is worked out at the dryer's rated airflow, with the fittings at their lengths for 4 in pipe.
"""

from checker import each
from checker.case import Case, Missing, quantity
from checker.design.hoods import Dryer
from checker.physics.friction import ROUGHNESS_BY_MATERIAL, friction_per_meter
from checker.quantities.dryer_duct import duct, is_ductless, length_with_fittings, the_duct
from checker.quantities.places import Span
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import Size, equivalent_diameter

NEAR = 1e-4
STEEL = ROUGHNESS_BY_MATERIAL["galvanized steel"].value
RIBBED = ROUGHNESS_BY_MATERIAL["metallic corrugated flexible"].value
FLEXIBLE = ("flexible", "semi-rigid aluminum")


@quantity("airflow")
def rated_airflow(case: Case, dryer: Dryer) -> float:
    """Rated exhaust airflow of the dryer."""
    return float(case.get(dryer, "airflow"))


@quantity("friction_rate", "Darcy-Weisbach with the Colebrook factor", "ASHRAE Handbook - Fundamentals 2021, ch. 21")
def own_friction(case: Case, dryer: Dryer) -> float:
    """Friction in the dryer's own duct at the rated airflow, Pa/m."""
    airway = the_duct(case, dryer, "size")
    size: Size = case.get(airway, "size")
    roughness = RIBBED if airway.material in FLEXIBLE else STEEL
    return friction_per_meter(rated_airflow(case, dryer), equivalent_diameter(size), roughness)


@quantity("friction_rate", "Darcy-Weisbach with the Colebrook factor", "ASHRAE Handbook - Fundamentals 2021, ch. 21")
def usual_friction(case: Case, dryer: Dryer) -> float:
    """Friction in 4 in smooth metal at the rated airflow, Pa/m."""
    return friction_per_meter(rated_airflow(case, dryer), float(case.limit("dryer-duct-diameter")), STEEL)


def of_other_size(case: Case, dryer: Dryer) -> bool:
    """The duct is 4 in round, where its length is what counts, or the dryer's airflow is not told."""
    airway = duct(case, dryer)
    if is_ductless(dryer) or airway is None or not case.speaks_of(dryer, "airflow"):
        return False
    size: Size | None = case.maybe(airway, "size")
    return size is not None and (size.shape != "round" or abs(size.width - case.limit("dryer-duct-diameter")) > NEAR)


def check(
    _dryer: Dryer, length: Span, own: float, usual: float, longest: float, _diameter: float
) -> Meets | Finding:
    """Compare the whole loss with that of the longest 4 in duct."""
    allowed = usual * longest
    if own * length.high <= allowed * (1.0 + 1e-9):
        return Meets({"loss": Num(own * length.high, "pressure"), "allowed": Num(allowed, "pressure")})
    if own * length.low <= allowed * (1.0 + 1e-9):
        raise Missing(*length.missing)
    return Finding(
        "this dryer's duct takes {loss} at its rated airflow, more than the {allowed} of {dryer_duct_length} of "
        "{dryer_duct_diameter} duct",
        at="duct.size", help="use round duct of {dryer_duct_diameter}, or shorten this one to {longest_here} with fittings",
        numbers={
            "loss": Num(own * length.low, "pressure"),
            "allowed": Num(allowed, "pressure"),
            "longest_here": Num(allowed / own, "length"),
        },
    )  # fmt: skip


RULE = Rule(
    code="DRY-27", name="dryer-duct-resists-too-much", severity="caution", since="0.1",
    over=each.dryer, when=of_other_size, needs=(length_with_fittings, own_friction, usual_friction),
    limits=("dryer-duct-length", "dryer-duct-diameter"), cites=("dryer-duct-friction",), check=check,
    nothing="the design has no clothes dryer",
)  # fmt: skip
