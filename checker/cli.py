"""The command line: thin; every command calls one function elsewhere."""

import gc
import os
import sys
from typing import NoReturn

from checker import bundle


class Options:
    """What was asked for: the values that `check` takes when no option is given, and whatever was given."""

    def __init__(self, **given: object) -> None:
        self.command = ""
        self.topic = ""
        self.paths: list[str] = []
        self.name = "-"
        self.format = "text"
        self.fail_on = "correction"
        self.complete = False
        self.only: list[str] = []
        self.without: list[str] = []
        self.units = "trade"
        self.color = "auto"
        self.__dict__.update(given)


def read_options(arguments: list[str]) -> Options:
    """The options of a command line; `check FILE...` without options needs no argparse."""
    if len(arguments) > 1 and arguments[0] == "check" and not any(each.startswith("-") for each in arguments):
        return Options(command="check", paths=arguments[1:])
    from checker.command_line import parser

    return Options(**vars(parser().parse_args(arguments)))


def main(arguments: list[str] | None = None) -> int:
    """Run a command and return its exit status."""
    gc.disable()
    bundle.use()
    try:
        return run(read_options(sys.argv[1:] if arguments is None else arguments))
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except KeyboardInterrupt:
        return 130
    except Exception as fault:
        return broken(fault)


def command() -> NoReturn:
    """The command as a process: it ends at once, for taking hundreds of modules apart serves nobody."""
    status = main()
    sys.stdout.flush()
    sys.stderr.flush()
    os._exit(status)


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


def run(options: Options) -> int:
    """Call the function behind a command."""
    if options.command == "check":
        return check(options)
    if options.command == "worksheet":
        return worksheet(options)
    if options.command == "tally":
        return tally(options)
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


def check(options: Options) -> int:
    """Judge the designs and print the report in the format asked for."""
    from checker.judge import waiting
    from checker.run import check_reading, exit_status, numbered

    chosen = waiting(selection(options))
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


def worksheet(options: Options) -> int:
    """Print how every number of one design was worked out."""
    from checker.judge import rules
    from checker.outputs.worksheet import report
    from checker.run import check_reading

    chosen = rules(selection(options))
    day = today()
    checked = [check_reading(reading, chosen, day, tracing=True) for reading in read_all(options)]
    put("\n".join(report(each, options.units) for each in checked), sys.stdout)
    return 2 if any(each.unreadable for each in checked) else 0


def tally(options: Options) -> int:
    """Print the figures of the designs on a page each."""
    from checker.outputs.tally.sections import SECTIONS
    from checker.run import check_reading, numbered

    chosen = [word.strip().lower() for each in options.only for word in each.split(",") if word.strip()]
    for word in chosen:
        if word not in SECTIONS:
            stop(f"`{word}` is no section of the tally: {', '.join(SECTIONS)}")
    day = today()
    checked = numbered([check_reading(reading, [], day) for reading in read_all(options)])
    if options.format == "json":
        from checker.outputs.tally.as_json import report as report_json

        text, broke = report_json(checked, chosen, options.units)
    else:
        from checker.outputs.tally.page import report

        pages = [report(each, chosen, options.units) for each in checked]
        text, broke = "\n".join(page for page, _ in pages), any(broken for _, broken in pages)
    put(text, sys.stdout)
    return 2 if broke or any(each.unreadable for each in checked) else 0


def read_all(options: Options) -> list["Reading"]:  # type: ignore[name-defined]  # noqa: F821
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


def selection(options: Options) -> "Callable[[str, str], bool] | None":  # type: ignore[name-defined]  # noqa: F821
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
    """Whether to color: when asked to, or on a terminal where NO_COLOR is not set."""
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
    command()
