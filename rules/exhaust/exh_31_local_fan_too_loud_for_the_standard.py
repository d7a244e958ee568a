"""A fan or hood that runs on demand is louder than ASHRAE 62.2 allows.

A loud fan is switched off, and then it does nothing. The standard wants 3 sone or less at one setting at least, of
a hood at 100 cfm or more. Fans far from the grille and those that move more than 400 cfm at each setting are exempt.

The usual cause is a low-priced fan or a hood whose quiet speed moves next to nothing. Choose one that is rated
quieter at the airflow that counts, or a remote fan.
"""

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.fans import Fan
from checker.design.hoods import Hood
from checker.quantities.exhaust_end import bath_fans, ducted_hoods
from checker.quantities.local_exhaust import Exhauster
from checker.quantities.movers import exhaust_flow, is_continuous
from checker.rule import Finding, Meets, Num, Rule


def local_fans(case: Case) -> list[Exhauster]:
    """Bath fans and ducted hoods."""
    return [*bath_fans(case), *ducted_hoods(case)]


@quantity("sound", "the quietest of the settings that count")
def quietest(case: Case, device: Exhauster) -> float:
    """Loudness of the quietest setting on demand; of a hood, at 100 cfm or more."""
    if isinstance(device, Fan):
        case.get(device, "role")
    settings = [each for each in case.get(device, "settings").values() if not is_continuous(case, each)]
    if not settings:
        raise NotApplicable("it runs all day, for which the limit of whole-house fans holds")
    exempt(case, device)
    flows = {each.path: exhaust_flow(case, each) for each in settings}
    if min(flows.values()) > case.limit("local-fan-sound-exempt-flow"):
        raise NotApplicable("it moves more than 400 cfm at each setting")
    least = case.limit("kitchen-hood-on-demand-standard") if isinstance(device, Hood) else 0.0
    counted = [each for each in settings if flows[each.path] >= least]
    if not counted:
        raise NotApplicable("none of its settings reaches the airflow at which it is rated")
    stated = [case.maybe(each, "sound") for each in counted]
    known = [float(sound) for sound in stated if sound is not None]
    if not known or (min(known) > case.limit("local-fan-sound-standard") and len(known) < len(counted)):
        raise Missing(*(path_of(each, "sound") for each in counted if each.sound is None))
    return min(known)


def exempt(case: Case, device: Exhauster) -> None:
    """Raise NotApplicable for a remote fan with enough duct to its grille."""
    if isinstance(device, Fan) and device.kind in ("remote", "in-line"):
        duct = case.maybe(device, "duct_to_grille")
        if duct is None:
            raise Missing(path_of(device, "duct_to_grille"))
        if duct >= case.limit("remote-fan-duct") * (1 - 1e-9):
            raise NotApplicable("it hangs far enough from its grille")


def check(device: Exhauster, sound: float, most: float) -> Meets | Finding:
    """Compare with the standard's limit."""
    numbers = {"name": Num(device.name)}
    if sound <= most:
        return Meets(numbers)
    return Finding(
        "{name} is rated {quietest} at its quietest setting that counts, louder than {limit}",
        at="settings", help="choose one rated {limit} or less at its working airflow, or a remote fan", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-31", name="local-fan-too-loud-for-the-standard", severity="caution", since="0.1",
    over=local_fans, needs=(quietest,), limits=("local-fan-sound-standard",), check=check,
    nothing="the design has no bath fan or ducted hood", answers=("B21",),
)  # fmt: skip
