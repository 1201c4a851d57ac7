"""Scans from a serial scanner: cut anywhere, too slow, too long, with what does not belong.

Symbology identifiers: ISO/IEC 15424. GS between element strings: GS1 General Specifications.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.scanner import Refused, Scan, ScanReader, ScanRules, Symbol

MS = 1_000_000
PAIR = ScanRules(pair_ns=50 * MS)
Given = tuple[int, bytes]


def play(*steps: Given, rules: ScanRules | None = None) -> list[Scan | Refused]:
    """Each step is the time in milliseconds and what came then."""
    reader = ScanReader(rules)
    return [one for at_ms, chunk in steps for one in reader.feed(chunk, at_ms * MS)]


def data(found: list[Scan | Refused]) -> list[tuple[str, ...]]:
    return [tuple(s.data for s in one.symbols) for one in found if isinstance(one, Scan)]


@pytest.mark.parametrize("end", [b"\r", b"\n", b"\r\n"])
def test_message_with_each_end(end: bytes) -> None:
    (scan,) = play((3, b"LOT-7" + end))
    assert scan == Scan((Symbol("", "LOT-7"),), 3 * MS)


def test_identifier_and_separators_are_kept() -> None:
    (scan,) = play((0, b"]C1019521234000013\x1d10ROM-1\r"))
    assert scan.symbols == (Symbol("]C1", "019521234000013\x1d10ROM-1"),)
    (plain,) = play((0, b"]5-LOT\r"))
    assert plain.symbols == (Symbol("", "]5-LOT"),)


def test_message_cut_anywhere() -> None:
    stream = b"]d2ABC\x1dDEF\r\n"
    for cut in range(len(stream)):
        assert data(play((0, stream[:cut]), (5, stream[cut:]))) == [("ABC\x1dDEF",)]


@pytest.mark.parametrize(
    ("steps", "why"),
    [
        (((0, b"LOT"), (101, b"-7\r")), "cut off"),
        (((0, b"LOT"), (101, b"")), "cut off"),
        (((0, b"A" * 201),), "longer than 200"),
        (((0, b"A" * 900 + b"\r"),), "longer than 200"),
        (((0, b"LOT\x00\r"),), "no code of ours"),
        (((0, b"LOT\x1b[2J\r"),), "no code of ours"),
        (((0, b"LOT\xf1\r"),), "no code of ours"),
        (((0, b"\x1d\x1d\r"),), "no data"),
        (((0, b"]C1\r"),), "no data"),
        (((0, b"   \r"),), "no data"),
    ],
)
def test_refused_with_the_reason_once(steps: tuple[Given, ...], why: str) -> None:
    found = play(*steps)
    refused = [one for one in found if isinstance(one, Refused)]
    assert [why in one.why for one in refused] == [True]
    assert data(play(*steps, (5000, b"NEXT\r")))[-1] == ("NEXT",)


@pytest.mark.parametrize("rest", [[b"-118\r"], [b"-1", b"18\r\n"], [b"", b"-118\r"]])
def test_rest_of_a_message_that_was_cut_off_is_no_message(rest: list[bytes]) -> None:
    """A lot's last digits may be another lot."""
    steps = [(200 + 50 * n, part) for n, part in enumerate(rest)]
    assert data(play((0, b"L26"), *steps)) == []
    assert data(play((0, b"L26"), *steps, (400, b"L26-119\r"))) == [("L26-119",)]


def test_message_long_after_one_that_was_cut_off_is_whole() -> None:
    assert data(play((0, b"AB"), (1_001, b"CD\r"))) == [("CD",)]


def test_two_stacked_symbols_are_one_scan() -> None:
    found = play((0, b"]e0GTIN\r"), (30, b"]e0LOT\r"), (90, b""), rules=PAIR)
    assert found == [Scan((Symbol("]e0", "GTIN"), Symbol("]e0", "LOT")), 30 * MS)]


def test_lone_symbol_waits_for_its_pair_and_then_goes() -> None:
    reader = ScanReader(PAIR)
    assert reader.feed(b"GTIN\r", 0) == []
    assert reader.feed(b"", 50 * MS) == []
    assert data(reader.feed(b"", 51 * MS)) == [("GTIN",)]
    assert reader.feed(b"", 99 * MS) == []


def test_second_symbol_too_late_is_a_scan_of_its_own() -> None:
    assert data(play((0, b"ONE\r"), (60, b"TWO\r"), (200, b""), rules=PAIR)) == [("ONE",), ("TWO",)]


def test_second_symbol_that_began_in_time_may_end_later() -> None:
    found = play((0, b"ONE\r"), (40, b"TW"), (70, b"O\r"), (200, b""), rules=PAIR)
    assert data(found) == [("ONE", "TWO")]


def test_damage_after_the_first_lets_it_go_alone() -> None:
    found = play((0, b"ONE\r"), (20, b"\x00\r"), rules=PAIR)
    assert data(found) == [("ONE",)]
    assert isinstance(found[-1], Refused)


def test_three_in_a_row_are_a_pair_and_one() -> None:
    found = play((0, b"A\rB\rC\r"), (60, b""), rules=PAIR)
    assert data(found) == [("A", "B"), ("C",)]


@given(
    st.lists(st.tuples(st.integers(0, 300), st.binary(max_size=300)), max_size=10),
    st.sampled_from([ScanRules(), PAIR, ScanRules(longest=5, pair_ns=MS)]),
)
def test_any_bytes_never_raise_and_little_is_kept(steps: list[Given], rules: ScanRules) -> None:
    reader, now = ScanReader(rules), 0
    for gap_ms, chunk in steps:
        now += gap_ms * MS
        for one in reader.feed(chunk, now):
            if isinstance(one, Scan):
                for symbol in one.symbols:
                    assert all(" " <= c <= "~" or c == "\x1d" for c in symbol.data)
        assert reader.pending <= rules.longest
