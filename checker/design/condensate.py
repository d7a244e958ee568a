"""The `condensate` section: drains of coils, recovery units and condensing appliances."""

from checker.design.airway import Where
from checker.design.annotated import Annotated
from checker.design.fields import (
    Choice,
    Diameter,
    Flag,
    Length,
    Node,
    Plain,
    Pressure,
    Quantity,
    Reference,
    Slope,
    listed,
    record,
    said,
)

WaterFlow = Annotated[float, Quantity("water_flow")]
PipeMaterial = Annotated[
    str,
    Choice(
        "pvc", "cpvc", "abs", "copper", "pex", "pe-rt", "polyethylene", "polypropylene", "cast iron",
        "galvanized steel", "vinyl tubing", "corrugated hose", "other",
        pvc="schedule 40 pvc | pvc schedule 40 | sch 40 pvc | pvc sch 40 | pvc pipe",
        pex="cross linked polyethylene", polyethylene="pe | hdpe | poly",
        polypropylene="pp", galvanized_steel="galvanized | galvanised steel",
        vinyl_tubing="clear tubing | clear vinyl | vinyl | vinyl hose | clear hose",
        corrugated_hose="drain hose | flexible drain hose | corrugated drain hose | garden hose",
    ),
]  # fmt: skip
Termination = Annotated[
    str,
    Choice(
        "floor drain", "standpipe", "sink", "laundry tub", "sewer", "plumbing vent", "sump", "storm drain", "dry well",
        "outdoors at grade", "roof gutter", "roof", "crawl space", "attic", "street", "walkway", "approved place",
        standpipe="laundry standpipe | washer standpipe | hub drain", laundry_tub="laundry sink | utility sink | mop sink",
        sink="lavatory | sink tailpiece | lavatory tailpiece | basin | bathroom sink | kitchen sink | "
        "bathroom sink tailpiece",
        sewer="sewer direct | drain pipe | waste pipe | sanitary drain",
        plumbing_vent="vent pipe | vent stack | plumbing vent stack", sump="sump pit",
        dry_well="drywell | gravel pit | french drain | soakaway",
        outdoors_at_grade="outdoors | outside | grade | ground | yard | splash block | garden", roof_gutter="gutter | downspout",
        crawl_space="crawl | crawlspace", street="alley | road", walkway="sidewalk | path | driveway | deck | patio",
        storm_drain="storm sewer",
    ),
]  # fmt: skip
Method = Annotated[
    str,
    Choice(
        "pan with drain", "overflow drain", "pan with switch", "switch",
        pan_with_drain="auxiliary pan with drain | drained pan | emergency pan",
        overflow_drain="secondary drain | secondary overflow drain",
        pan_with_switch="pan with float switch | auxiliary pan with switch | auxiliary pan with float switch",
        switch="float switch | overflow switch | wet switch | safety switch | water level device | level switch",
    ),
]  # fmt: skip
SwitchPlace = Annotated[
    str,
    Choice(
        "primary pan", "drain line", "overflow drain", "auxiliary pan", primary_pan="unit pan | in the unit | drain pan",
        drain_line="in line | inline | primary drain", auxiliary_pan="emergency pan | secondary pan",
        overflow_drain="secondary drain",
    ),
]  # fmt: skip
PanMaterial = Annotated[
    str,
    Choice(
        "galvanized steel", "nonmetallic", "stainless steel", "aluminum",
        galvanized_steel="galvanized | steel | metal | sheet metal", nonmetallic="plastic | polymer | pvc",
        stainless_steel="stainless", aluminum="aluminium",
    ),
]  # fmt: skip
CoilAir = Annotated[
    str, Choice("draw-through", "blow-through", draw_through="negative | draw", blow_through="positive | blow")
]
Source = Annotated[str, Reference("equipment", "fans", "combustion", "dryers")]


@record
class DrainTrap(Node):
    """The trap at the unit; a plain length in its place is read as the depth of its water seal."""

    short = ("depth",)
    depth: Length | None = said("depth of the water seal", "3 in")
    drop: Length | None = said("height of the pan's outlet above the trap's outlet", "3 in")
    waterless: Flag | None = said("a listed trap without water, such as an air-seal valve", False)
    vent: Flag | None = said("whether the line is vented after the trap", True)


@record
class AuxiliaryPan(Node):
    """A second pan below the unit."""

    depth: Length | None = said("depth", "1 1/2 in")
    larger_by: Length | None = said("how much longer and wider than the unit or coil it is", "3 in")
    material: PanMaterial | None = said("what it is made of", "galvanized steel")
    thickness: Length | None = said("thickness of its sheet", "0.0236 in")
    fitting: Flag | None = said("whether it has a fitting by which it can be drained", True)
    unit_above_rim: Flag | None = said("whether unit and insulation stand above its rim on supports that water won't harm", True)


@record
class OverflowDrain(Node):
    """The drain of the auxiliary pan, or the second drain of the unit's own pan."""

    size: Diameter | None = said("nominal size", "3/4 in")
    slope: Slope | None = said("fall toward its end", "1/8 in/ft")
    conspicuous: Flag | None = said("whether it ends where people will notice the drip", True)
    above_primary: Flag | None = said("whether it leaves the unit's pan above the main drain", True)


@record
class LevelSwitch(Node):
    """A water-level device; a plain place in its stead is read as `place`."""

    short = ("place",)
    place: SwitchPlace | None = said("where it sits", "primary pan")
    stops_unit: Flag | None = said("whether it stops the unit before water runs over", True)
    listing: Plain | None = said("listing", "UL 508")


@record
class CondensatePump(Node):
    """A pump in the drain line."""

    location: Where | None = said("where it stands; else where the source stands", "attic")
    stops_unit: Flag | None = said("interlock: whether its failure stops the unit", True)
    lift: Length | None = said("height that it has to lift", "6 ft")
    flow_at_lift: WaterFlow | None = said("flow that it gives at that height", "0.05 gpm")
    greatest_lift: Length | None = said("greatest lift by its maker", "15 ft")


@record
class DrainByMaker(Node):
    """What the unit's instructions require."""

    trap_depth: Length | None = said("depth of the trap's water seal", "2 in")
    trap_drop: Length | None = said("height of the pan's outlet above the trap's outlet", "3 in")


@record
class CondensateDrain(Node):
    """The condensate drain of one or more units; one named after its unit needs no `from`."""

    from_: list[Source] = listed(
        "equipment, recovery unit or appliance that it drains", "bedroom-unit", key="from"
    )
    size: Diameter | None = said("nominal pipe size", "3/4 in")
    material: PipeMaterial | None = said("pipe material", "pvc")
    slope: Slope | None = said("fall toward its end", "1/8 in/ft")
    length: Length | None = said("length", "14 ft")
    location: list[Where] = listed("where it runs: rooms, attic, crawl space, exterior wall, outdoors ...", "attic")
    to: Termination | None = said("where it ends", "floor drain")
    air_gap: Flag | None = said("whether it ends with an air gap or air break above the receptor", True)
    foundation_distance: Length | None = said("distance of an outdoor end from the foundation", "3 ft")
    cleanout: Flag | None = said("whether it can be cleared without cutting the pipe", True)
    coil: CoilAir | None = said("whether the fan draws air through the coil or blows it", "draw-through")
    pan_pressure: Pressure | None = said("suction at the drain pan with the filter loaded", "0.5 in w.c.")
    trap: DrainTrap | None = said("its trap, or `none`", "3 in")
    over_finished: Flag | None = said("whether water running over would harm a ceiling, wall or floor", True)
    secondary: list[Method] = listed("second line of defence: pan, overflow drain, switch, or `none`", "switch")
    down_flow: Flag | None = said("a down-flow coil, or one without a place for a second drain or pan", False)
    pan: AuxiliaryPan | None = said("auxiliary pan below the unit, or `none`")
    overflow_drain: OverflowDrain | None = said("drain of that pan, or second drain of the unit, or `none`")
    switch: LevelSwitch | None = said("water-level device, or `none`", "primary pan")
    pump: CondensatePump | None = said("pump in the line, or `none`")
    freeze_protection: Flag | None = said("heat trace, insulation inside the warm space or other frost protection", True)
    neutralizer: Flag | None = said("whether acid condensate passes a neutralizer", True)
    metal_or_septic: Flag | None = said("whether it runs into metal drains or a septic system", False)
    flow: WaterFlow | None = said("greatest condensate flow, where it is known", "0.02 gpm")
    by_maker: DrainByMaker | None = said("what the unit's instructions require")
    notes: Plain | None = said("anything a reader should know; no rule reads it")
