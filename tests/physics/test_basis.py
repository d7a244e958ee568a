"""Every number of the formulas says in checker/physics/basis.py on what it rests, and the docstrings say the same."""

import ast
from importlib import import_module
from pathlib import Path

import pytest

from checker.codebook_source import BASES
from checker.physics.basis import BASIS
from tests.published.basis import basis_of, constant_of, values_in

FOLDER = Path(__file__).parents[2] / "checker" / "physics"
MODULES = sorted(file.stem for file in FOLDER.glob("*.py") if file.stem not in ("__init__", "basis"))
WEAK = ("from memory", "common practice")


def assigned(module: str) -> list[str]:
    """Names of the module's own constants that hold numbers."""
    names = []
    for node in ast.parse((FOLDER / f"{module}.py").read_text(encoding="utf-8")).body:
        targets = node.targets if isinstance(node, ast.Assign) else [node.target] if isinstance(node, ast.AnnAssign) else []
        names += [each.id for target in targets for each in ast.walk(target) if isinstance(each, ast.Name)]
    held = import_module(f"checker.physics.{module}")
    return [name for name in names if holds_numbers(getattr(held, name))]


def holds_numbers(constant: object) -> bool:
    """Whether a constant is a number or holds some; a type is none."""
    return isinstance(constant, int | float | dict | tuple) and bool(values_in(constant))


def weak_functions(module: str) -> list[str]:
    """Functions whose docstring says that a figure in them rests on memory or on common practice."""
    body = ast.parse((FOLDER / f"{module}.py").read_text(encoding="utf-8")).body
    found = [node for node in body if isinstance(node, ast.FunctionDef)]
    return [node.name for node in found if any(word in (ast.get_docstring(node) or "") for word in WEAK)]


@pytest.mark.parametrize("module", MODULES)
def test_every_constant_has_a_basis(module: str) -> None:
    assert [name for name in assigned(module) if f"{module}.{name}" not in BASIS] == []


def test_what_is_named_exists_and_has_a_known_basis() -> None:
    for key, text in BASIS.items():
        assert constant_of(key) is not None
        assert text == "each" or basis_of(text)[0] in (*BASES, "physics", "method"), key
        assert text == "each" or len(basis_of(text)[1]) > 3, key


# a formula of common practice without a number of its own, or with a constant that is listed, holds nothing to list
NO_NUMBER = {
    "condensate.flow_of_condensing_appliance", "devices.filter_face_area", "ground.ground_surface_temperature",
    "recovery.year_of_bins", "registers.free_velocity", "sizing.airflow_per_capacity",
    "sizing.altitude_factor", "transfer.undercut_area",
    "ventilation_energy.bins_of_whole_year", "ventilation_energy.recovery_with_imbalance",
    "ventilation_energy.simple_payback", "ventilation_rate.counted_flow",
}  # fmt: skip


@pytest.mark.parametrize("module", MODULES)
def test_a_function_that_owns_up_to_memory_or_practice_is_listed(module: str) -> None:
    named = {f"{module}.{name}" for name in weak_functions(module)}
    assert sorted(named - set(BASIS) - NO_NUMBER) == []
