"""The joints of a dryer's exhaust duct are not sealed or not fastened.

Moist air and lint leak into the wall or attic at every open joint, and a joint that is only pushed together slides
apart when the dryer shakes.

The usual cause is that friction is trusted to hold. Fasten each joint, push the male end on in the direction of
the air, and seal it with mastic or listed foil tape.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import duct, duct_says, is_vented, the_duct
from checker.rule import Finding, Meets, Rule

NOTHING = ("none", "no", "unsealed", "friction fit", "loose")


@quantity()
def sealing(case: Case, dryer: Dryer) -> str:
    """How the duct's joints are sealed; "" where only how they are fastened is said."""
    airway = the_duct(case, dryer, "sealed")
    return str(case.get(airway, "sealed")) if case.speaks_of(airway, "sealed") else ""


@quantity()
def fastening(case: Case, dryer: Dryer) -> str:
    """How the duct's joints are fastened, where that is said."""
    return str(duct_says(case, dryer, "joints") or "")


def speaks_of_joints(case: Case, dryer: Dryer) -> bool:
    """The dryer has no exhaust, or the design does not go into the joints of its duct."""
    airway = duct(case, dryer)
    return (
        is_vented(case, dryer) and airway is not None
        and (case.speaks_of(airway, "sealed") or case.speaks_of(airway, "joints"))
    )  # fmt: skip


def check(_dryer: Dryer, sealed: str, joints: str) -> Meets | Finding:
    """Neither may be nothing."""
    if sealed.strip().lower() in NOTHING:
        return Finding(
            "the joints of this dryer's duct are not sealed", at="duct.sealed",
            help="seal the joints with mastic or listed foil tape",
        )  # fmt: skip
    if joints.strip().lower() in NOTHING:
        return Finding(
            "the joints of this dryer's duct are not fastened", at="duct.joints",
            help="fasten each joint with rivets or short screws",
        )  # fmt: skip
    return Meets()


RULE = Rule(
    code="DRY-08", name="dryer-duct-joints-open", severity="correction", since="0.1",
    over=each.dryer, when=speaks_of_joints, needs=(sealing, fastening), cites=("dryer-duct-joints",), check=check,
    nothing="the design has no clothes dryer", answers=("E04",),
)  # fmt: skip
