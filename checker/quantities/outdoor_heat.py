"""Heat outside the house: the systems by kind, and what turns them off."""


from checker.case import Case, Missing, path_of, quantity
from checker.design.fields import Choice, Temperature, fold
from checker.design.outdoor_heat import OutdoorHeat, OutdoorHeatKind
from checker.design.shape import shape_of
from checker.record import Record

CLOSE = 1e-9


def kind_of(node: OutdoorHeat) -> str | None:
    """Kind of a system: as said, else by its name, as `snow-melt` or `gutter-deicing`."""
    kind = shape_of(OutdoorHeatKind).kind
    assert isinstance(kind, Choice)
    return node.kind or kind.spellings.get(fold(str(node.name)))


def of_kind(case: Case, kind: str) -> list[OutdoorHeat]:
    """The systems of one kind."""
    return [node for node in case.design.outdoor_heat.values() if kind_of(node) == kind]


class ShutOff(Record):
    """What turns a system off when it is warm out: by hand, or by itself above a temperature (None: nothing does)."""

    by_hand: bool
    above: Temperature | None

    def is_by(self, warmest: float) -> bool:
        """Whether it goes off by itself at this outdoor temperature at the latest."""
        return self.above is not None and self.above <= warmest * (1 + CLOSE)


@quantity()
def shut_off(case: Case, node: OutdoorHeat) -> ShutOff:
    """How a system goes off when it is warm out. Raises Missing."""
    by = case.get(node, "shutoff")
    if by != "automatic":
        return ShutOff(by == "manual", None)
    return ShutOff(False, float(case.get(node, "off_above")))


class Pavement(Record):
    """Pavement temperature above which a system goes off by itself (None: none), and whether it waits for snowfall."""

    above: Temperature | None
    senses_snow: bool


@quantity()
def pavement(case: Case, node: OutdoorHeat) -> Pavement:
    """What a snow-melting system senses. Raises Missing with all that is not said."""
    if case.maybe(node, "pavement_sensor") is False:
        return Pavement(None, bool(case.maybe(node, "precipitation_sensor")))
    above, senses = case.all(node, "off_above_pavement", "precipitation_sensor")
    return Pavement(float(above), bool(senses))


@quantity()
def rests_when_dry_or_dark(case: Case, node: OutdoorHeat) -> bool:
    """Whether deicing goes off by itself while nothing is wet, or at night. Not asked where mild weather decides."""
    if not shut_off(case, node).is_by(float(case.limit("deicing-off"))):
        return False
    known = {field: case.maybe(node, field) for field in ("moisture_sensor", "daylight_control")}
    if True in known.values():
        return True
    absent = [path_of(node, field) for field, value in known.items() if value is None]
    if absent:
        raise Missing(*absent)
    return False


@quantity()
def shut_off_in_mild_weather(case: Case, node: OutdoorHeat) -> ShutOff | None:
    """What turns snow melting off when it is mild out; not asked (None) where its pavement control decides already."""
    ground = pavement(case, node)
    if ground.above is None or ground.above > case.limit("snow-melt-pavement") * (1 + CLOSE) or not ground.senses_snow:
        return None
    return shut_off(case, node)


class Turned(Record):
    """How an outdoor heater heats, and what turns it off when nobody is there."""

    radiant: bool
    off_alone: str


@quantity()
def outdoor_heater(case: Case, node: OutdoorHeat) -> Turned:
    """How an outdoor heater works. Raises Missing with all that is not said."""
    radiant, off = case.all(node, "radiant", "off_alone")
    return Turned(bool(radiant), str(off or "none"))


@quantity()
def tracing_off(case: Case, node: OutdoorHeat) -> ShutOff | None:
    """What turns heat tracing off when it is warm out; None where it senses that its fluid cannot freeze."""
    senses = case.maybe(node, "senses_fluid")
    if senses:
        return None
    off = shut_off(case, node)
    if senses is None and not off.is_by(float(case.limit("tracing-off"))):
        raise Missing(path_of(node, "senses_fluid"))
    return off
