"""Names of things: what a reference may point at, and what to say when it points at nothing."""

from typing import TYPE_CHECKING, Any

from checker.design.fields import Node, Reference, fold

if TYPE_CHECKING:
    from checker.design import Design
    from checker.design.builder import Builder
    from checker.design.rooms import Room


ALL = frozenset({"all", "all rooms", "whole house", "entire house", "everything", "the whole house", "every room"})


def lived_in(room: "Room") -> bool:
    """Whether a room belongs to those that `all` means: heated or cooled unless the file says otherwise."""
    outside = ("garage", "attic", "crawl space", "basement")
    return room.conditioned is True or (room.conditioned is None and room.use not in outside)


class Names:
    """The names that a reference at one path may use."""

    def __init__(self, design: "Design", path: str) -> None:
        self.design = design
        self.path = path

    def of(self, section: str) -> list[str]:
        """Names in a section; runs and outlets are those of the same duct system, settings are `thing.setting`."""
        if section in ("runs", "outlets"):
            system = (
                self.design.ducts.get(self.path.split(".")[1]) if self.path.startswith("ducts.") else None
            )
            return list(getattr(system, section)) if system is not None else []
        if section == "settings":
            movers: list[Any] = [
                *self.design.fans.values(),
                *self.design.hoods.values(),
                *self.design.equipment.values(),
            ]
            dryers = list(self.design.dryers)
            return [f"{mover.name}.{setting}" for mover in movers for setting in mover.settings] + dryers
        if section in ("assemblies", "glazing"):
            return list(getattr(self.design.envelope, section)) if self.design.envelope is not None else []
        things: dict[str, Node] = getattr(self.design, section)
        return list(things)


def resolve(
    builder: "Builder", names: Names, path: str, name: str, kind: Reference, holder: Any, slot: Any
) -> None:
    """Check one reference; a plain word is put in its usual spelling, a wrong name is dropped with a fault.

    `holder[slot]` is where the name stands in the model.
    """
    known = [each for section in kind.sections for each in names.of(section)]
    if name in known:
        return
    if kind.sections == ("settings",) and any(each.partition(".")[0] == name for each in known):
        return
    word = kind.words.spellings.get(fold(name)) if kind.words is not None else None
    if word is not None:
        if isinstance(holder, dict) and slot == name and slot != word and slot in holder:
            holder[word] = holder.pop(slot)
        elif not (isinstance(holder, dict) and slot == name):
            holder[slot] = word
        return
    if kind.sections == ("rooms",) and fold(name) in ALL and isinstance(holder, list) and len(holder) == 1:
        holder[:] = [each for each, room in names.design.rooms.items() if lived_in(room)]
        return
    from checker.design.nearest import nearest

    choices = known + (list(kind.words.words) if kind.words is not None else [])
    where = " or ".join(f"`{section}`" for section in kind.sections[:3])
    remedy = nearest(name, choices, "names")
    if "openings" in kind.sections and not remedy.startswith("the nearest"):
        remedy = f"say what it is: `openings: {{{name}: {'outdoor air intake' if '.from' in path else 'exhaust'}}}`"
    builder.fault("FILE-24", path, f"`{name}` is not a name in {where}", remedy)
    builder.dropped.append((path, holder, slot))
