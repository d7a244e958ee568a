"""What a YAML parser's complaint means, in plain words, and what to write instead."""

import re

from checker.record import Record


class Explanation(Record):
    """A complaint in plain words. `at_opening`: the place to show is where the construct began."""

    name: str
    message: str
    help: str
    at_opening: bool = False


_QUOTE_IT = "put the value in quotes"
_TAB = Explanation("tab-character", "a tab is used for indentation", "indent with spaces")
_SECOND_COLON = Explanation(
    "yaml-syntax",
    "a second `: ` stands on one line",
    "put the value in quotes, or start a new line for the second key",
)
_MISFIT_KEY = Explanation(
    "yaml-syntax",
    "this key does not fit the line above it",
    "check that the two are aligned, and that the line above has a space after its colon",
)
_QUOTE_ENDS_EARLY = Explanation(
    "yaml-syntax",
    "the quote ends before the value does",
    "drop the quotes, or quote all of it: single quotes may hold inch marks, "
    "double quotes may hold foot marks",
)
_MISALIGNED = Explanation(
    "yaml-syntax",
    "this does not fit the lines above it",
    "align it with its neighbors, with spaces",
)
_NOT_AN_ITEM = Explanation(
    "yaml-syntax",
    "a line among the items of a list is not an item",
    "start it with `- `, or align it with the key that it belongs to",
)
_ESCAPE = Explanation(
    "yaml-syntax",
    "a backslash inside double quotes starts a code that does not exist",
    "use single quotes, or write two backslashes",
)
# Looked up in the parser's complaint in this order: (pattern, explanation). Both parsers' wordings.
_COMPLAINTS: tuple[tuple[str, Explanation], ...] = (
    (
        r"found unexpected end of stream",
        Explanation("yaml-syntax", "the quote that opens here is never closed", "close the quote", True),
    ),
    (
        r"document separator",
        Explanation(
            "yaml-syntax",
            "a line of three hyphens or dots stands inside the quote that opens here",
            "close the quote",
            True,
        ),
    ),
    (r"unknown escape|hexdecimal|escape code|too large to convert|chr\(\) arg", _ESCAPE),
    (
        r"expected ',' or '\]'|expected ',' or '\}'",
        Explanation(
            "yaml-syntax",
            "the bracket that opens here is not closed, or a comma is missing after it",
            "separate with commas, and close it with the bracket of the same kind",
            True,
        ),
    ),
    (
        r"could not find expected ':'",
        Explanation(
            "yaml-syntax",
            "this line is neither a key with its value nor an item of a list",
            "write `key: value`, with a space after the colon",
            True,
        ),
    ),
    (
        r"sequence entries are not allowed",
        Explanation(
            "yaml-syntax",
            "an item of a list cannot start here",
            "start each `- ` on a line of its own, or write the list as [a, b]",
        ),
    ),
    (
        r"mapping keys are not allowed",
        Explanation("yaml-syntax", "a value cannot start with `? `", _QUOTE_IT),
    ),
    (
        r"while scanning a block scalar",
        Explanation(
            "yaml-syntax",
            "a value cannot start with `>` or `|` and go on in the same line",
            _QUOTE_IT,
            True,
        ),
    ),
    (
        r"while scanning an alias",
        Explanation("yaml-syntax", "a value cannot start with `*`", _QUOTE_IT, True),
    ),
    (
        r"while scanning an anchor",
        Explanation("yaml-syntax", "a value cannot start with `&`", _QUOTE_IT, True),
    ),
    (
        r"tag handle|(?:scanning|parsing) an? (?:tag|%TAG)",
        Explanation("yaml-syntax", "a value cannot start with `!`", _QUOTE_IT, True),
    ),
    (
        r"directive",
        Explanation("yaml-syntax", "a line cannot start with `%`", _QUOTE_IT, True),
    ),
    (
        r"document start",
        Explanation("yaml-syntax", "text follows after the end of the design", "remove it, or align it"),
    ),
)


def explain(problem: str, context: str, line: str, column: int) -> Explanation:
    """Say in plain words what a parser means.

    `problem` and `context` are the parser's words; `line` is the source line at which it stopped
    and `column` how many characters it had read of it (0 is the start of the line).
    """
    before, at = line[:column], line[column : column + 1]
    if "\t" in line[: len(line) - len(line.lstrip())]:
        return _TAB
    if "cannot start any token" in problem:
        mark = "a backtick" if at == "`" else f"`{at}`"
        return Explanation("yaml-syntax", f"a value cannot start with {mark}", _QUOTE_IT)
    if "mapping values are not allowed" in problem:
        return _SECOND_COLON if re.search(r"\S:\s", before) else _MISFIT_KEY
    if "expected <block end>" in problem or "did not find expected key" in problem:
        return _NOT_AN_ITEM if "block collection" in context else _after_value(before)
    if "node content" in problem:
        return _no_value(at)
    complaint = f"{context} {problem}"
    for pattern, explanation in _COMPLAINTS:
        if re.search(pattern, complaint):
            return explanation
    words = re.sub(r"\s+", " ", problem).strip() or "the parser gives no reason"
    return Explanation("yaml-syntax", f"the YAML cannot be read here: {words}", "check the line")


def _after_value(before: str) -> Explanation:
    if re.search(r"""["']\s*$""", before):
        return _QUOTE_ENDS_EARLY
    if re.search(r"(?:^|\s)\*\S+\s*$", before):
        return Explanation("yaml-syntax", "a value cannot start with `*`", _QUOTE_IT)
    return _MISALIGNED


def _no_value(at: str) -> Explanation:
    if at.strip():
        return Explanation("yaml-syntax", f"`{at}` stands where a value is expected", _QUOTE_IT)
    return Explanation("yaml-syntax", "a value is missing here", "write the value, or `tbd`")
