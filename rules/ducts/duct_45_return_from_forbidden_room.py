"""Return air is taken from a bath, toilet, kitchen, mechanical room or attic.

What is in the air of these rooms goes to the whole house: moisture and smells of a bath, grease of a kitchen,
gases of a furnace room, dust and heat of an attic. In a mechanical room the suction can also pull flue gas out of
a draft hood.

Put the return in a hall, a living room or a bedroom. A bath gets supply air only; its air leaves by the exhaust
fan and under the door. A kitchen may have a return for itself, 10 ft or more from the cooking appliances. The
2024 edition no longer names bathrooms, and sets terms for mechanical rooms.
"""

from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, path_of, quantity
from checker.quantities.burners import burners, draft
from checker.quantities.return_air import NO_OPEN_FLAME, Inlet, inlets, is_conditioned, use_of
from checker.rule import Finding, Meets, Num, Rule

WORDS = {"attic": "the attic", "mechanical": "a mechanical room", "bathroom": "a bathroom", "toilet": "a toilet room",
         "kitchen": "a kitchen"}  # fmt: skip
JUDGED_ELSEWHERE = ("closet", "crawl space", "garage")


def return_inlets(case: Case) -> list[Inlet]:
    """All places of return air."""
    return inlets(case, case.design)


@quantity()
def forbidden(case: Case, inlet: Inlet) -> str:
    """Why return air may not be taken there, in a word; "" where it may."""
    use = use_of(case, inlet)
    if use in JUDGED_ELSEWHERE:
        raise NotApplicable(f"a return from a {use} is judged by itself")
    if use not in case.limit("return-forbidden-rooms"):
        return unsealed_burner(case, inlet) if use == "mechanical" else ""
    if use == "attic" and is_conditioned(case, inlet):
        return ""
    return near_cooking(case, inlet) if use == "kitchen" else use


def unsealed_burner(case: Case, inlet: Inlet) -> str:
    """A mechanical room where the edition allows a return: only with sealed burners, and only for that room."""
    here = [burner for burner in burners(case, case.design) if burner.location == inlet.place]
    drafts = gather([lambda burner=burner: draft(case, burner) for burner in here])  # type: ignore[misc]
    if any(each not in NO_OPEN_FLAME for each in drafts):
        return "mechanical"
    raise CannotJudge("a return from a mechanical room serves that room only, with 2.5 Pa over its door at most")


def near_cooking(case: Case, inlet: Inlet) -> str:
    """A kitchen return is allowed far enough from the cooking appliances. Raises Missing for the distance."""
    if inlet.outlet is None:
        raise Missing(path_of(inlet.system, "outlets") if inlet.system is not None else inlet.path)
    distance = float(case.get(inlet.outlet, "distance_to_cooking"))
    return "" if distance >= case.limit("return-near-cooking") else "kitchen"


def check(inlet: Inlet, why: str) -> Meets | Finding:
    """No return from there."""
    numbers = {"inlet": Num(inlet.name), "where": Num(WORDS.get(why, why)), "room": Num(inlet.place or "")}
    if not why:
        return Meets(numbers)
    if why == "kitchen":
        return Finding(
            "{inlet} takes return air from {room}, less than 10 ft from the cooking appliances",
            at="distance_to_cooking",
            help="move it 10 ft or more away from the cooking appliances, or to another room",
            numbers=numbers,
        )
    return Finding(
        "{inlet} takes return air from {room}, which is {where}",
        at="room" if inlet.outlet is not None else "",
        help="move the return to a hall, living room or bedroom"
        + ("; let the air of the bath leave by its exhaust fan" if why in ("bathroom", "toilet") else ""),
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-45", name="return-from-forbidden-room", severity="correction", since="0.1",
    over=return_inlets, needs=(forbidden,), cites=("return-forbidden-rooms",), check=check,
    nothing="nothing says where return air is taken", answers=("F36",),
)  # fmt: skip
