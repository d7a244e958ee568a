"""How people reach the whole-house ventilation: overrides, labels, and the tests that are planned for it."""


from checker.case import Case, Missing, path_of, quantity
from checker.design.controls import ControlPoint
from checker.design.fans import Control
from checker.design.fields import fold
from checker.quantities.movers import Device
from checker.quantities.whole_house import needed
from checker.record import Record

BY_HAND = ("switch", "wall control")
LIVED = ("hall", "living", "dining", "kitchen", "bedroom", "office", "bathroom", "laundry", "stair")
UNLABELLED = ("none", "no", "")


class Told(Record):
    """What the controls say of one thing: whether it is so, and where."""

    so: bool
    path: str


def is_named(point: ControlPoint, devices: list[Device]) -> bool:
    """Whether a control point switches one of the devices."""
    names = {device.name for device in devices}
    return any(switched.partition(".")[0] in names for switched in point.switches)


@quantity()
def control_nodes(case: Case, design: object) -> list[ControlPoint | Control]:
    """The controls of the whole-house ventilation: those said to be, else those of its fans."""
    devices = [part.device for part in needed(case, design)]
    points = list(case.design.controls.values())
    said = [point for point in points if case.maybe(point, "whole_house_ventilation")]
    found: list[ControlPoint | Control] = [*(said or [point for point in points if is_named(point, devices)])]
    for device in devices:
        control = getattr(device, "control", None)
        if isinstance(control, Control):
            found.append(control)
    return sorted(found, key=lambda node: str(node.path))


def told(case: Case, design: object, field: str) -> list[Told]:
    """What the controls say about a field. Raises Missing where none says anything."""
    found = []
    for node in control_nodes(case, design):
        value = case.maybe(node, field)
        if value is None and field == "override" and isinstance(node, Control) and node.by in BY_HAND:
            value = True
        if value is None and field == "accessible" and is_in_lived_room(case, node):
            value = True
        if value is not None:
            so = fold(str(value)) not in UNLABELLED if field == "label" else bool(value)
            found.append(Told(so, path_of(node, field)))
    if found:
        return found
    points = [node for node in control_nodes(case, design) if isinstance(node, ControlPoint)]
    raise Missing(path_of(points[0], field) if points else f"{needed(case, design)[0].device.path}.control.{field}")


def is_in_lived_room(case: Case, node: ControlPoint | Control) -> bool:
    """Whether a control is said to be in a room of the file where people come and go."""
    room = case.design.rooms.get(str(case.maybe(node, "location")))
    return room is not None and room.use in LIVED


@quantity()
def override(case: Case, design: object) -> Told:
    """Whether people can override the ventilation by hand: one refusal counts."""
    return worst(told(case, design, "override"))


@quantity()
def label(case: Case, design: object) -> Told:
    """Whether the control tells what it does: one label is enough."""
    return max(told(case, design, "label"))


@quantity()
def accessible(case: Case, design: object) -> Told:
    """Whether the control can be reached."""
    return worst(told(case, design, "accessible"))


def worst(answers: list[Told]) -> Told:
    """The first refusal, else the first answer."""
    return min(answers)


def test_state(case: Case, topic: str) -> Told:
    """Whether a test is planned or done, by its topic. Raises Missing where the papers do not say."""
    papers = case.design.papers
    word = fold(topic)
    alike = {word, word.replace(" flow", ""), word.replace(" flow", " airflow"), f"{word} test"}
    for name in sorted(papers.tests) if papers is not None else []:
        if fold(name) in alike:
            test = papers.tests[name]  # type: ignore[union-attr]
            return Told(case.get(test, "state") != "none", path_of(test, "state"))
    raise Missing(f"papers.tests.{topic}")
