"""Names of things: what a reference may point at, and what to say when it points at nothing."""

from typing import TYPE_CHECKING, Any

from checker.design.fields import Node, Reference, fold

if TYPE_CHECKING:
    from checker.design import Design
    from checker.design.builder import Builder


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
    from checker.design.nearest import nearest

    choices = known + (list(kind.words.words) if kind.words is not None else [])
    where = " or ".join(f"`{section}`" for section in kind.sections[:3])
    builder.fault("FILE-24", path, f"`{name}` is not a name in {where}", nearest(name, choices, "names"))
    builder.dropped.append((path, holder, slot))
