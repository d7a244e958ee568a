"""An exhaust ends in the attic, the soffit, the crawl space or elsewhere than outdoors.

Moist air that is blown into an attic or soffit condenses on cold wood, which rots and grows mold; blown into a
garage or a room it is only moved. Every mechanical exhaust has to reach the outdoors by its own duct.

The usual cause is a flexible duct that was laid toward a soffit or ridge vent and stops there. Lead the duct to
a hood in the wall or a cap on the roof, made for the purpose and with a damper.
"""

from checker.case import CannotJudge, Case
from checker.design.fans import Fan
from checker.quantities.exhaust_end import End, ends, exhausts
from checker.quantities.local_exhaust import NOT_LOCAL, Exhauster
from checker.rule import Finding, Meets, Num, Rule


def local_exhausts(case: Case) -> list[Exhauster]:
    """Exhaust fans, recovery units and ducted hoods; attic and whole-house cooling fans may use the attic."""
    return [each for each in exhausts(case) if not (isinstance(each, Fan) and each.kind in NOT_LOCAL)]


def check(device: Exhauster, found: tuple[End, ...]) -> Meets | Finding:
    """Every end has to lead outdoors."""
    numbers = {"name": Num(device.name), "end": Num(", ".join(end.name for end in found))}
    wrong = next((end for end in found if not end.outdoors), None)
    if wrong is None:
        return Meets(numbers)
    if wrong.into == "equipment":
        raise CannotJudge(f"{device.name} hands its air to {wrong.name}, and nothing says where that leads it")
    numbers |= {"end": Num(wrong.name), "place": Num(wrong.into)}
    message = "{name} blows into {end}, which is not outdoors"
    if wrong.into not in (wrong.name, "indoors"):
        message = "{name} ends at {end}, in the {place}, which is not outdoors"
    return Finding(
        message, at="to" if wrong.path.startswith(device.path) else "",
        help="lead its duct to a wall hood or roof cap that opens outdoors, with a damper", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-09", name="exhaust-not-to-outdoors", severity="correction", since="0.1",
    over=local_exhausts, needs=(ends,), cites=("exhaust-to-outdoors",), check=check,
    nothing="the design has no exhaust fan, recovery unit or ducted hood", answers=("B06", "B07"),
)  # fmt: skip
