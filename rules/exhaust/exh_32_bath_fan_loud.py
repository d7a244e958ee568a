"""A bath fan is loud enough that people leave it off.

Quiet products are labeled 1.0 to 1.5 sone. A fan of 3 or 4 sone drowns conversation, so it is switched off as soon
as somebody can, and the bath stays wet.

The usual cause is the builder's least expensive fan. Choose a quiet one, or a remote fan with its noise in the
attic, and see that its duct is large enough: a throttled fan is louder than its rating.
"""

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.fans import Fan
from checker.quantities.exhaust_end import bath_fans, takes_out
from checker.rule import Finding, Meets, Num, Rule


def rated_fans(case: Case) -> list[Fan]:
    """Bath fans of which any loudness is stated or left open."""
    return [
        fan
        for fan in bath_fans(case)
        if any(each.sound is not None or path_of(each, "sound") in case.design.tbd for each in fan.settings.values())
    ]


@quantity("sound", "the loudest setting")
def loudest(case: Case, fan: Fan) -> float:
    """Loudness of the loudest setting."""
    sounds = [case.maybe(each, "sound") for each in fan.settings.values()]
    known = [float(sound) for sound in sounds if sound is not None]
    if not known:
        raise Missing(*(path_of(each, "sound") for each in fan.settings.values()))
    loudest = max(known)
    try:
        by_standard = float(case.limit("local-fan-sound-standard"))
    except (Missing, NotApplicable):
        return loudest
    if min(known) > by_standard:
        raise NotApplicable("it is louder than the ventilation standard allows, which another rule says")
    return loudest


def check(fan: Fan, loudest: float, quiet: float) -> Meets | Finding:
    """Compare with what people put up with."""
    numbers = {"name": Num(fan.name)}
    if loudest <= quiet:
        return Meets(numbers)
    return Finding(
        "{name} makes {loudest}, louder than the {limit} that people put up with",
        at="settings", help="choose a fan of {limit} or less, or hang a remote fan away from the bath", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-32", name="bath-fan-loud", severity="note", since="0.1",
    over=rated_fans, when=takes_out, needs=(loudest,), limits=("bath-fan-sound",), check=check,
    nothing="no loudness of a bath fan is stated", answers=("B34",),
)  # fmt: skip
