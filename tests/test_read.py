"""Reading a design file. Places were counted by hand in the texts beside them."""

import os
import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checker import read
from checker.faults import CODES, FAULTS
from checker.read import MAX_SIZE, Place, Reading, read_file, read_text, source_line

HOUSE = """\
house: {floor_area: 1120 ft2, bedrooms: 2}
rooms:
  bath:   # the small one
    use: bathroom
    flows: [80 cfm, 'forty', ]
    fan:
accepted:
- rule: VENT-12
  path: "rooms.bath"
- note: |
    two
    lines
"""


def names(reading: Reading) -> list[str]:
    return [FAULTS[one.code].name for one in reading.faults]


def test_data_of_a_house() -> None:
    reading = read_text(HOUSE, "house.yaml")
    assert reading.faults == []
    assert reading.name == "house.yaml"
    assert reading.data == {
        "house": {"floor_area": "1120 ft2", "bedrooms": 2},
        "rooms": {"bath": {"use": "bathroom", "flows": ["80 cfm", "forty"], "fan": None}},
        "accepted": [{"rule": "VENT-12", "path": "rooms.bath"}, {"note": "two\nlines\n"}],
    }


@pytest.mark.parametrize(
    ("path", "place"),
    [
        ("house", (1, 1, 1, 6)), ("house.floor_area", (1, 9, 1, 19)), ("house.bedrooms", (1, 31, 1, 39)),
        ("rooms.bath", (3, 3, 3, 7)), ("rooms.bath.fan", (6, 5, 6, 8)), ("accepted[0].path", (9, 3, 9, 7)),
        ("accepted[1].note", (10, 3, 10, 7)),
    ],
)  # fmt: skip
def test_places_of_keys(path: str, place: tuple[int, ...]) -> None:
    assert read_text(HOUSE, "").keys[path] == place


@pytest.mark.parametrize(
    ("path", "place"),
    [
        ("house", (1, 8, 1, 9)), ("house.floor_area", (1, 21, 1, 29)), ("house.bedrooms", (1, 41, 1, 42)),
        ("rooms", (3, 3, 3, 7)), ("rooms.bath", (4, 5, 4, 8)), ("rooms.bath.use", (4, 10, 4, 18)),
        ("rooms.bath.flows", (5, 12, 5, 13)), ("rooms.bath.flows[0]", (5, 13, 5, 19)),
        ("rooms.bath.flows[1]", (5, 21, 5, 28)), ("rooms.bath.fan", (6, 5, 6, 8)), ("accepted", (8, 1, 8, 2)),
        ("accepted[0]", (8, 3, 8, 7)), ("accepted[0].path", (9, 9, 9, 21)),
        ("accepted[1].note", (10, 9, 10, 10)),
    ],
)  # fmt: skip
def test_places_of_values(path: str, place: tuple[int, ...]) -> None:
    assert read_text(HOUSE, "").values[path] == place


def test_every_value_has_a_place_and_no_other_path_has() -> None:
    reading = read_text(HOUSE, "")
    found: list[str] = []

    def walk(value: object, path: str) -> None:
        found.append(path)
        if isinstance(value, dict):
            for key, item in value.items():
                assert isinstance(key, str)
                walk(item, f"{path}.{key}" if path else key)
        elif isinstance(value, list):
            for index, item in enumerate(value):
                walk(item, f"{path}[{index}]")

    walk(reading.data, "")
    assert sorted(found) == sorted(reading.values)
    assert set(reading.keys) == {path for path in found if path and not path.endswith("]")}


def test_windows_line_ends_and_byte_order_mark_change_nothing() -> None:
    plain = read_text(HOUSE, "")
    windows = read_text("\ufeff" + HOUSE.replace("\n", "\r\n"), "")
    assert (windows.data, windows.keys, windows.values) == (plain.data, plain.keys, plain.values)
    assert source_line(windows, 4) == "    use: bathroom"


def test_columns_count_code_points() -> None:
    reading = read_text('küche: {"a𝛥b": 5 °C, é: x}\n', "")
    assert reading.keys["küche.a𝛥b"] == Place(1, 9, 1, 14)
    assert reading.values["küche.a𝛥b"] == Place(1, 16, 1, 20)
    assert reading.keys["küche.é"] == Place(1, 22, 1, 23)


@pytest.mark.parametrize("odd", ["\x85", "\u2028", "\u2029", "\ufeff"])
def test_odd_separators_end_no_line(odd: str) -> None:
    # YAML 1.2.2, section 5.4: only line feed and carriage return break lines.
    reading = read_text(f"a: 'x{odd}y'\n# c{odd}d: 2\nb: p{odd}q # r\n", "")
    assert reading.data == {"a": f"x{odd}y", "b": f"p{odd}q"}
    assert reading.keys["b"] == Place(3, 1, 3, 2)
    assert reading.values["b"] == Place(3, 4, 3, 7)
    assert source_line(reading, 2) == f"# c{odd}d: 2"


def test_source_lines_outside_the_text_are_empty() -> None:
    reading = read_text("a: 1\nb: 2", "")
    assert [source_line(reading, line) for line in (0, 1, 2, 3)] == ["", "a: 1", "b: 2", ""]


def test_numbers_keep_their_source_text_and_keys_stay_text() -> None:
    reading = read_text("a: 80\nb: 1.50\nc: '80'\n1: [1e3, x]\n012: yes\nno: true\n", "")
    assert reading.data == {"a": 80, "b": 1.5, "c": "80", "1": [1000.0, "x"], "012": "yes", "no": True}
    assert reading.sources == {"a": "80", "b": "1.50", "1[0]": "1e3"}


def test_valid_yaml_that_the_c_parser_refuses_is_read() -> None:
    # YAML 1.2.2, section 7.3.3: a colon inside a plain scalar of a flow collection.
    reading = read_text("a: {scale: 1:50, at: [12:30, x//y]}\n", "")
    assert reading.faults == []
    assert reading.data == {"a": {"scale": "1:50", "at": ["12:30", "x//y"]}}


CORPUS = [
    HOUSE,
    HOUSE.replace("\n", "\r\n"),
    "a:\n- b\n-\n- - c\n  - {d: , e: [f]}\n-   g: 1\n    h: ''\n",
    "? a\n: - x\n? b\nc: >\n  folded\n  text\nd: plain over\n  two lines\ne: 'q\n  r'\n",
    "ü: [ '𝛥', \"\\u00e9\" ]\nkey: a\u2028b\n",
    "a: &x {b: 1}\nc: *x\nd: !t\n  e: 012\nf: !!str\n? [k]\n: v\n<<: *x\na: 2\n",
    "a: b: c\n", "a: [1\n", "a: @b\n", "---\n{a: 1}\n--- b\n",
]  # fmt: skip


@pytest.mark.parametrize("text", CORPUS)
def test_c_and_pure_parser_agree(text: str, monkeypatch: pytest.MonkeyPatch) -> None:
    pytest.importorskip("_ruamel_yaml")
    fast = read_text(text, "")
    monkeypatch.setitem(sys.modules, "_ruamel_yaml", None)
    assert read_text(text, "") == fast


def test_reads_without_the_c_parser_in_a_fresh_process() -> None:
    program = (
        "import sys; sys.modules['_ruamel_yaml'] = None\n"
        "from checker.read import read_text\n"
        "r = read_text('a: {b: 1}\\nc: 012\\n', ''); print(r.data, [f.code for f in r.faults])"
    )
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=False)
    assert (done.returncode, done.stdout) == (0, f"{{'a': {{'b': 1}}}} ['{CODES['number-trap']}']\n")


@pytest.mark.parametrize(
    ("content", "name", "place"),
    [
        (b"a: 1\nb\0\n", "not-text", (2, 2)),
        (b"a: 1\nb: \xc3\xa9\xff\n", "not-utf-8", (2, 5)),
        ("a: 1\n".encode("utf-16"), "not-utf-8", (1, 1)),
        (b"", "empty-file", (1, 1)),
        (b"\xef\xbb\xbf", "empty-file", (1, 1)),
        (b"#" * (MAX_SIZE + 1), "too-large", (1, 1)),
    ],
)
def test_files_that_hold_no_design(tmp_path: Path, content: bytes, name: str, place: tuple[int, int]) -> None:
    path = tmp_path / "house.yaml"
    path.write_bytes(content)
    reading = read_file(str(path))
    assert (names(reading), reading.data) == ([name], {})
    assert tuple(reading.faults[0][4:6]) == place
    assert reading.faults[0].fatal


def test_byte_of_wrong_encoding_is_numbered(tmp_path: Path) -> None:
    (tmp_path / "a").write_bytes(b"a: \xb0F\n")
    assert "byte 4 of the file (0xB0)" in read_file(str(tmp_path / "a")).faults[0].message


def test_file_is_read_like_its_text(tmp_path: Path) -> None:
    path = tmp_path / "house.yaml"
    path.write_bytes(b"\xef\xbb\xbf" + HOUSE.encode())
    assert read_file(str(path)) == read_text(HOUSE, str(path))


def test_missing_file_folder_and_impossible_names(tmp_path: Path) -> None:
    assert names(read_file(str(tmp_path / "none.yaml"))) == ["missing-file"]
    assert names(read_file(str(tmp_path))) == ["is-a-directory"]
    assert names(read_file("a\0b")) == ["missing-file"]
    assert names(read_file("x" * 5000)) == ["unreadable-file"]


def test_refused_permission(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "house.yaml"
    path.write_text("a: 1\n")
    path.chmod(0)
    if os.access(path, os.R_OK):  # the superuser may read everything

        def refuse(*_: object) -> None:
            raise PermissionError(13, "Permission denied")

        monkeypatch.setitem(vars(read), "open", refuse)
    reading = read_file(str(path))
    assert names(reading) == ["unreadable-file"]
    assert "permission" in reading.faults[0].message


YAML_LIKE = st.text(
    alphabet=st.sampled_from("ab01.:-?,[]{}#&*!|>%@`'\"\\ux \n\t\r~<=\u2028é\ufeff"), max_size=60
)


@settings(max_examples=400, deadline=None)
@given(st.one_of(st.text(), YAML_LIKE))
def test_no_text_raises(text: str) -> None:
    reading = read_text(text, "any")
    lines = text.removeprefix("\ufeff").count("\n") + 2
    for one in reading.faults:
        assert one.code in FAULTS
        assert 1 <= one.line <= lines
        assert (one.end_line, one.end_column) >= (one.line, one.column)
        assert "\n" not in one.message + one.help
    assert isinstance(reading.data, dict)


@settings(max_examples=200, deadline=None)
@given(YAML_LIKE)
def test_no_text_raises_in_the_pure_parser(text: str) -> None:
    with pytest.MonkeyPatch.context() as patch:
        patch.setitem(sys.modules, "_ruamel_yaml", None)
        assert isinstance(read_text(text, "any").data, dict)


@settings(deadline=None)
@given(st.binary(max_size=60))
def test_no_bytes_raise(tmp_path_factory: pytest.TempPathFactory, content: bytes) -> None:
    path = tmp_path_factory.getbasetemp() / "bytes.yaml"
    path.write_bytes(content)
    assert isinstance(read_file(str(path)).data, dict)
