"""The pieces of a duct beside its straight length: elbows, take-offs, transitions, ends, and what shapes them."""

from checker.design.annotated import Annotated
from checker.design.fields import Angle, Choice, Count, DuctSize, Flag, Node, Number, record, said

Piece = Annotated[
    str,
    Choice(
        "elbow-90", "elbow-45", "elbow-30", "elbow-180", "elbow-90-mitered", "flat-elbow-90", "tee-branch", "tee-through",
        "wye-branch", "takeoff-45", "takeoff-90", "boot", "boot-90", "reducer", "expansion", "offset", "damper",
        "backdraft-damper", "wall-cap", "roof-cap", "louver", "entry", "exit", "silencer",
        elbow_90="elbow | 90 | 90s | 90 elbow | ell | elbows 90 | 90 degree elbow | elbows | 90deg",
        elbow_45="45 | 45s | 45 elbow | 45 degree elbow | elbows 45", elbow_30="30 | 30 elbow",
        elbow_180="180 | u bend | return bend | 180 turn", wall_cap="wall hood | cap | wall terminal",
        roof_cap="roof jack | roof terminal", tee_branch="tee", tee_through="tee straight", wye_branch="wye | y branch",
        takeoff_45="45 takeoff", takeoff_90="90 takeoff | takeoff | straight takeoff | take off | collar | "
        "starting collar", boot="register boot | straight boot | ceiling boot | end boot",
        boot_90="elbow boot | 90 boot", reducer="transition | contraction", damper="balancing damper | "
        "volume damper | manual damper | motorized damper",
        expansion="enlargement | increaser", elbow_90_mitered="mitered elbow | square elbow | mitred elbow",
        silencer="sound attenuator | muffler | sound trap", backdraft_damper="bdd | check damper | check valve",
    ),
]  # fmt: skip
Build = Annotated[
    str,
    Choice(
        "smooth", "segmented", "mitered", "flush", "projecting", "bellmouth",
        smooth="die-stamped | stamped | pressed | pleated", segmented="gored | adjustable | pieced",
        mitered="mitred | square", bellmouth="bell mouth | flared | rounded | conical", flush="flush with the wall",
        projecting="plain end | open end | sharp",
    ),
]  # fmt: skip


@record
class Fitting(Node):
    """The pieces of one kind in a duct: how many, and what shapes them. A count alone will do."""

    short = ("count",)
    count: Count | None = said("how many of them", 2)
    radius_ratio: Annotated[float, Number(0.3, 10)] | None = said(
        "elbow: radius of its center line over the diameter, or over the side in the plane of the bend", 1.5
    )
    made: Build | None = said("elbow: smooth, segmented, mitered; entry: flush, projecting, bellmouth", "segmented")
    gores: Count | None = said("segmented elbow: how many pieces it is made of", 5)
    angle: Angle | None = said("elbow: the angle by which it turns, where it is another one", "60 deg")
    vanes: Flag | None = said("elbow: whether it has turning vanes", True)
    size: DuctSize | None = said("reducer or expansion: the size at its other end", "8 in")
