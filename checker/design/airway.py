"""What may be said of one duct, whether it stands under a fan, a hood, a dryer or among the runs."""

from checker.design.annotated import Annotated
from checker.design.fields import (
    Airflow,
    Choice,
    DuctSize,
    Flag,
    FrictionRate,
    Length,
    LengthOrNone,
    Node,
    Permeance,
    Plain,
    Reference,
    Resistance,
    Share,
    Slope,
    Temperature,
    listed,
    named,
    record,
    said,
)
from checker.design.pieces import Fitting, Piece

DuctMaterial = Annotated[
    str,
    Choice(
        "galvanized steel", "stainless steel", "copper", "aluminum", "rigid plastic", "flexible", "semi-rigid aluminum",
        "duct board", "lined steel", "pvc", "gypsum", "framing cavity", "concrete", "unknown metal",
        galvanized_steel="galvanized | galv | galvanised | galvanised steel | sheet metal | steel | spiral"
        " | galvanized sheet metal | galv steel",
        flexible="flex | flex duct | flexible duct | insulated flex | plastic flex | insulated flexible duct | wire flex",
        semi_rigid_aluminum="foil flex | semirigid | flexible metal | flexible aluminum | aluminum flex | semi-rigid",
        rigid_plastic="plastic | hdpe | pe | polyethylene",
        duct_board="fiberglass duct board | fibrous glass | ductboard | fiberglass board",
        pvc="schedule 40 pvc | sch 40 pvc", gypsum="drywall | gypsum board",
        framing_cavity="stud cavity | joist cavity | panned joist | panned | building cavity | stud bay | joist bay",
        aluminum="aluminium | smooth aluminum | rigid aluminum | rigid aluminium",
        stainless_steel="stainless | smooth stainless",
        lined_steel="lined duct | lined sheet metal | lined",
        unknown_metal="smooth | metal | smooth metal | rigid metal | rigid smooth metal | hard pipe | rigid | "
        "rigid round | snap lock",
    ),
]  # fmt: skip
PLACES = Choice(
    "outdoors", "conditioned", "attic", "crawl space", "garage", "basement", "exterior wall", "chase", "roof", "soffit",
    "underground", "slab", "floor over unconditioned",
    outdoors="outside | exterior | outdoor", conditioned="inside | conditioned space | indoors | interior | "
    "inside envelope | "
    "inside conditioned space | within conditioned space | conditioned attic | conditioned basement | "
    "conditioned crawl space | interior chase | interior wall | between floors",
    crawl_space="crawl | crawlspace | vented crawl space | "
    "vented crawlspace", exterior_wall="outside wall", attic="vented attic | unconditioned attic",
    chase="shaft", underground="buried | below grade", garage="attached garage", soffit="interior soffit | "
    "dropped soffit | dropped ceiling",
    slab="in slab | under slab", basement="unfinished basement", roof="on roof",
)  # fmt: skip
Where = Annotated[str, Reference("rooms", words=PLACES)]
Turn = Annotated[
    str,
    Choice(
        "mitered", "4 in radius", "6 in radius", "8 in radius", "10 in radius", "smooth", "tight",
        mitered="mitred | 4 in radius mitered", smooth="long radius", tight="short radius | standard",
    ),
]  # fmt: skip
InsulationKind = Annotated[
    str,
    Choice("wrap", "board", "liner", "spray foam", wrap="duct wrap | blanket", board="rigid board",
           spray_foam="spf | polyurethane foam | foam"),
]  # fmt: skip
Basis = Annotated[
    str,
    Choice("table", "maker", "measured", "engineered", maker="maker's design | manufacturer | by maker",
           measured="tested", engineered="duct design | calculated"),
]  # fmt: skip


@record
class Airway(Node):
    """One duct: size, length, pieces, what it is made of and where it runs."""

    short = ("size",)
    spoken = ("size", "length", "material", "insulation")
    size: DuctSize | None = said("inside size: round diameter, or width x depth", "6 in", "10x6 in")
    length: Length | None = said("straight length, without fittings", "11 ft")
    fittings: dict[Piece, Fitting] = named(
        "fittings by kind and count, or with what shapes them",
        {"elbow-90": 2},
        {"elbow-90": {"count": 2, "radius_ratio": 1.5}},
        key="pieces",
    )
    elbow_radius: Turn | None = said("what the elbows are, for the dryer's table and the losses", "mitered")
    material: DuctMaterial | None = said("what it is made of", "galvanized steel")
    thickness: Length | None = said("sheet thickness", "0.0157 in")
    location: list[Where] = listed("where it runs; rooms or attic, crawl space, garage, chase ...", "attic")
    insulation: Resistance | None = said("insulation on the duct, or `none`", "R-8")
    insulation_kind: InsulationKind | None = said("what the insulation is", "wrap")
    insulation_outboard: Resistance | None = said(
        "insulation of the wall or floor between a duct in it and the unconditioned side", "R-10"
    )
    vapor_jacket: Flag | None = said("whether a vapor retarder covers the insulation", True)
    jacket_permeance: Permeance | None = said("permeance of the jacket", "0.05 perm")
    slope: Slope | None = said("fall toward the outdoors", "1/4 in/ft")
    support_spacing: Length | None = said("greatest distance between supports", "4 ft")
    sag: Slope | None = said("sag between supports of flexible duct", "1/2 in/ft")
    compression: Share | None = said("flexible duct: how far it is from fully stretched", "4 %")
    sealed: Plain | None = said(
        "how joints are sealed: mastic, tape, gasket; `none` if they are not", "mastic"
    )
    sealant_listing: Plain | None = said("marking of the tape or mastic on its joints", "UL 181B-M")
    joints: Plain | None = said("how joints are fastened", "three screws")
    screw_intrusion: LengthOrNone | None = said("how far fasteners reach into the duct", "1/8 in")
    listing: Plain | None = said("listing of factory-made duct", "UL 181")
    shared_with: list[Plain] = listed("other exhausts that use the same duct", "bath-fan")
    damper: Flag | None = said("whether a backdraft damper stands in the duct", True)
    balancing_damper: Flag | None = said("whether a volume damper stands in the run", True)
    damper_access: Flag | None = said("whether that damper can be reached", True)
    basis: Basis | None = said("what its length is judged by: table, maker, measured, engineered", "table")
    air_temperature: Temperature | None = said("coldest or hottest air in it", "55 degF")
    velocity_limit_by: Plain | None = said("where a velocity limit other than the usual one comes from")
    buried: Flag | None = said("buried in ceiling insulation", False)
    insulation_over: Resistance | None = said("ceiling insulation over a buried duct", "R-19")
    insulation_under: Resistance | None = said("ceiling insulation under a buried duct", "R-11")
    weather_protected: Flag | None = said("outdoors or above the roof: protected against the weather", True)
    earth_clearance: Length | None = said("distance to the earth", "6 in")
    encasement: Length | None = said("thickness of concrete all around an underground duct", "2 in")
    corrosion_protected: Flag | None = said(
        "whether an underground metal duct is coated or otherwise protected from corrosion", True
    )
    framing_edge: Length | None = said("distance from the duct to the face of the framing", "1 1/2 in")
    nail_plates: Flag | None = said("whether steel plates protect it where it is near the framing face", True)
    cavity_depth: Length | None = said("clear depth of the wall or joist cavity it runs in", "3 1/2 in")

    @property
    def pieces(self) -> dict[str, int]:
        """Fittings by kind and count; one whose count is not told counts as one."""
        return {kind: 1 if each.count is None else each.count for kind, each in self.fittings.items()}


End = Annotated[
    str,
    Reference("runs", "outlets", "equipment", "fans", "hoods", "filters", "openings", "rooms", words=PLACES),
]


@record
class Run(Airway):
    """A run among others: from a mover, a filter, another run or an opening to the next, an outlet or a room."""

    from_: End | None = said(
        "where the air comes from: mover, run, outlet, opening or room", "slim-duct", key="from"
    )
    to: End | None = said("where the air goes: run, outlet, mover, opening or room", "bed-outlet")
    airflow: Airflow | None = said("design airflow; else the sum of the outlets it feeds", "180 cfm")
    declared_friction_rate: FrictionRate | None = said(
        "friction rate on the designer's sheet", "0.08 in w.c./100 ft"
    )
    declared_equivalent_length: Length | None = said(
        "equivalent length of its fittings on the sheet", "45 ft"
    )
    serves: list[Annotated[str, Reference("rooms")]] = listed(
        "rooms it serves, where no outlet is given", "bedroom"
    )
