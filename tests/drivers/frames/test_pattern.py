"""Patterns: what is read, what is refused in words, and that none of them runs away."""

import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.errors import DescriptionError
from drivers.frames.pattern import compiled, parts_of


def fields(pattern: str, line: bytes, raw: frozenset[str] = frozenset()) -> dict | None:
    found = compiled(parts_of(pattern, raw)).fullmatch(line)
    return found and found.groupdict()


@pytest.mark.parametrize(
    ("pattern", "line", "expected"),
    [
        ("{value:4}g", b" 254g", {"value": b" 254"}),
        ("{{{value:1-4}}", b"{25}", {"value": b"25"}),
        ("{value:1-4}{unit:1-2}", b"0.2kg", {"value": b"0.2", "unit": b"kg"}),
        ("{value:1-4}{unit:2}", b"25g ", {"value": b"25", "unit": b"g "}),
        ("{space:0-3}{value:1-3}", b"  25", {"value": b"25"}),
        (
            "{sign:1}{value:3};{check:2}",
            b"-254;A0",
            {"sign": b"-", "value": b"254", "check": b"A0"},
        ),
        ("{_:2}{value:3}", b"~!254", {"value": b"254"}),
        ("{value:3}{range:1}", b"2540", None),
        ("{value:3}g", b"254g ", None),
        ("{value:3}.", b"254x", None),
        ("{value:1-3}g", b"2545g", None),
    ],
)
def test_line_is_cut_into_fields(pattern: str, line: bytes, expected: dict | None) -> None:
    assert fields(pattern, line) == expected


def test_status_byte_may_be_any_byte() -> None:
    assert fields("{st:1}{value:1}", b"\n5", frozenset({"st"})) == {"st": b"\n", "value": b"5"}
    assert fields("{st:1}{value:1}", b"\n5") is None


@pytest.mark.parametrize(
    ("pattern", "words"),
    [
        ("", "0 characters"),
        ("x" * 201, "201 characters"),
        ("{flag:1}", "no {value:…}"),
        ("{value:8", "character 1: '{value:8' is no field"),
        ("{value}", "is no field"),
        ("{value:(a+)+}", "is no field"),
        ("{value:4}{value:4}", "may stand in a pattern once"),
        ("{value:0}", "a width is 1 to 40"),
        ("{value:41}", "a width is 1 to 40"),
        ("{value:8-4}", "a width is 1 to 40"),
        ("{flag:1-3}{value:4}", "only a fixed width"),
        ("{value:1-4}{space:0-2}5", "followed by something it cannot hold"),
        ("{space:0-9}{value:8}", "followed by something it cannot hold"),
        ("{value:1-8}{_:1}", "followed by something it cannot hold"),
        ("é{value:8}", "character 1: only printable ASCII"),
        ("{value:8}\n", "character 10: only printable ASCII"),
    ],
)
def test_refused_in_words(pattern: str, words: str) -> None:
    with pytest.raises(DescriptionError, match=words.replace("{", r"\{")):
        parts_of(pattern)


@given(st.text(alphabet="{}valuespcnit:-1234560 _.g", max_size=40), st.binary(max_size=60))
def test_any_pattern_is_refused_or_compiles(pattern: str, line: bytes) -> None:
    try:
        parts = parts_of(pattern)
    except DescriptionError:
        return
    compiled(parts).fullmatch(line)


def test_longest_changing_fields_take_one_pass() -> None:
    """What a backtracking expression would try in 40^8 ways."""
    pattern = "".join(f"{{space:0-40}}{c}" for c in "abcdefgh") + "{value:1-40}"
    expression = compiled(parts_of(pattern))
    line = b"".join(b" " * 40 + c.encode() for c in "abcdefgh") + b"1" * 40 + b"x"
    began = time.process_time()
    assert expression.fullmatch(line) is None
    assert time.process_time() - began < 0.5
