"""What can be wrong with a design file itself, before any rule looks at the design."""


from checker.fault_kinds import FAULTS as FAULTS
from checker.fault_kinds import FaultKind as FaultKind
from checker.record import Record


class Fault(Record):
    """Something wrong with the file itself.

    `path` is "" for the whole file. Lines and columns start at 1 and count code points; the end
    column is one past the last character. `fatal` says that nothing in the file can be judged.
    """

    code: str
    path: str
    message: str
    help: str
    line: int
    column: int
    end_line: int
    end_column: int
    fatal: bool


START = (1, 1, 1, 1)
CODES: dict[str, str] = {kind.name: code for code, kind in FAULTS.items()}
_LONGEST_ECHO = 60


def fault(
    name: str,
    path: str,
    place: tuple[int, int, int, int],
    message: str,
    help: str = "",
    *,
    fatal: bool = False,
) -> Fault:
    """Make a fault of the kind that is called `name` (KeyError if there is none)."""
    return Fault(CODES[name], path, message, help, *place, fatal)


def shown(text: str) -> str:
    """Put a piece of the file into a message: in backticks, on one line, shortened if long."""
    line = "".join(mark if mark.isprintable() else "?" for mark in text[: _LONGEST_ECHO + 1])
    return f"`{line}`" if len(text) <= _LONGEST_ECHO else f"`{line[:_LONGEST_ECHO]}...`"
