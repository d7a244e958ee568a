"""The command line as it can be written, read by argparse.

Kept apart from cli.py because argparse takes longer to import than a design to read: the plainest form of the
command, `airtally check FILE...`, does without it.
"""

import argparse

from checker import __version__

CAUTION = (
    "airtally is an aid. It defers to the locally adopted code, the authority having jurisdiction, makers'\n"
    "instructions and licensed practice. Gas, carbon monoxide, refrigerant and electricity can kill: have that\n"
    "work designed and done by licensed people."
)
EXIT_CODES = (
    "exit status: 0 nothing at or above --fail-on; 1 findings; 2 something could not be read or judged"
)


def parser() -> argparse.ArgumentParser:
    """The command line as it can be written."""
    form = argparse.RawDescriptionHelpFormatter
    top = argparse.ArgumentParser(
        prog="airtally", formatter_class=form, epilog=f"{EXIT_CODES}\n\n{CAUTION}",
        description="Checks a house's mechanical design while it is a sketch and a YAML file.",
    )  # fmt: skip
    top.add_argument("--version", action="version", version=f"airtally {__version__} (design_format 1)")
    commands = top.add_subparsers(dest="command", metavar="COMMAND", required=True)

    check = commands.add_parser("check", formatter_class=form, help="judge designs and number the findings",
                                epilog=EXIT_CODES)  # fmt: skip
    check.add_argument(
        "paths", nargs="+", metavar="PATH", help="design files, folders of them, or - for standard input"
    )
    check.add_argument("--name", default="-", help="file name to show for standard input")
    check.add_argument("--format", choices=("text", "json", "sarif", "junit"), default="text")
    check.add_argument("--fail-on", choices=("correction", "caution", "note", "never"), default="correction",
                       help="least severity that makes the exit status 1 (default: correction)")  # fmt: skip
    check.add_argument(
        "--complete", action="store_true", help="also exit with 1 while information is missing"
    )
    add_choice(check)
    add_looks(check)

    sheet = commands.add_parser(
        "worksheet", help="show how each number was worked out: formula, inputs, result, source"
    )
    sheet.add_argument("paths", nargs=1, metavar="DESIGN", help="a design file, or - for standard input")
    sheet.add_argument("--name", default="-", help="file name to show for standard input")
    add_choice(sheet)
    add_looks(sheet)

    add_tally(commands)

    explain = commands.add_parser(
        "explain", help="show the page of a rule, or the keys of a section of the file"
    )
    explain.add_argument(
        "topic", metavar="CODE|NAME|SECTION", help="VENT-12, supply-and-exhaust-differ, fans, ducts.runs"
    )

    catalogue = commands.add_parser("catalogue", help="list every rule")
    catalogue.add_argument("--format", choices=("text", "json"), default="text")
    return top


def add_tally(commands: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """The command `tally`."""
    tally = commands.add_parser("tally", help="the figures of the house on a page: loads, equipment, air, ducts, energy")
    tally.add_argument("paths", nargs="+", metavar="DESIGN", help="design files, folders of them, or - for standard input")
    tally.add_argument("--name", default="-", help="file name to show for standard input")
    tally.add_argument("--only", action="append", default=[], metavar="SECTION,...",
                       help="only these: heating, cooling, equipment, air, ducts, rooms, year")  # fmt: skip
    tally.add_argument("--format", choices=("text", "json"), default="text")
    tally.add_argument("--units", choices=("trade", "metric"), default="trade", help="units of the output")


def add_choice(command: argparse.ArgumentParser) -> None:
    """Which rules to run."""
    command.add_argument("--only", action="append", default=[], metavar="RULE,...",
                         help="run only these areas, codes or names (VENT, EXH-02, supply-and-exhaust-differ)")  # fmt: skip
    command.add_argument("--without", action="append", default=[], metavar="RULE,...", help="leave these out")


def add_looks(command: argparse.ArgumentParser) -> None:
    """How numbers and colors look."""
    command.add_argument("--units", choices=("trade", "metric"), default="trade", help="units of the output")
    command.add_argument("--color", choices=("auto", "always", "never"), default="auto")
