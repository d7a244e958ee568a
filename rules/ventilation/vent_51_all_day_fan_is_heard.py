"""A fan that runs all day is loud enough that somebody will switch it off.

Whole-house ventilation works only as long as people let it run. At 1.0 sone, about the hum of a quiet refrigerator, a
fan is hardly noticed by day; at two it is what one hears when falling asleep, and the switch is found.

Where the design is to meet the ventilation standard, its own rule says this with its exceptions. Recovery units and
fans that hang away from the grille are not judged. Choose a quieter fan, or a larger one at a lower speed.
"""

from checker.case import Case, Missing, NotApplicable, given, path_of
from checker.design.fans import Fan, Setting
from checker.quantities.whole_house import running
from checker.rule import Finding, Meets, Num, Rule

AWAY = ("in-line", "remote", "recovery unit")


def heard_settings(case: Case) -> list[Setting]:
    """Settings that run all day or by a timer, of fans and hoods near people, and that say anything of their loudness."""
    found = []
    for part in running(case, case.design):
        setting, device = part.setting, part.device
        if setting is None or not (setting.sound is not None or path_of(setting, "sound") in case.design.tbd):
            continue
        if isinstance(device, Fan) and (device.role == "recovery" or device.kind in AWAY or device.duct_to_grille is not None):
            continue
        found.append(setting)
    return found


def no_standard(case: Case, _setting: Setting) -> bool:
    """The design is judged by the ventilation standard, whose own rule on loudness applies."""
    try:
        case.limit("standard-sound")
    except (Missing, NotApplicable):
        return True
    return False


def check(setting: Setting, loud: float, limit: float) -> Meets | Finding:
    """Compare with what people let run."""
    numbers = {"name": Num(setting.up.name), "setting": Num(setting.name)}
    if loud <= limit * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{name} at {setting} runs all day at {sound}, louder than the {limit} that people let run",
        at="sound",
        help="choose a fan of {limit} or less at this airflow, or hang it away from the rooms",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-51", name="all-day-fan-is-heard", severity="note", since="0.1",
    over=heard_settings, when=no_standard, needs=(given("sound"),), limits=("all-day-fan-sound",), check=check,
    nothing="no fan near people that runs all day states its loudness",
)  # fmt: skip
