"""How the outdoor air that a device brings in is split between the rooms: as stated, else by their volume."""

from functools import partial

from checker.case import Case, Missing, either, gather, path_of, quantity
from checker.design.house import House
from checker.design.rooms import Room
from checker.each import blank
from checker.quantities.distribution import Delivery, deliveries
from checker.quantities.equipment import heated_rooms
from checker.quantities.movers import Device
from checker.quantities.room_uses import room_volume
from checker.record import Record


class Split(Record):
    """Share of each room in the outdoor air of a device, what was assumed, and whether the file leads it to rooms at all."""

    shares: dict[str, float]
    assumed: str = ""
    is_led: bool = True

    def worksheet_lines(self, _system: str) -> list[str]:
        """The shares, and the assumption."""
        lines = [", ".join(f"{name} {share:.1%}" for name, share in self.shares.items())]
        return [*lines, self.assumed] if self.assumed else lines


def shares_of(flows: dict[str, float]) -> dict[str, float]:
    """Parts of their sum."""
    total = sum(flows.values())
    return {name: flow / total for name, flow in flows.items()}


def volume_or_part(case: Case, room: Room) -> float:
    """Volume of a room, m3; where no ceiling height is told its part of the house's by floor area, which serves for shares."""

    def part() -> float:
        volume, area = case.all(case.design.house or blank(House, "house"), "volume", "floor_area")
        if area <= 0.0:
            raise Missing("house.floor_area")
        return float(case.get(room, "floor_area") * volume / area)

    return either(lambda: room_volume(case, room), part)


def volumes_of(case: Case, names: list[str]) -> dict[str, float]:
    """Volumes of rooms, m3. Raises Missing for rooms of unknown size, or where all have none."""
    rooms = [case.design.rooms[name] for name in names]
    volumes = gather([partial(volume_or_part, case, room) for room in rooms])
    if sum(volumes) <= 0.0:
        raise Missing(path_of(rooms[0], "floor_area"))
    return dict(zip(names, volumes, strict=True))


@quantity()
def volume_shares(case: Case, _design: object) -> dict[str, float]:
    """Share of each heated room in the volume of all. Raises Missing for rooms of unknown size."""
    rooms = heated_rooms(case)
    if not rooms:
        raise Missing("rooms")
    return shares_of(volumes_of(case, [room.name for room in rooms]))


def led_by(case: Case, device: Device) -> list[Delivery]:
    """The heated rooms that a device leads outdoor air to; none where nobody tells."""
    heated = {room.name for room in heated_rooms(case)}
    try:
        return [each for each in deliveries(case, case.design) if each.device is device and each.room in heated]
    except Missing:
        return []


@quantity("", "by the flows stated, else by the volumes of the rooms that it is led to, else of all")
def fresh_split(case: Case, device: Device) -> Split:
    """Share of each heated room in the outdoor air that a device brings in. Raises Missing for rooms of unknown size."""
    led = led_by(case, device)
    told = {room.name: case.maybe(room, "outdoor_air") for room in heated_rooms(case)}
    stated = {name: float(flow) for name, flow in told.items() if flow}
    if stated:
        return Split(shares_of(stated))
    if led and all(each.airflow for each in led):
        flows: dict[str, float] = {}
        for each in led:
            flows[each.room] = flows.get(each.room, 0.0) + float(each.airflow or 0.0)
        return Split(shares_of(flows))
    names = list(dict.fromkeys(each.room for each in led))
    if not names:
        every = volume_shares(case, case.design)
        assumed = f"outdoor air of {device.name} reaches all rooms by their volume" if len(every) > 1 else ""
        return Split(dict(every), assumed, False)
    if len(names) == 1:
        return Split({names[0]: 1.0})
    assumed = f"outdoor air of {device.name} is split between {', '.join(names)} by their volume"
    return Split(shares_of(volumes_of(case, names)), assumed)
