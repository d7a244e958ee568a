"""A duct in or under the ground is not built for it.

Underground ducts rust, float, fill with water and cannot be mended. They are of concrete, clay, metal or plastic.
Metal is coated, or encased in 2 in of concrete; plastic carries air of 150 degF at most; factory-made flexible
duct and duct board do not go into the ground or into concrete. All slope to a drain that can be reached.

Best keep ducts out of the ground. Otherwise name the coating or casing, the fall, and test before they are buried.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.airway import Run
from checker.quantities.duct_exposure import GROUND
from checker.quantities.duct_scope import systems
from checker.rule import Finding, Meets, Rule

UNFIT = ("flexible", "semi-rigid aluminum", "duct board", "gypsum", "framing cavity")
PLASTICS = ("rigid plastic", "pvc")
METALS = ("galvanized steel", "stainless steel", "aluminum", "copper", "unknown metal", "lined steel")


def ground_runs(case: Case) -> list[Run]:
    """Runs under the ground or in a slab."""
    runs = [run for system in systems(case) for run in system.runs.values()]
    return [run for run in runs if GROUND & set(run.location)]


@quantity()
def material(case: Case, run: Run) -> str:
    """What it is made of."""
    return str(case.get(run, "material"))


@quantity("slope")
def fall(case: Case, run: Run) -> float | None:
    """Fall toward the drain; None where the material is wrong anyway."""
    if material(case, run) in UNFIT:
        return None
    return float(case.get(run, "slope"))


@quantity("length")
def casing(case: Case, run: Run) -> float | None:
    """Concrete around a metal duct; None where it is protected otherwise, or of another material."""
    if material(case, run) not in METALS or case.maybe(run, "corrosion_protected"):
        return None
    stated = case.maybe(run, "encasement")
    if stated is None and run.corrosion_protected is None:
        raise Missing(path_of(run, "corrosion_protected"))
    return float(stated or 0.0)


@quantity("temperature")
def hottest_in_plastic(case: Case, run: Run) -> float | None:
    """Hottest air in a plastic duct, of the run or of its system; None for other materials."""
    if material(case, run) not in PLASTICS:
        return None
    stated = case.maybe(run, "air_temperature")
    hottest = case.maybe(run.up, "greatest_supply_temperature")
    known = [each for each in (stated, hottest) if each is not None]
    if not known:
        raise Missing(path_of(run.up, "greatest_supply_temperature"))
    return float(max(known))


def check(
    run: Run, made_of: str, slope: float | None, concrete: float | None, hottest: float | None, least: float, most: float
) -> Meets | Finding:
    """Material, casing, temperature and fall."""
    if made_of in UNFIT:
        return Finding(
            f"{run.name} is {{material}} in or under the ground",
            at="material",
            help="move it out of the ground, or use coated metal or plastic made for burial",
        )
    if concrete is not None and concrete < least:
        return Finding(
            f"{run.name} is underground metal, not protected from corrosion, in {{casing}} of concrete, not "
            "{underground_encasement}",
            at="corrosion_protected",
            help="use coated duct made for burial, or encase it in {underground_encasement} of concrete all around",
        )
    if hottest is not None and hottest > most:
        return Finding(
            f"{run.name} is underground plastic with air up to {{hottest_in_plastic}}, over {{underground_plastic_temperature}}",
            at="material",
            help="use coated metal, or equipment that limits its supply air to {underground_plastic_temperature}",
        )
    if slope is not None and slope <= 0.0:
        return Finding(
            f"{run.name} lies level underground and cannot drain",
            at="slope",
            help="slope it to a drainage point that can be reached",
        )
    return Meets()


RULE = Rule(
    code="DUCT-41", name="duct-unfit-for-the-ground", severity="correction", since="0.1",
    over=ground_runs, needs=(material, fall, casing, hottest_in_plastic),
    limits=("underground-encasement", "underground-plastic-temperature"), cites=("underground-duct",), check=check,
    nothing="no duct runs in or under the ground", answers=("F08",),
)  # fmt: skip
