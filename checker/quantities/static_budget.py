"""Total external static pressure against what the mover offers, with the filters clean and loaded."""

from functools import partial
from math import inf

from checker.case import CannotJudge, Case, Missing, NotApplicable, quantity
from checker.design.equipment import Equipment
from checker.quantities.circuits import Circuit, at_setting, circuit_flow, circuits
from checker.quantities.duct_graph import Mover, mover_of
from checker.quantities.duct_losses import items_at_size
from checker.quantities.duct_ways import Share, valued
from checker.quantities.ring_budget import shares_of
from checker.quantities.static_offer import Offer, offer
from checker.record import Record
from checker.sizes import Size

SLACK = 1.0 + 1e-9
STOCK_INCHES = (4, 5, 6, 7, 8, 9, 10, 12, 14)
INCH = 0.0254
FILTER = "filter "


class Budget(Record):
    """Static pressure that a circuit needs at an airflow, Pa, and what its mover offers there.

    `shares` make up the lower bound, `open_shares` the upper one. `margin`: share by which the method can be off.
    """

    name: str
    airflow: float
    low: float
    high: float
    shares: tuple[Share, ...]
    open_shares: tuple[Share, ...]
    offer: Offer
    margin: float

    @property
    def is_above(self) -> bool:
        """Whether it needs more than the mover offers by more than the method can be off."""
        return self.low > self.offer.high * (1.0 + self.margin) * SLACK

    @property
    def is_below(self) -> bool:
        """Whether it surely needs no more than the mover offers."""
        return self.high <= self.offer.low * SLACK

    @property
    def largest(self) -> Share:
        """The share that surely takes most."""
        return max(self.shares, key=lambda share: share.low)

    def worksheet_lines(self, system: str) -> list[str]:
        """The budget as a table, in trade or metric units."""
        from checker.quantities.budget_sheet import budget_lines

        return budget_lines(self, system)


@quantity()
def clean_budget(case: Case, circuit: Circuit) -> Budget:
    """The budget with clean filters, decided or not. Raises Missing for what no bound replaces."""
    return budget(case, circuit, loaded=False)


@quantity()
def loaded_budget(case: Case, circuit: Circuit) -> Budget:
    """The budget with filters at the end of their life, decided or not."""
    return budget(case, circuit, loaded=True)


def budget(case: Case, circuit: Circuit, loaded: bool) -> Budget:
    """What a circuit needs and is offered."""
    if circuit.mover is None:
        assert circuit.system is not None
        mover_of(case, circuit.system)
    assert circuit.mover is not None
    absent: list[str] = []
    for route in (partial(shares_of, case, circuit, loaded), partial(offer_there, case, circuit)):
        try:
            route()
        except Missing as gap:
            absent += gap.paths
    if absent:
        raise Missing(*absent)
    flow, least, most = shares_of(case, circuit, loaded)
    offered = offer_there(case, circuit)
    low, high = sum(share.low for share in least), sum(share.high for share in most)
    margin = float(case.limit("static-margin"))
    return Budget(at_setting(circuit), flow, low, high, tuple(least), tuple(most), offered, margin)


def offer_there(case: Case, circuit: Circuit) -> Offer:
    """What the mover offers at the airflow of its circuit."""
    assert circuit.mover is not None
    return offer(case, circuit.mover, circuit.setting, circuit_flow(case, circuit))


@quantity()
def heavy_filter(case: Case, circuit: Circuit) -> Share | None:
    """The clean filter that surely takes most, where it takes more than its usual share of what is offered."""
    found = clean_budget(case, circuit)
    filters = [share for share in found.shares if share.name.startswith(FILTER)]
    largest = max(filters, key=lambda share: share.low, default=None)
    share: float = case.limit("filter-share-of-static")
    return largest if largest is not None and largest.low > share * found.offer.high * SLACK else None


def is_in_budget_above(case: Case, mover: Mover) -> bool:
    """Whether a circuit of a mover surely needs more than it is offered, all filters counted."""
    for circuit in circuits(case):
        if circuit.mover is mover and not circuit.is_bare:
            try:
                if clean_budget(case, circuit).is_above:
                    return True
            except (Missing, CannotJudge, NotApplicable):
                continue
    return False


@quantity()
def decided_clean(case: Case, circuit: Circuit) -> Budget:
    """The budget with clean filters. Raises Missing with what would decide, where the bounds leave it open."""
    return decided(clean_budget(case, circuit))


@quantity()
def decided_loaded(case: Case, circuit: Circuit) -> Budget:
    """The budget with loaded filters, where clean ones are within what is offered."""
    clean, loaded = clean_budget(case, circuit), loaded_budget(case, circuit)
    if clean.is_above:
        raise NotApplicable("it is too much with a clean filter already")
    if heavy_filter(case, circuit) is not None:
        raise NotApplicable("its clean filter alone takes too much, which is judged by itself")
    if clean.shares == loaded.shares and clean.open_shares == loaded.open_shares:
        raise NotApplicable("no filter stands in this air path")
    return decided(loaded)


def decided(found: Budget) -> Budget:
    """The budget itself where the answer is certain; else Missing with the fewest keys that would decide."""
    if found.is_above or found.is_below:
        return found
    margin = found.offer.low - found.low
    if margin < 0.0:
        if found.offer.ask and found.low > found.offer.low * (1.0 + found.margin):
            raise Missing(found.offer.ask)
        raise CannotJudge("it is closer to what the fan offers than the method can tell")
    asked: list[str] = []
    spread = sorted(found.open_shares, key=lambda share: share.low - share.high)
    left = sum(share.high for share in spread if share.high < inf) - found.low
    for share in (each for each in spread if each.ask):
        if left <= margin and share.high < inf:
            break
        asked.append(share.ask)
        if share.high < inf:
            left -= share.high - share.low
    if not asked:
        raise CannotJudge("it depends on how the fittings are made, within what is usual for them")
    raise Missing(*asked)


@quantity()
def budget_against_least(case: Case, circuit: Circuit) -> Budget:
    """The budget with clean filters, where it is surely below or not below the least static pressure of the unit."""
    assert isinstance(circuit.mover, Equipment)
    assert circuit.mover.by_maker is not None
    least = float(case.get(circuit.mover.by_maker, "least_static"))
    flow, low_shares, high_shares = shares_of(case, circuit, loaded=False)
    low, high = sum(share.low for share in low_shares), sum(share.high for share in high_shares)
    if low < least <= high * SLACK:
        asked = [share.ask for share in high_shares if share.ask and share.high > share.low]
        if asked:
            raise Missing(*asked)
        raise CannotJudge("it depends on how the fittings are made, within what is usual for them")
    offered = Offer(least, least, "at least", "")
    return Budget(circuit.name, flow, low, high, tuple(low_shares), tuple(high_shares), offered, 0.0)


@quantity()
def size_that_fits(case: Case, circuit: Circuit) -> Size | None:
    """The smallest round stock size with which a duct in one line surely fits; None where none does."""
    duct = circuit.duct
    if duct is None or duct.size is None or duct.length is None:
        return None
    found = clean_budget(case, circuit)
    own = [share.name for share in valued(items_at_size(case, duct, duct.size, duct.length), found.airflow)]
    rest = sum(share.high for share in found.open_shares if share.name not in own)
    for inches in STOCK_INCHES:
        size = Size("round", inches * INCH, inches * INCH)
        if size.area <= duct.size.area:
            continue
        needed = sum(each.high for each in valued(items_at_size(case, duct, size, duct.length), found.airflow))
        if needed + rest <= found.offer.low:
            return size
    return None
