"""Words for windows and doors of the envelope: glass, frame, panes, inside shades, screens."""

from checker.design.annotated import Annotated
from checker.design.fields import Choice

GlassKind = Annotated[
    str,
    Choice(
        "single clear", "single tinted", "double clear", "double tinted", "low-e high-solar", "low-e low-solar",
        low_e_low_solar="low-e | double low-e | triple low-e", single_clear="single", double_clear="double",
    ),
]  # fmt: skip
FrameKind = Annotated[
    str,
    Choice(
        "metal", "metal with thermal break", "nonmetal",
        metal="aluminum | aluminium | steel", metal_with_thermal_break="thermal break | thermally broken | broken aluminum",
        nonmetal="wood | vinyl | pvc | fiberglass | fibreglass | composite | clad | metal clad | clad wood | reinforced vinyl",
    ),
]  # fmt: skip
PaneCount = Annotated[
    str,
    Choice("single", "double", "triple", "glass block", single="one | single pane", double="two | double pane",
           triple="three | triple pane", glass_block="glazed block | glass brick"),
]  # fmt: skip
DoorKind = Annotated[
    str,
    Choice(
        "metal", "insulated metal", "wood", "insulated",
        metal="uninsulated metal | steel", insulated_metal="insulated steel", wood="wooden | solid wood",
        insulated="insulated nonmetal edge | insulated fiberglass | insulated fibreglass | fiberglass | fibreglass",
    ),
]  # fmt: skip
ShadeKind = Annotated[
    str,
    Choice(
        "none", "open drape", "dark drape", "light drape", "dark roller", "white roller", "translucent roller",
        "medium blinds", "white blinds",
        white_blinds="blinds | venetian blinds | mini blinds", light_drape="drapes | curtains", white_roller="roller shade",
    ),
]  # fmt: skip
InsectScreen = Annotated[str, Choice("none", "outside", "inside", outside="exterior", inside="interior")]
