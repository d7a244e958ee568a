"""The climate zone of the energy code, taken apart."""

from checker.case import CannotJudge, Case, quantity
from checker.quantities.ventilation_standard import site_of


@quantity()
def zone(case: Case, _node: object) -> str:
    """Climate zone as number and moisture letter, for example `6A`. CannotJudge for other words."""
    text = str(case.get(site_of(case), "climate_zone")).upper()
    word = text.removeprefix("CLIMATE").strip().removeprefix("ZONE").strip().replace(" ", "")
    if not word[:1].isdecimal() or word[1:] not in ("", "A", "B", "C", "MARINE") or not 0 <= int(word[0]) <= 8:
        raise CannotJudge(f"`{text}` is not a climate zone from 0 to 8 with its moisture letter")
    return word[0] + word[1:2].replace("M", "C")


@quantity()
def zone_number(case: Case, node: object) -> int:
    """Number of the climate zone."""
    return int(zone(case, node)[0])


def is_warm_and_humid(case: Case, node: object) -> bool:
    """Whether the site states one of the humid zones from 0A to 3A."""
    return case.maybe(site_of(case), "climate_zone") is not None and zone(case, node) in ("0A", "1A", "2A", "3A")


def is_marine(case: Case, node: object) -> bool:
    """Whether the site states a marine climate zone; without its moisture letter it counts as not marine."""
    return case.maybe(site_of(case), "climate_zone") is not None and zone(case, node)[1:] == "C"
