"""The details of the envelope: cold spots that insulation does not cover as the rest."""

from checker.design.annotated import Annotated
from checker.design.fields import Choice, Flag, Node, Number, Plain, Reference, record, said

DetailKind = Annotated[
    str,
    Choice(
        "slab edge", "balcony", "lintel", "rim joist", "corner", "window reveal", "steel beam", "other",
        slab_edge="edge of the slab | floor edge", balcony="balcony slab | cantilever", lintel="header | steel lintel",
        rim_joist="rim | band joist | rim board", corner="outside corner | wall corner",
        window_reveal="reveal | jamb | window edge", steel_beam="beam | steel column | steel post",
    ),
]  # fmt: skip
InRoom = Annotated[str, Reference("rooms")]


@record
class Detail(Node):
    """A cold spot of the envelope: an edge, corner or member that insulation does not cover as the rest."""

    kind: DetailKind | None = said("what it is; its name may say so", "balcony")
    room: InRoom | None = said("room whose surface it cools", "living")
    insulated: Flag | None = said("whether insulation or a thermal break interrupts it", False)
    temperature_factor: Annotated[float, Number(0.0, 1.0)] | None = said(
        "how warm its inner surface stays: (surface - outdoors) / (room - outdoors), by a calculation of the detail", 0.78
    )
    notes: Plain | None = said("anything a reader should know; no rule reads it")
