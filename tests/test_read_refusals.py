"""What a design file may not hold: each refusal with its place, counted by hand, and what is kept."""

import subprocess
import sys

import pytest

from checker.faults import CODES, FAULTS, Fault
from checker.read import Reading, read_text


def names(reading: Reading) -> list[str]:
    return [FAULTS[one.code].name for one in reading.faults]


def only(text: str, name: str) -> Fault:
    reading = read_text(text, "house.yaml")
    assert names(reading) == [name], reading.faults
    fault = reading.faults[0]
    assert fault.message[0].islower() or fault.message[0] == "`"
    assert "\n" not in fault.message
    assert not fault.message.endswith(".")
    assert (reading.data == {}) is fault.fatal or not fault.fatal
    return fault


def test_duplicate_key_names_the_line_of_the_first_and_keeps_it() -> None:
    text = "rooms:\n  bath: {use: bathroom}\n  'bath': {use: kitchen, use: 012}\n"
    reading = read_text(text, "")
    assert names(reading) == ["duplicate-key", "number-trap"]
    assert "line 2" in reading.faults[0].message
    assert reading.faults[0][4:8] == (3, 3, 3, 9)
    assert reading.faults[0].path == "rooms.bath"
    assert reading.data == {"rooms": {"bath": {"use": "bathroom"}}}


@pytest.mark.parametrize(
    ("text", "name", "path", "place", "data"),
    [
        ("a: &x 1\n", "alias-or-anchor", "a", (1, 4, 1, 6), {"a": 1}),
        ("a: [1, *x]\n", "alias-or-anchor", "a[1]", (1, 8, 1, 10), {"a": [1, None]}),
        ("a: !mm 5\nb: 1\n", "tag", "a", (1, 4, 1, 7), {"b": 1}),
        ("a: !!str 012\n", "tag", "a", (1, 4, 1, 9), {}),
        ("a: !!map {b: 1}\n", "tag", "a", (1, 4, 1, 9), {"a": {"b": 1}}),
        ("a: {<<: *x, b: 1}\n", "merge-key", "a", (1, 5, 1, 7), {"a": {"b": 1}}),
        ("%YAML 1.1\n---\na: no\n", "directive", "", (1, 1, 1, 10), {"a": "no"}),
        ("# c\n\n%TAG ! tag:x,2000:\n---\na: 1\n", "directive", "", (3, 1, 3, 19), {"a": 1}),
        ("%YAML 9.9\r\n---\r\na: 1\r\n", "directive", "", (1, 1, 1, 10), {"a": 1}),
        ("a:\n- 1\n- 012\n- 3\n", "number-trap", "a[1]", (3, 3, 3, 6), {"a": [1, None, 3]}),
        ("a: {b.c: {d: 1}, e: 2}\n", "bad-key", "a", (1, 5, 1, 8), {"a": {"e": 2}}),
        ("a[0]: 1\nb: 2\n", "bad-key", "", (1, 1, 1, 5), {"b": 2}),
        ("'': 1\nb: 2\n", "bad-key", "", (1, 1, 1, 3), {"b": 2}),
        ("[x, y]: {z: 1}\nb: 2\n", "bad-key", "", (1, 1, 1, 2), {"b": 2}),
        ("a: {b:1, c: 2}\n", "bad-key", "a.b:1", (1, 5, 1, 8), {"a": {"c": 2}}),
        ("? |\n  x\n  y\n: 1\nb: 2\n", "bad-key", "", (1, 3, 4, 1), {"b": 2}),
        ("k" * 121 + ": 1\nb: 2\n", "bad-key", "", (1, 1, 1, 122), {"b": 2}),
        ('a: "x\\e[31m"\nb: 2\n', "not-text", "a", (1, 4, 1, 13), {"b": 2}),
        ('"x\\0": 1\nb: 2\n', "not-text", "", (1, 1, 1, 6), {"b": 2}),
        ("a: 1\n---\nb: 1\n", "several-documents", "", (2, 1, 2, 4), {}),
        ("a: 1\n...\n---\nb: 1\n", "several-documents", "", (3, 1, 3, 4), {}),
        ("- a: 1\n", "not-a-mapping", "", (1, 1, 1, 2), {}),
        ("a:1\nb:2\n", "not-a-mapping", "", (1, 1, 2, 4), {}),
        ("", "empty-file", "", (1, 1, 1, 1), {}),
        ("# only this\n---\n", "empty-file", "", (1, 1, 1, 1), {}),
        ("a: x\x07y\n", "not-text", "", (1, 5, 1, 6), {}),
        ("a: 1\nb: '\ud800'\n", "not-text", "", (2, 5, 2, 6), {}),
        ("a: 1\rb: 2\n", "not-text", "", (1, 5, 1, 6), {}),
    ],
)  # fmt: skip
def test_refusals(text: str, name: str, path: str, place: tuple[int, ...], data: object) -> None:
    fault = only(text, name)
    assert (fault.path, tuple(fault[4:8])) == (path, place)
    assert read_text(text, "").data == data


def test_help_for_a_key_with_a_full_stop_writes_a_hyphen() -> None:
    assert only("fan.one[2]: {}\nb: 1\n", "bad-key").help == "write `fan-one-2`"


def test_depth_64_is_read_and_65_is_not() -> None:
    assert read_text("a: " + "[" * 63 + "]" * 63, "").faults == []
    fault = only("a: " + "[" * 64 + "]" * 64, "too-deep")
    assert fault.fatal
    assert tuple(fault[4:6]) == (1, 67)


def test_all_faults_of_a_file_come_in_one_run_in_order() -> None:
    text = "%YAML 1.2\n---\na: &x 1\nb: *x\nc: !t 3\nc: 1\nd: 012\ne.f: 1\n<<: *x\ng: 'open\n"
    reading = read_text(text, "")
    assert names(reading) == [
        "directive", "alias-or-anchor", "alias-or-anchor", "tag", "duplicate-key", "number-trap", "bad-key",
        "merge-key", "yaml-syntax",
    ]  # fmt: skip
    assert [one.line for one in reading.faults] == [1, 3, 4, 5, 6, 7, 8, 9, 10]
    assert reading.data == {}


HOSTILE = {
    "brackets": ("'[' * 100_000", "too-deep"),
    "braces": ("'{' * 100_000", "too-deep"),
    "hyphens": ("'- ' * 100_000", "too-deep"),
    "mappings": ("''.join(' ' * i + 'a:\\n' for i in range(1500))", "too-deep"),
    "aliases": ("'a: &a [x]\\nb: [' + '*a,' * 9 + ']\\n'", "alias-or-anchor"),
    "merges": ("'a: &a {b: 1}\\n' + 'c: {<<: [*a, *a]}\\n'", "merge-key"),
    "events": ("'a: [' + 'x,' * 400_000", "too-large"),
    "long keys": ("'? ' + 'k' * 1_000_000 + '\\n: [' + 'x,' * 50_000 + ']\\nb: 1'", "bad-key"),
    "long paths": ("''.join(' ' * i + 'k' * 100 + ':\\n' for i in range(40))", "bad-key"),
    "long tag": ("'a: !' + 'x' * 1_000_000 + ' [\\n'", "yaml-syntax"),
    "directives": ("'%A b\\n' * 100_000", "directive"),
    "digits": ("'a: ' + '9' * 100_000", "number-trap"),
}


@pytest.mark.skipif(sys.platform == "win32", reason="no limit on address space to set")
@pytest.mark.parametrize("case", HOSTILE)
def test_hostile_texts_are_refused_without_a_crash(case: str) -> None:
    text, name = HOSTILE[case]
    # Half a GiB of address space: growth out of proportion ends in a failure, not in swapping.
    program = (
        "import resource; resource.setrlimit(resource.RLIMIT_AS, (2**29, 2**29))\n"
        "from checker.read import read_text\n"
        f"print({{fault.code for fault in read_text({text}, '').faults}})"
    )
    done = subprocess.run(
        [sys.executable, "-c", program], capture_output=True, text=True, check=False, timeout=60
    )
    assert done.returncode == 0, done.stderr[-500:]
    assert CODES[name] in done.stdout
