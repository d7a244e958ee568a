"""Options of the test run."""

import pytest


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption(
        "--update-expected", action="store_true", help="write the expected outputs of samples and README anew"
    )
