"""The ceilings of the envelope cover less than a story of the house.

A ceiling that was left out is the commonest hole in an envelope, and the loads come out too small without anyone
noticing. The ceilings and roofs together are at least as large as the floor area over the number of stories.

Add the ceiling or roof of the room that lacks it. What lies under a heated dwelling faces `heated space`.
"""

from checker.case import Case, Missing, gather, quantity
from checker.design import Design
from checker.design.envelope import Surface
from checker.quantities.airtightness import house_of
from checker.quantities.assembly_values import surface_kind
from checker.quantities.envelope_parts import parts
from checker.rule import Finding, Meets, Num, Rule


def with_surfaces(case: Case) -> list[Design]:
    """The design, where its envelope has surfaces."""
    return [case.design] if case.design.envelope is not None and case.design.envelope.surfaces else []


@quantity("area")
def ceiling_area(case: Case, design: Design) -> float:
    """Ceilings and roofs of heated rooms. Raises Missing."""
    surfaces = [part for part in parts(case, design) if isinstance(part, Surface)]
    kinds = gather([lambda each=each: surface_kind(case, each) for each in surfaces])  # type: ignore[misc]
    overhead = [each for each, kind in zip(surfaces, kinds, strict=True) if kind in ("ceiling", "roof")]
    areas = [case.maybe(each, "net_area") if each.net_area is not None else case.maybe(each, "area") for each in overhead]
    absent = [f"{each.path}.area" for each, area in zip(overhead, areas, strict=True) if area is None]
    if absent:
        raise Missing(*absent)
    return float(sum(areas))


@quantity("area")
def story_area(case: Case, _design: Design) -> float:
    """Floor area of a story: the floor area over the stories above grade, a basement counted as one. Raises Missing."""
    house = house_of(case)
    area, stories = case.all(house, "floor_area", "stories")
    levels = max(1.0, float(stories)) + (1.0 if case.maybe(house, "foundation") == "basement" else 0.0)
    return float(area) / levels


def check(_design: Design, ceilings: float, story: float, share: float) -> Meets | Finding:
    """At least most of a story."""
    if ceilings >= share * story * (1 - 1e-9):
        return Meets()
    return Finding(
        "ceilings and roofs of the envelope are {ceiling_area}, a story of the house has {story_area}",
        at="envelope.surfaces", help="add the ceilings that were left out",
        numbers={"short": Num(story - ceilings, "area")},
    )


RULE = Rule(
    code="LOAD-25", name="ceilings-smaller-than-floors", severity="caution", since="0.1",
    over=with_surfaces, needs=(ceiling_area, story_area), limits=("ceilings-cover-floors",), check=check,
    nothing="the envelope has no surfaces",
)  # fmt: skip
