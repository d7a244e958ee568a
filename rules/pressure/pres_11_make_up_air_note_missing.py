"""No drawing note tells of the make-up air.

Make-up air is made by three trades: the duct, the damper and its wiring, the hood. What stands only in the designer's
head gets left out on site. One note on the mechanical sheet keeps it together and lets a reviewer find it.

Write a note: how much air, by what opening or fan, which damper, what starts it, where it enters and how it is warmed.
"""

from checker.case import Case
from checker.quantities.make_up_air import Exhauster
from checker.quantities.make_up_entry import has_drawing_note, with_some
from checker.rule import Finding, Meets, Rule


def has_drawings(case: Case, _device: Exhauster) -> bool:
    """A sketch has no drawing notes yet."""
    return case.design.project is None or case.design.project.stage != "sketch"


def check(device: Exhauster, noted: bool) -> Meets | Finding:
    """A note is there."""
    if noted:
        return Meets()
    return Finding(
        f"no drawing note tells of the make-up air of {device.name}",
        at="make_up_air" if device.make_up_air is not None else "",
        help="write a note with amount, opening or fan, damper, what starts it, room and warming, and name it under "
        "`papers.notes.make-up-air`",
    )


RULE = Rule(
    code="PRES-11", name="make-up-air-note-missing", severity="note", since="0.1",
    over=with_some, when=has_drawings, needs=(has_drawing_note,), cites=("make-up-air-drawing-note",), check=check,
    nothing="no make-up air is shown",
)  # fmt: skip
