"""U-values of the surfaces of the envelope, from what the file says of their assemblies."""


from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.envelope import POINTS, Assembly, AssemblyKind, Envelope, Surface
from checker.design.fields import Choice, fold
from checker.design.shape import shape_of
from checker.each import blank
from checker.physics.assemblies import (
    FILM_INSIDE,
    FILM_OUTSIDE,
    JOIST_FRAMING_SHARE,
    MEMBER_DEPTH,
    USUAL_BOARDS,
    WALL_FRAMING_SHARE,
    counted_fill,
    u_framed,
    u_of_layers,
)
from checker.quantities.moist_air import worked_out
from checker.record import Record
from checker.units import show

BY_FACING = {**dict.fromkeys(POINTS, "wall"), "sky": "roof", "attic": "ceiling", "crawl space": "floor"}
OPEN_AIR = frozenset({*POINTS, "sky", "outdoors"})


class UValueOf(Record):
    """A U-value in W/(m2 K), how it came about, and what was assumed."""

    value: float
    way: str
    assumed: tuple[str, ...] = ()
    from_memory: bool = False

    def worksheet_lines(self, system: str) -> list[str]:
        """The value and its way."""
        notes = "; ".join((*self.assumed, *(("boards from memory",) if self.from_memory else ())))
        return [f"{show(self.value, 'u_value', system)}: {self.way}{f' ({notes})' if notes else ''}"]


def envelope_of(case: Case) -> Envelope:
    """The envelope. Raises Missing where the file holds none."""
    if case.design.envelope is None:
        raise Missing("envelope")
    return case.design.envelope


def assembly_of(case: Case, surface: Surface) -> Assembly:
    """The assembly of a surface. Raises Missing."""
    name = str(case.get(surface, "assembly"))
    return envelope_of(case).assemblies.get(name) or blank(Assembly, f"envelope.assemblies.{name}")


def kind_by_name(assembly: Assembly) -> str | None:
    """Wall, ceiling, roof, floor or door by the assembly's name, as `wall`, `attic-ceiling` or `wall-2x6`."""
    kind = shape_of(AssemblyKind).kind
    assert isinstance(kind, Choice)
    words = fold(assembly.name).split()
    for word in (" ".join(words), *reversed(words)):
        found = kind.spellings.get(word.rstrip("0123456789")) or kind.spellings.get(word.removesuffix("s"))
        if found is not None:
            return found
    return None


@quantity()
def surface_kind(case: Case, surface: Surface) -> str:
    """Wall, ceiling, roof, floor or door: by the assembly, else by what the surface faces. Raises Missing."""
    assembly = assembly_of(case, surface)
    found = case.maybe(assembly, "kind") or kind_by_name(assembly) or BY_FACING.get(str(case.get(surface, "faces")))
    if found is None:
        raise Missing(path_of(assembly, "kind"))
    return str(found)


def films(kind: str, faces: str) -> float:
    """Both air films together, m2 K/W: indoors by the way of the heat, beyond wind or still air."""
    way = {"ceiling": "up", "roof": "up", "floor": "down"}.get(kind, "wall")
    return FILM_INSIDE[way] + (FILM_OUTSIDE if faces in OPEN_AIR else FILM_INSIDE[way])


@quantity("", "stated; else parallel path of cavity and framing", "ASHRAE Handbook - Fundamentals, chapter 27")
def surface_u(case: Case, surface: Surface) -> UValueOf:
    """U-value of a surface. Raises Missing; CannotJudge for steel framing without a stated U-value."""
    assembly = assembly_of(case, surface)
    stated = case.maybe(assembly, "u")
    if stated is not None:
        return UValueOf(float(stated), "as stated")
    resistance = case.maybe(assembly, "r")
    if resistance is not None:
        return UValueOf(worked_out(lambda: u_of_layers([float(resistance)])), "from the stated R-value of the whole")
    return by_parts(case, surface, assembly)


def by_parts(case: Case, surface: Surface, assembly: Assembly) -> UValueOf:
    """U-value from cavity, framing, boards and films."""
    kind, framing = surface_kind(case, surface), case.maybe(assembly, "framing")
    if framing == "steel":
        raise CannotJudge(f"{assembly.name} is framed in steel, which the parallel-path method does not cover; state its `u`")
    cavity = case.maybe(assembly, "cavity")
    if cavity is None and not assembly.layers and assembly.continuous is None:
        raise Missing(path_of(assembly, "u"))
    layers = path_of(assembly, "layers")
    undecided = [path for path in sorted(case.design.tbd) if path == layers or path.startswith(f"{layers}.")]
    if undecided:
        raise Missing(*undecided)
    across = sum(assembly.layers.values()) + float(case.maybe(assembly, "continuous") or 0.0)
    memory = not assembly.layers and framing not in ("none", "masonry")
    if memory:
        across += USUAL_BOARDS.get(kind, USUAL_BOARDS["wall"])
    across += films(kind, str(case.get(surface, "faces")))
    if kind == "ceiling" and assembly.framing_share is None:
        return loose_fill(case, assembly, float(cavity or 0.0), across, memory)
    if cavity is None or framing in ("none", "masonry"):
        return UValueOf(1.0 / (across + float(cavity or 0.0)), "layers and films in series", (), memory)
    depth = MEMBER_DEPTH[str(case.get(assembly, "framing"))]
    share, assumed = framing_share(case, assembly, kind)
    u = worked_out(lambda: u_framed(float(cavity), depth, share, across))
    return UValueOf(u, f"{1 - share:.0%} cavity beside {share:.0%} framing", assumed, memory)


def framing_share(case: Case, assembly: Assembly, kind: str) -> tuple[float, tuple[str, ...]]:
    """Share of framing, and that it was assumed."""
    stated = case.maybe(assembly, "framing_share")
    if stated is not None:
        return float(stated), ()
    return (WALL_FRAMING_SHARE if kind == "wall" else JOIST_FRAMING_SHARE), (f"usual share of framing in the {assembly.name}",)


def loose_fill(case: Case, assembly: Assembly, cavity: float, across: float, memory: bool) -> UValueOf:
    """U-value of a ceiling whose insulation covers the joists and thins out at the eaves."""
    if case.maybe(assembly, "raised_heel"):
        return UValueOf(1.0 / (cavity + across), "insulation over the joists, full at the eaves", (), memory)
    counted = worked_out(lambda: counted_fill(cavity))
    what = f"of the insulation of the {assembly.name} counts, as it thins out at the eaves"
    share = f"{counted / cavity:.0%} {what}" if cavity > 0 else ""
    return UValueOf(1.0 / (counted + across), "insulation over the joists", (share,) if share else (), memory)
