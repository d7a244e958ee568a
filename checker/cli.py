"""The command line: thin; every command calls one function elsewhere."""

import argparse
import gc
import os
import sys
from typing import NoReturn

from checker import __version__, bundle

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

    explain = commands.add_parser(
        "explain", help="show the page of a rule, or the keys of a section of the file"
    )
    explain.add_argument(
        "topic", metavar="CODE|NAME|SECTION", help="VENT-12, supply-and-exhaust-differ, fans, ducts.runs"
    )

    catalogue = commands.add_parser("catalogue", help="list every rule")
    catalogue.add_argument("--format", choices=("text", "json"), default="text")
    return top


def add_choice(command: argparse.ArgumentParser) -> None:
    """Which rules to run."""
    command.add_argument("--only", action="append", default=[], metavar="RULE,...",
                         help="run only these areas, codes or names (VENT, EXH-02, supply-and-exhaust-differ)")  # fmt: skip
    command.add_argument("--without", action="append", default=[], metavar="RULE,...", help="leave these out")


def add_looks(command: argparse.ArgumentParser) -> None:
    """How numbers and colours look."""
    command.add_argument("--units", choices=("trade", "metric"), default="trade", help="units of the output")
    command.add_argument("--color", choices=("auto", "always", "never"), default="auto")


def main(arguments: list[str] | None = None) -> int:
    """Run a command and return its exit status."""
    gc.disable()
    bundle.use()
    try:
        return run(parser().parse_args(arguments))
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except KeyboardInterrupt:
        return 130
    except Exception as fault:
        return broken(fault)


def broken(fault: Exception) -> int:
    """Say what broke, and where, in a line that can be reported; the status is that of a run that did not judge."""
    if isinstance(fault, OSError):
        sys.stderr.write(f"airtally: {fault}\n")
        return 2
    frame = fault.__traceback__
    while frame is not None and frame.tb_next is not None:
        frame = frame.tb_next
    where = f" at {os.path.basename(frame.tb_frame.f_code.co_filename)}:{frame.tb_lineno}" if frame else ""
    said = f"airtally: {type(fault).__name__}: {fault}{where}; this is a fault of airtally, please report it\n"
    sys.stderr.write(said)
    return 2


def run(options: argparse.Namespace) -> int:
    """Call the function behind a command."""
    if options.command == "check":
        return check(options)
    if options.command == "worksheet":
        return worksheet(options)
    if options.command == "explain":
        from checker.outputs.page import explain, unknown

        text = explain(options.topic)
        if not text:
            stop(unknown(options.topic))
        put(text, sys.stdout)
        return 0
    from checker.outputs.catalogue import catalogue

    put(catalogue(options.format), sys.stdout)
    return 0


def check(options: argparse.Namespace) -> int:
    """Judge the designs and print the report in the format asked for."""
    from checker.judge import rules
    from checker.run import check_reading, exit_status, numbered

    chosen = rules(selection(options))
    readings = read_all(options)
    day = today()
    checked = numbered([check_reading(reading, chosen, day) for reading in readings])
    if options.format == "text":
        from checker.outputs.text import report

        text = report(checked, options.units, colored(options.color))
    elif options.format == "json":
        from checker.outputs.json_report import report as report_json

        text = report_json(checked, options.units)
    elif options.format == "sarif":
        from checker.outputs.sarif import report as report_sarif

        text = report_sarif(checked, options.units)
    else:
        from checker.outputs.junit import report as report_junit

        text = report_junit(checked, options.units)
    put(text, sys.stdout)
    return exit_status(checked, options.fail_on, options.complete)


def worksheet(options: argparse.Namespace) -> int:
    """Print how every number of one design was worked out."""
    from checker.judge import rules
    from checker.outputs.worksheet import report
    from checker.run import check_reading

    chosen = rules(selection(options))
    day = today()
    checked = [check_reading(reading, chosen, day, tracing=True) for reading in read_all(options)]
    put("\n".join(report(each, options.units) for each in checked), sys.stdout)
    return 2 if any(each.unreadable for each in checked) else 0


def read_all(options: argparse.Namespace) -> list["Reading"]:  # type: ignore[name-defined]  # noqa: F821
    """Readings of what was named; standard input is read once."""
    from checker.read import Reading, read_file, read_text
    from checker.run import design_files

    def read(path: str) -> Reading:
        if path != "-":
            return read_file(path)
        try:
            text = sys.stdin.buffer.read().decode("utf-8-sig")
        except UnicodeDecodeError as fault:
            stop(f"{options.name}: standard input is not UTF-8 text (byte {fault.start + 1})")
        return read_text(text, options.name)

    readings = design_files(options.paths, read)
    if not readings:
        stop(f"no design file found in {', '.join(options.paths)}: a design file says `design_format: 1`")
    return readings


def selection(options: argparse.Namespace) -> "Callable[[str, str], bool] | None":  # type: ignore[name-defined]  # noqa: F821
    """Whether a rule is wanted, by area, code or name; stops at a word that is none of them."""
    from checker.judge import modules

    only = [word.strip() for each in options.only for word in each.split(",") if word.strip()]
    without = [word.strip() for each in options.without for word in each.split(",") if word.strip()]
    if not only and not without:
        return None
    known = {name for code, module in modules() for name in names(code, module)}
    for word in (*only, *without):
        if word.lower() not in known:
            from checker.design.nearest import nearest

            stop(
                f"`{word}` is no area, code or name of a rule: {nearest(word.lower(), sorted(known), 'rules')}"
            )
    wanted = {word.lower() for word in only}
    unwanted = {word.lower() for word in without}

    def chosen(code: str, name: str) -> bool:
        mine = {code.lower(), name, code.partition("-")[0].lower()}
        return (not wanted or bool(mine & wanted)) and not mine & unwanted

    return chosen


def names(code: str, module: str) -> tuple[str, str, str]:
    """Area, code and name of a rule, in lower case."""
    return (
        code.partition("-")[0].lower(),
        code.lower(),
        module.rpartition(".")[2].split("_", 2)[2].replace("_", "-"),
    )


def colored(choice: str) -> bool:
    """Whether to colour: when asked to, or on a terminal where NO_COLOR is not set."""
    return choice == "always" or (choice == "auto" and sys.stdout.isatty() and "NO_COLOR" not in os.environ)


def today() -> str:
    """The date, for acceptances that end; AIRTALLY_TODAY sets it for repeatable runs."""
    import time

    return os.environ.get("AIRTALLY_TODAY") or time.strftime("%Y-%m-%d")


def put(text: str, stream: "TextIO") -> None:  # type: ignore[name-defined]  # noqa: F821
    """Write text as UTF-8, whatever the terminal's encoding is."""
    stream.flush()
    stream.buffer.write(text.encode("utf-8", "backslashreplace"))
    stream.flush()


def stop(message: str) -> NoReturn:
    """Say why nothing could be done, and end with status 2."""
    sys.stderr.write(f"airtally: {message}\n")
    raise SystemExit(2)


if __name__ == "__main__":
    sys.exit(main())
