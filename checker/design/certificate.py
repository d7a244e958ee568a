"""What the energy certificate states that is posted in the house, so that it can be held against the design."""

from checker.design.annotated import Annotated
from checker.design.energy_paper import EnergyMeasure, EnergyPath
from checker.design.fields import (
    AirtightnessFact,
    Choice,
    Leakage,
    Node,
    Number,
    Plain,
    Resistance,
    Share,
    UValue,
    listed,
    record,
    said,
)
from checker.design.project import CodeEdition

Rating = Annotated[float, Number(0, 60)]
CertificateItem = Annotated[
    str,
    Choice(
        "code", "code_path", "measures", "ceiling", "wall", "floor", "basement_wall", "slab", "duct", "window_u", "window_shgc",
        "airtightness", "duct_leakage", "afue", "seer2", "hspf2",
        window_u="window u", window_shgc="shgc",
        duct="ducts | duct insulation", wall="walls", ceiling="ceilings | roof", floor="floors",
        code_path="path",
        airtightness="blower door | air leakage", duct_leakage="duct leakage test", seer2="seer", hspf2="hspf",
    ),
]  # fmt: skip


@record
class EnergyCertificate(Node):
    """Figures on the energy certificate, and what it leaves out."""

    leaves_out: list[CertificateItem] = listed("what it does not state although it should", "duct")
    posted: Plain | None = said("where it is posted", "utility room, beside the panel")
    code: CodeEdition | None = said("code edition that it names", "irc-2021")
    code_path: EnergyPath | None = said("path of compliance that it names", "prescriptive")
    measures: list[EnergyMeasure] = listed("additional measures that it names", "heat pump")
    ceiling: Resistance | None = said("insulation of most of the ceilings or roofs", "R-49")
    wall: Resistance | None = said("insulation of most of the walls", "R-21")
    floor: Resistance | None = said("insulation of most of the floors over unheated space", "R-30")
    basement_wall: Resistance | None = said("insulation of the walls against the ground", "R-15")
    slab: Resistance | None = said("insulation of the slab edge", "R-10")
    duct: Resistance | None = said("insulation of the ducts outside the conditioned space", "R-8")
    window_u: UValue | None = said("U-value of most of the windows, or their mean", "U-0.28")
    window_shgc: Annotated[float, Number(0, 1)] | None = said("solar heat gain coefficient of most of the windows", 0.3)
    airtightness: AirtightnessFact | None = said("result of the air leakage test", "1.6 ACH50")
    duct_leakage: Leakage | None = said("result of the duct leakage test", "38 cfm25")
    afue: Share | None = said("efficiency of the furnace or boiler", "95 %")
    seer2: Rating | None = said("seasonal cooling efficiency (SEER2)", 16.2)
    hspf2: Rating | None = said("seasonal heating efficiency (HSPF2)", 8.5)
    seer: Rating | None = said("seasonal cooling efficiency by the procedure before 2023 (SEER)", 18)
    hspf: Rating | None = said("seasonal heating efficiency by the procedure before 2023 (HSPF)", 10)
