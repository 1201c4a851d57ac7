"""Description files: strict, refused in words, and never loaded against their own examples."""

from pathlib import Path

import pytest

from drivers.errors import DescriptionError
from drivers.frames.description_file import load_description, read_description, write_description
from tests.drivers.frames.test_described import FOLDER, SHIPPED

HERON = (FOLDER / "heron.toml").read_text(encoding="utf-8")
LANTERN = (FOLDER / "lantern.toml").read_text(encoding="utf-8")
TERN = (FOLDER / "tern.toml").read_text(encoding="utf-8")


@pytest.mark.parametrize("form", SHIPPED.values(), ids=SHIPPED)
def test_written_and_read_back(form: object) -> None:
    assert read_description(write_description(form)) == form


@pytest.mark.parametrize(
    ("text", "old", "new", "words"),
    [
        (
            LANTERN,
            'value = "254"',
            'value = "255"',
            "example 1, .*value is read as '254', not '255'",
        ),
        (LANTERN, 'unit = "g"', 'unit = "kg"', "example 1, .*unit is read as 'g', not 'kg'"),
        (
            LANTERN,
            '["stable", "gross"]\n\n[[ex',
            '["stable"]\n\n[[ex',
            "says is read as gross, sta",
        ),
        (LANTERN, "254 g \\r\\n", "254 g ", "example 1, .*is not exactly one whole line"),
        (LANTERN, 'end = "\\r\\n"\n', "", "end: is missing"),
        (LANTERN, 'end = "\\r\\n"', "end = 13", "end: is 13, allowed is text in quotes"),
        (LANTERN, 'end = "\\r\\n"', 'end = ""', "end: is empty"),
        (LANTERN, 'end = "\\r\\n"', 'end = "µ"', "no ASCII character"),
        (LANTERN, "{value:8}", "{value:80}", "a width is 1 to 40"),
        (LANTERN, "{rest:1}=", "{rest:1}={what:1}", "field what: is not described"),
        (LANTERN, "[flags.rest]", "[flags.calm]", "field rest: is not described"),
        (LANTERN, '"q" =', '"qq" =', "flags.rest: 'qq': the field is 1 characters wide, this is 2"),
        (LANTERN, '["stable", "net"]', '["stabel"]', "flags.rest.n: 'stabel' is not known"),
        (LANTERN, '["stable", "net"]', '"net"', "flags.rest.n: is 'net', allowed is a list"),
        (LANTERN, "[units]", "[unity]", "units: give"),
        (LANTERN, "name =", "colour = 1\nname =", "colour: is no key of a description"),
        (LANTERN, "[[example]]", "[[exemple]]", "example: is missing|exemple: is no key"),
        (LANTERN, "name", "na me", "is no TOML"),
        (HERON, "implied_decimals = 1", "implied_decimals = 9", "is 9, allowed is 0 to 6"),
        (HERON, "implied_decimals = 1", "implied_decimals = true", "is True, allowed is a whole"),
        (HERON, "bit = 0", "bit = 8", r"bits.state\[1\].bit: is 8, allowed is 0 to 7"),
        (HERON, 'kind = "xor"', 'kind = "crc"', "checksum.kind: is 'crc', allowed are sum"),
        (HERON, 'form = "hex"', 'form = "tail"', "this checksum needs no field check"),
        (HERON, "{check:2}", "{check:4}", "this checksum needs {check:2}"),
        (HERON, ";{check:2}", ";{check:2};", "nothing may follow the field check"),
        (HERON, 'interval = "0.5"', 'interval = "0"', "limits.interval: is 0, it must be above 0"),
        (HERON, 'interval = "0.5"', 'interval = "NaN"', "limits.interval: is 'NaN'"),
        (HERON, 'low = "-100"', "low = -100", "limits.low: is -100, allowed is text"),
        (HERON, "every_ms = 100", "every_ms = 5", "poll.every_ms: is 5, allowed is 20 to 400"),
        (HERON, "every_ms = 100", f"every_ms = {'9' * 5000}", "is no TOML: .*digits"),
        (HERON, "every_ms = 100", "every_ms = 1e400", "poll.every_ms: is inf, allowed is a whole"),
        (HERON, 'request = "', 'request = "" #', "poll.request: is empty"),
        (HERON, 'interval = "0.5"', 'interval = "1E-999999999"', "interval: is '1E-999999999'"),
        (HERON, 'interval = "0.5"', 'interval = "1E-30"', "interval: is '1E-30'"),
        (HERON, 'low = "-100"', 'low = "-1E+999999999"', "limits.low: is '-1E.999999999'"),
        (HERON, 'low = "-100"', f'low = "{"1" * 400}"', "limits.low: is '1111"),
        (LANTERN, "name = ", 'name = "" #', "name: is '', allowed are 1 to 60 printable"),
        (LANTERN, "name = ", f'name = "{"x" * 61}" #', "name: is 'xxx.*, allowed are 1 to 60"),
        (LANTERN, "name = ", 'name = "a\\u202eb" #', "name: is .*, allowed are 1 to 60"),
        (TERN, '"kg" = "kg"', '"kg " = "kg"', "units: 'kg ': the field is 1 to 2 characters wide"),
        (TERN, '"kg" = "kg"', '"kg" = ""', "units: 'kg': name the unit"),
        (HERON, 'start = "<"', 'start = ">"', "start and end: must differ"),
        (HERON, ";52>", ";53>", "checksum xor does not agree"),
        (TERN, 'hex = "02', 'hex = "0x', "is not hexadecimal"),
        (TERN, 'hex = "02', 'line = "x"\nhex = "02', "give either line or hex"),
        (TERN, "[[example]]", "[example]", r"example: is .*, allowed is a list in brackets"),
    ],
)
def test_refused_in_words(tmp_path: Path, text: str, old: str, new: str, words: str) -> None:
    assert old in text
    path = tmp_path / "line.toml"
    path.write_text(text.replace(old, new), encoding="utf-8")
    with pytest.raises(DescriptionError, match=words.replace("{", r"\{")) as refused:
        load_description(path)
    assert str(path) in str(refused.value)


def test_word_that_no_value_can_be_is_refused() -> None:
    for word in ("---------------", " - "):
        text = LANTERN.replace("[value.words]", f'[value.words]\n"{word}" = ["over"]')
        with pytest.raises(
            DescriptionError, match=r"value.words: '.*the field is 8 characters wide"
        ):
            read_description(text)


def test_file_with_a_mark_of_its_bytes_order_is_read(tmp_path: Path) -> None:
    """Some editors write one before UTF-8 text; the other settings may have it too."""
    path = tmp_path / "line.toml"
    path.write_text(LANTERN, encoding="utf-8-sig")
    assert load_description(path) == SHIPPED["lantern"]


def test_files_that_cannot_be_read(tmp_path: Path) -> None:
    with pytest.raises(DescriptionError, match="no such file"):
        load_description(tmp_path / "none.toml")
    (tmp_path / "big.toml").write_text("#" * 70_000, encoding="utf-8")
    with pytest.raises(DescriptionError, match="longer than 64000"):
        load_description(tmp_path / "big.toml")
    (tmp_path / "raw.toml").write_bytes(b"\xff\xfe")
    with pytest.raises(DescriptionError, match="not UTF-8"):
        load_description(tmp_path / "raw.toml")
