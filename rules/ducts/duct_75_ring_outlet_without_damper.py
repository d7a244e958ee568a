"""An outlet on a ring of ducts takes more than its share and has no balancing damper.

In a ring the air finds its own way round, and the outlets near the fan take what they like. A ring evens out the
pressure, so that small dampers do; without any the far outlets get what is left.

Put a volume damper in the run that leads to this outlet, with a handle that can be reached.
"""

from checker.quantities.solved_places import RingOutlet, RingShare, ring_outlets, ring_share
from checker.rule import Finding, Meets, Num, Rule


def check(outlet: RingOutlet, share: RingShare, tolerance: float) -> Meets | Finding:
    """Compare what the outlet takes with every damper open with its design."""
    numbers = {
        "outlet": Num(outlet.name),
        "taken": Num(share.least, "airflow"),
        "wanted": Num(share.design, "airflow"),
    }
    if share.is_damped or share.least <= share.design * (1.0 + tolerance) * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{outlet} takes {taken} or more from its ring with every damper open, against {wanted} by design",
        help="put a volume damper in the run that leads to {outlet}",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-75", name="ring-outlet-without-damper", severity="caution", since="0.1",
    over=ring_outlets, needs=(ring_share,), limits=("room-airflow-tolerance",), cites=("network-balance",),
    check=check, nothing="no ducts close a ring",
)  # fmt: skip
