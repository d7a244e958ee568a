"""Runs the program in this process, as a user would see it."""

import contextlib
import io
import os
from collections.abc import Iterator
from pathlib import Path

from checker.cli import main

ROOT = Path(__file__).parents[1]
DAY = "2026-11-24"


class Stream(io.TextIOWrapper):
    """A text stream that keeps its bytes."""

    def __init__(self) -> None:
        super().__init__(io.BytesIO(), encoding="utf-8", write_through=True)

    def text(self) -> str:
        self.flush()
        data = self.buffer.getvalue()  # type: ignore[attr-defined]
        return str(data.decode("utf-8"))


@contextlib.contextmanager
def at_root() -> Iterator[None]:
    """From the root of the project, on a fixed day."""
    before, day = os.getcwd(), os.environ.get("AIRTALLY_TODAY")
    os.chdir(ROOT)
    os.environ["AIRTALLY_TODAY"] = DAY
    try:
        yield
    finally:
        os.chdir(before)
        if day is None:
            del os.environ["AIRTALLY_TODAY"]
        else:
            os.environ["AIRTALLY_TODAY"] = day


def shown(*arguments: str) -> tuple[int, str, str]:
    """Exit status, standard output and standard error of `airtally ARGUMENTS`."""
    out, error = Stream(), Stream()
    with at_root(), contextlib.redirect_stdout(out), contextlib.redirect_stderr(error):
        try:
            status = main(list(arguments))
        except SystemExit as ending:
            status = int(ending.code or 0)
    return status, out.text(), error.text()
