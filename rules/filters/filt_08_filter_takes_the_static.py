"""A clean filter takes more than half of the static pressure that the blower offers.

Ducts, grilles and the filter share what the blower can push against. Small ducted units offer 0.1 to 0.2 in w.c.
in all, and a filter takes about twice its clean drop before it is changed. What a dense 1 in filter takes, the
rooms do not get. Where ducts and filter together already ask for more than the blower offers, one comment says so for
both.

The usual cause is a fine filter in a small grille. More face helps most: twice the face takes well under half the
drop. A deeper filter or a coarser one helps too, and so does a setting or unit with more static pressure.
"""


from checker import each
from checker.case import CannotJudge, Case, Missing, NotApplicable, quantity
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.fields import Area
from checker.design.filters import Filter
from checker.quantities.duct_flow import fastest
from checker.quantities.duct_graph import Mover
from checker.quantities.filter_drops import Drop, clean_drop
from checker.quantities.filters import known_face, mover_flow, movers_served
from checker.quantities.static_budget import is_in_budget_above
from checker.quantities.static_offer import Offer, offer
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule
from checker.units import show


class Load(Record):
    """A filter beside what its mover offers, and the face of each in m2 where that is known."""

    drop: Drop
    offer: Offer
    mover: str
    face: Area | None


def loaded_mover(case: Case, filter_: Filter) -> Mover:
    """The mover whose rating does not count the filter already."""
    for mover in movers_served(case, filter_):
        own = isinstance(mover, Equipment) and bool(case.maybe(mover, "internal_filter"))
        if isinstance(mover, Equipment) and not (own and mover.filter == filter_.name):
            return mover
        if isinstance(mover, Fan) and mover.role != "recovery":
            return mover
    raise NotApplicable("its drop is counted in the rating of what moves the air")


def leaves_it_to_the_budget(case: Case, filter_: Filter) -> bool:
    """The ducts and the filter together surely take more than is offered, which is judged as a whole."""
    return not is_in_budget_above(case, loaded_mover(case, filter_))


@quantity()
def load(case: Case, filter_: Filter) -> Load:
    """The filter's drop and the static pressure offered. Raises Missing, CannotJudge."""
    mover = loaded_mover(case, filter_)
    drop = clean_drop(case, filter_)
    found = offer(case, mover, fastest(case, mover.settings), mover_flow(case, mover, filter_))
    return Load(drop, found, mover.name, known_face(filter_))


def check(filter_: Filter, found: Load, share: float) -> Meets | Finding:
    """Compare the drop with the share of the offer, with what is not known on the lenient side."""
    drop, offered = found.drop, found.offer
    if drop.high <= share * offered.low * (1.0 + 1e-9):
        return Meets()
    if drop.low <= share * offered.high * (1.0 + 1e-9):
        if drop.is_scaled or not offered.ask:
            raise CannotJudge(f"too near to tell: state the drop of {filter_.name} at {show(drop.flow, 'airflow')}")
        raise Missing(offered.ask)
    budget = share * offered.high
    numbers = {
        "drop": Num(drop.nominal, "pressure"),
        "flow": Num(drop.flow, "airflow"),
        "offered": Num(offered.high, "pressure"),
        "budget": Num(budget, "pressure"),
    }
    help_text = "fit a filter that drops no more than {budget} clean at {flow}: larger, deeper or of lower MERV"
    if found.face is not None and budget > 0.0:
        needed = found.face * (drop.nominal / budget) ** (1.0 / drop.exponent)
        numbers |= {"face": Num(found.face, "small_area"), "needed": Num(needed, "small_area")}
        help_text += "; the same medium would need about {needed} of face, not {face}"
    scaled = " (carried over from another airflow)" if drop.is_scaled else ""
    return Finding(
        f"{filter_.name} takes {{drop}} clean at {{flow}}{scaled}, and {found.mover} offers {{offered}} in all",
        at="drop_clean",
        help=help_text,
        numbers=numbers,
    )


RULE = Rule(
    code="FILT-08", name="filter-takes-the-static", severity="caution", since="0.1",
    over=each.filter, when=leaves_it_to_the_budget, needs=(load,), limits=("filter-share-of-static",), check=check,
    nothing="no filter is named", answers=("G04",),
)  # fmt: skip
