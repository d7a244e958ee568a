"""Sham requirements for sham rules."""

import pytest

from checker.codebook_table import ENTRIES
from tests.outputs import sham_rules


@pytest.fixture(autouse=True)
def sham_requirements(monkeypatch: pytest.MonkeyPatch) -> None:
    for key, entry in sham_rules.ENTRIES.items():
        monkeypatch.setitem(ENTRIES, key, entry)
