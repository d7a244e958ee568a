"""The energy certificate: what it must state of this design, and what it leaves out."""

from functools import partial

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.airway import Run
from checker.design.certificate import EnergyCertificate
from checker.each import blank
from checker.quantities.airtightness import house_of
from checker.quantities.assembly_values import surface_kind
from checker.quantities.duct_exposure import exposure, house_air_systems
from checker.quantities.energy import energy_paper, is_conditioner
from checker.quantities.equipment import HEADS, is_heat_pump
from checker.quantities.required_tests import is_duct_test_asked, is_surely

WORDS = {
    "code": "code edition", "code_path": "path of compliance", "measures": "additional measures",
    "ceiling": "insulation of ceilings or roofs", "wall": "insulation of walls", "floor": "insulation of floors",
    "basement_wall": "insulation of basement walls", "slab": "insulation of the slab edge",
    "duct": "insulation of ducts outside", "window_u": "U-value of windows", "window_shgc": "solar heat gain coefficient",
    "airtightness": "result of the air leakage test", "duct_leakage": "result of the duct leakage test",
    "afue": "efficiency of the furnace or boiler", "seer2": "cooling efficiency", "hspf2": "heating efficiency",
    "seer": "cooling efficiency", "hspf": "heating efficiency",
}  # fmt: skip
OLDER = {"seer2": "seer", "hspf2": "hspf"}


def certificate_of(case: Case) -> EnergyCertificate | None:
    """The certificate among the papers."""
    return None if case.design.papers is None else case.design.papers.certificate


def ducts_outside(case: Case) -> list[Run]:
    """Runs of heating and cooling that surely leave the conditioned space."""
    return [
        run
        for system in house_air_systems(case)
        for run in system.runs.values()
        if is_surely(lambda run=run: bool(exposure(case, run).at("attic", "outside", "ground")))  # type: ignore[misc]
    ]


def wanted_items(case: Case) -> list[str]:
    """What the edition wants on the certificate of this design, as far as the file shows that it has such a thing."""
    envelope, house, units = case.design.envelope, house_of(case), case.design.equipment.values()
    items = ["ceiling", "wall", "window_u", "window_shgc", "airtightness"]
    surfaces = [] if envelope is None else list(envelope.surfaces.values())
    if any(is_surely(lambda each=each: surface_kind(case, each) == "floor") for each in surfaces):  # type: ignore[misc]
        items.append("floor")
    if house.foundation == "slab" or (envelope is not None and envelope.slabs):
        items.append("slab")
    if house.foundation == "basement" or (envelope is not None and envelope.below_grade_walls):
        items.append("basement_wall")
    if ducts_outside(case):
        items.append("duct")
    if any(is_surely(partial(is_duct_test_asked, case, system)) for system in house_air_systems(case)):
        items.append("duct_leakage")
    if any(unit.kind in ("furnace", "boiler") and unit.fuel != "electric" for unit in units):
        items.append("afue")
    pumps = any(is_heat_pump(case, unit) for unit in units)
    if pumps or any(is_conditioner(case, unit) or unit.kind in HEADS for unit in units):
        items.append("seer2")
    if pumps:
        items.append("hspf2")
    return items + items_of_the_path(case)


def items_of_the_path(case: Case) -> list[str]:
    """Code edition and path of compliance since 2021, additional measures since 2024."""
    items = []
    for key, names in (("certificate-path", ["code", "code_path"]), ("certificate-measures", ["measures"])):
        try:
            case.codebook.require(key)
        except (Missing, NotApplicable):
            continue
        if names != ["measures"] or energy_paper(case).measures:
            items += names
    return items


@quantity()
def left_out(case: Case, certificate: EnergyCertificate) -> list[str]:
    """What the certificate should state and does not, in words. Raises Missing for what the file does not tell."""
    if certificate_of(case) is None:
        if {"papers", certificate.path} & case.design.stated_none:
            return ["everything: there is none"]
        raise Missing(certificate.path)
    lacking, absent = [], []
    for item in wanted_items(case):
        fields = (item, OLDER[item]) if item in OLDER else (item,)
        if any(case.speaks_of(certificate, field) and case.maybe(certificate, field) is not None for field in fields):
            continue
        if item in certificate.leaves_out:
            lacking.append(WORDS[item])
        else:
            absent.append(path_of(certificate, item))
    if absent and not lacking:
        raise Missing(*absent)
    return lacking


def blank_certificate() -> EnergyCertificate:
    """An empty certificate, for a file without one."""
    return blank(EnergyCertificate, "papers.certificate")
