"""A return draws from an unconditioned crawl space.

The air of a vented crawl space is damp, cold in winter, and carries soil gas and mold. Drawn into the return it is
heated, cooled and spread over the whole house, and the suction pulls more of it out of the ground.

Connect the return to rooms. Transfer openings in the enclosure of the crawl space are another matter.
"""

from checker.case import Case
from checker.quantities.return_air import Inlet, inlets, is_conditioned, use_of
from checker.rule import Finding, Meets, Num, Rule


def return_inlets(case: Case) -> list[Inlet]:
    """All places of return air."""
    return inlets(case, case.design)


def in_crawl_space(case: Case, inlet: Inlet) -> bool:
    """It is in no crawl space."""
    return use_of(case, inlet) == "crawl space"


def check(inlet: Inlet, conditioned: bool) -> Meets | Finding:
    """Only from a conditioned one."""
    if conditioned:
        return Meets()
    return Finding(
        "{inlet} takes return air from an unconditioned crawl space",
        at="room" if inlet.outlet is not None else "",
        help="connect the return to rooms, and keep its duct sealed where it passes the crawl space",
        numbers={"inlet": Num(inlet.name)},
    )


RULE = Rule(
    code="DUCT-48", name="return-from-crawl-space", severity="correction", since="0.1",
    over=return_inlets, when=in_crawl_space, needs=(is_conditioned,), cites=("crawl-space-return",), check=check,
    nothing="nothing says where return air is taken", answers=("F37",),
)  # fmt: skip
