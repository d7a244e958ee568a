"""The house has more glass than simple load factors cover.

Tables of load factors were made for houses with usual windows. Beyond three tenths of the floor area, or with a glass
wall to one side, the peak comes at another hour and rooms swing further than the tables know: the real peak may be
half as high again.

Have the cooling load of such a house worked out hour by hour, and look at outside shade and glass with less gain.
"""

from checker.case import Case, quantity
from checker.design import Design
from checker.physics.cooling_load import GlassShare, glass_share
from checker.quantities.airtightness import house_of
from checker.quantities.envelope_parts import glass_by_facade
from checker.rule import Finding, Meets, Num, Rule


def with_envelope(case: Case) -> list[Design]:
    """The design, where it has an envelope."""
    return [] if case.design.envelope is None else [case.design]


@quantity()
def glass(case: Case, design: Design) -> GlassShare:
    """Windows over floor area. Raises Missing."""
    area = float(case.get(house_of(case), "floor_area"))
    return glass_share(glass_by_facade(case, design), area)


def check(_design: Design, share: GlassShare, most: float, most_of_facade: float) -> Meets | Finding:
    """In all, and on the facade with the most."""
    numbers = {"total": Num(share.total, "share"), "facade": Num(share.facade, "share"), "faces": Num(share.faces)}
    if share.total > most * (1 + 1e-9):
        return Finding(
            "windows are {total} of the floor area; load factors hold to {glass_of_a_house}", at="envelope.windows",
            help="have the cooling load worked out hour by hour, room by room", numbers=numbers,
        )  # fmt: skip
    if share.facade > most_of_facade * (1 + 1e-9):
        return Finding(
            "windows facing {faces} are {facade} of the floor area; load factors hold to {glass_of_a_facade} on a side",
            at="envelope.windows", help="have the cooling load worked out hour by hour, room by room", numbers=numbers,
        )  # fmt: skip
    return Meets(numbers)


RULE = Rule(
    code="LOAD-21", name="glass-beyond-load-factors", severity="caution", since="0.1",
    over=with_envelope, needs=(glass,), limits=("glass-of-a-house", "glass-of-a-facade"), check=check,
    nothing="the design has no envelope",
)  # fmt: skip
