"""No rule of severity correction rests on a number of the formulas that is recalled or mere practice, but for reasons given."""

from functools import cache

import pytest

from checker.judge import modules
from checker.physics.basis import BASIS
from tests.published.basis import WEAK, basis_of, constant_of, own_basis
from tests.published.reach import Place, program, reached
from tests.rules.case_files import rule_of

TABLE = "the finding takes the greater of the maker's points beside the place that is read, so no straight line can cause it"
LOW = "only the lower bound of what the ducts take is held against the fan, beside a margin for the method; "
DUCT = {
    "fittings.COEFFICIENTS": "recalled ones bound a tight turn from above; what counts in the lower bound, the entries, is printed",
    "fittings.contraction_coefficient": LOW + "a change of size counts in it as a gradual one, a fraction of the abrupt",
    "devices.EXPONENTS": LOW + "a filter counts in it by the lower of its bounds, or at the airflow that its drop is stated for",
    "devices.LOWEST_EXPONENT": "laminar flow: no filter's drop grows slower than its airflow",
    "devices.HIGHEST_EXPONENT": "turbulent flow: no filter's drop grows faster than the square of its airflow",
    "flexible.CARELESS_COMPRESSION": "bounds flexible duct from above, which only a pass rests on",
    "flexible.flexible_friction_bounds": "bounds flexible duct from above, which only a pass rests on",
    "flexible.EXHAUST_TABLE_ROUGHNESS": LOW + "it is that of duct pulled tight, smoother than what the handbook prints",
    "flexible.with_sag": LOW + "it turns a stated sag into compression within the sag that the trade's standard allows",
    "friction.ROUGHNESS_BY_MATERIAL": LOW + "where the material leaves it open the smoothest counts in it",
}
NEXT_SIZE = "only the size that the help suggests comes from the formula; the finding rests on the table that the code prints"
REASONS: dict[tuple[str, str], str] = {
    **{("DUCT-01", key): why for key, why in DUCT.items()},
    **{("EXH-12", f"exhaust_length.{name}"): NEXT_SIZE for name in (
        "FLEX_ROUGHNESS", "NO_LIMIT_ABOVE", "SMOOTH_ROUGHNESS", "TERMINAL_ALLOWANCE", "allowed_length")},
    **{(code, key): TABLE for code in ("EQUIP-01", "EQUIP-12", "ENER-09")
       for key in ("heat_pump.value_at", "entering_air.at_entering")},
    **{(code, key): "terms that rest on it are left out of the load that a finding is held against"
       for code in ("EQUIP-01", "EQUIP-12")
       for key in ("assemblies.USUAL_BOARDS", "ground.AMPLITUDE", "ground.FLOOR_RESISTANCE")},
    ("REFR-01", "condensation.FOAM_CONDUCTIVITY"): "only the thickness that the help suggests comes from it",
    ("REFR-12", "refrigerant.area_by_mixing"): "a room between both formulas is not judged; a finding is below the first",
    ("VENT-05", "ventilation_rate.LONGEST_AVERAGED_CYCLE"): "beyond it the rule does not judge",
    ("VENT-05", "ventilation_rate.infiltration_credit"): "where a recalled form decides, the rule does not judge",
}  # fmt: skip
"""(rule, constant or function that holds coefficients): why it cannot turn the verdict into a finding."""


@cache
def graph() -> dict[Place, set[Place]]:
    return program()


def is_weak(key: str) -> bool:
    """Whether a constant, or any entry of one whose entries name their own source, is recalled or mere practice."""
    if BASIS[key] == "each":
        return any(own_basis(each.source) in WEAK for each in constant_of(key).values())
    return basis_of(BASIS[key])[0] in WEAK


def corrections() -> list[tuple[str, str]]:
    """Code and module of every rule whose finding is a correction."""
    return [(code, name) for code, name in modules() if rule_of(code).severity == "correction"]


def weak_of(module: str) -> set[str]:
    """The recalled constants that a rule leads to."""
    found = {f"{place.rpartition('.')[2]}.{name}" for place, name in reached(graph(), (module, "RULE"))
             if place.startswith("checker.physics.")}  # fmt: skip
    return {key for key in found & set(BASIS) if is_weak(key)}


def test_the_trace_follows_rules_down_to_constants() -> None:
    assert len(corrections()) > 100
    found = {name for _, name in reached(graph(), ("rules.equipment.equip_01_heating_below_load", "RULE"))}
    assert {"group_heating_load", "surface_u", "USUAL_BOARDS", "design_infiltration"} <= found
    assert "internal_latent" not in found


@pytest.mark.parametrize(("code", "module"), corrections(), ids=lambda each: str(each) if "." not in str(each) else "")
def test_no_correction_rests_on_recalled_numbers(code: str, module: str) -> None:
    assert sorted(key for key in weak_of(module) if (code, key) not in REASONS) == []


def test_every_reason_is_still_needed() -> None:
    needed = {(code, key) for code, module in corrections() for key in weak_of(module)}
    assert sorted(set(REASONS) - needed) == []
    assert all(len(why) > 20 for why in REASONS.values())
