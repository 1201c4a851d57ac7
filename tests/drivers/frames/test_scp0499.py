"""Frames of SMA SCP-0499.

Vectors: the examples of the standard's own clauses (Scale Manufacturers Association, Standard Scale
Serial Communication Protocol SMA SCP-0499, 1st ed., 24 April 1999, as reproduced publicly), written
out as bytes; where a printed example is a column short, the clause (10 characters) wins.
"""

from decimal import Decimal
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.frames.base import Answer, AnswerKind, Condition, Garbage, Kind, WeightFrame
from drivers.frames.scp0499 import Scp0499Parser, render
from tests.drivers.frames.scp0499_reference import stretches

GOOD = bytes.fromhex("0a 20 31 4e 20 20 20 20 20 20 20 31 2e 32 35 30 6b 67 20 0d")

WEIGHTS = {
    "gross at rest": (
        "0a 20 31 47 20 20 20 20 20 20 20 35 2e 30 32 35 6c 62 20 0d",
        WeightFrame("5.025", "lb", Kind.GROSS, False, False, Condition.NORMAL, 1),
    ),
    "net at rest": (
        "0a 20 31 4e 20 20 20 20 20 20 20 31 2e 32 35 30 6b 67 20 0d",
        WeightFrame("1.250", "kg", Kind.NET, False, False, Condition.NORMAL, 1),
    ),
    "centre of zero": (
        "0a 5a 31 47 20 20 20 20 20 20 20 30 2e 30 30 30 6b 67 20 0d",
        WeightFrame("0.000", "kg", Kind.GROSS, False, False, Condition.CENTRE_OF_ZERO, 1),
    ),
    "in motion": (
        "0a 20 31 47 4d 20 20 20 20 20 20 37 2e 36 35 30 6b 67 20 0d",
        WeightFrame("7.650", "kg", Kind.GROSS, False, True, Condition.NORMAL, 1),
    ),
    "negative": (
        "0a 55 31 47 20 20 20 20 20 20 2d 31 2e 30 30 30 6b 67 20 0d",
        WeightFrame("-1.000", "kg", Kind.GROSS, False, False, Condition.UNDER_CAPACITY, 1),
    ),
    "over capacity": (
        "0a 4f 31 47 20 20 20 20 20 20 31 35 2e 30 30 35 6b 67 20 0d",
        WeightFrame("15.005", "kg", Kind.GROSS, False, False, Condition.OVER_CAPACITY, 1),
    ),
    "whole grams": (
        "0a 20 31 4e 20 20 20 20 20 20 20 20 20 32 35 34 67 20 20 0d",
        WeightFrame("254", "g", Kind.NET, False, False, Condition.NORMAL, 1),
    ),
    "zero error": (
        "0a 45 31 47 4d 20 2d 2d 2d 2d 2d 2d 2d 2d 2d 2d 6b 67 20 0d",
        WeightFrame(None, "kg", Kind.GROSS, False, True, Condition.ZERO_ERROR, 1),
    ),
    "tare error": (
        "0a 54 31 47 4d 20 2d 2d 2d 2d 2d 2d 2d 2d 2d 2d 6b 67 20 0d",
        WeightFrame(None, "kg", Kind.GROSS, False, True, Condition.TARE_ERROR, 1),
    ),
    "high resolution": (
        "0a 20 31 67 20 20 20 20 20 20 35 2e 30 30 32 35 6c 62 20 0d",
        WeightFrame("5.0025", "lb", Kind.GROSS, True, False, Condition.NORMAL, 1),
    ),
    "tare": (
        "0a 20 31 54 20 20 20 20 20 20 20 30 2e 32 30 30 6b 67 20 0d",
        WeightFrame("0.200", "kg", Kind.TARE, False, False, Condition.NORMAL, 1),
    ),
}
# The standard prints the space as "_"; a scale that sends it is understood.
UNDERSCORE = "0a 20 31 4e 20 20 20 20 20 20 20 31 2e 32 35 30 6b 67 5f 0d"

ANSWERS = {
    "unknown command": (
        "0a 3f 0d",
        AnswerKind.UNKNOWN_COMMAND,
        "the scale does not know the command",
    ),
    "line error": ("0a 21 0d", AnswerKind.LINE_ERROR, "the scale saw a damaged command"),
    "sound": ("0a 20 20 20 20 0d", AnswerKind.DIAGNOSTICS, "no fault"),
    "EEPROM": ("0a 20 45 20 20 0d", AnswerKind.DIAGNOSTICS, "settings memory fault"),
    "about": ("0a 53 4d 41 3a 32 2f 31 2e 30 0d", AnswerKind.TEXT, "SMA:2/1.0"),
    "capacity": (
        "0a 43 41 50 3a 6b 67 20 3a 36 30 30 30 3a 31 3a 30 0d",
        AnswerKind.TEXT,
        "CAP:kg :6000:1:0",
    ),
    "commands": ("0a 43 4d 44 3a 48 50 54 4d 43 52 0d", AnswerKind.TEXT, "CMD:HPTMCR"),
    "end": ("0a 45 4e 44 3a 0d", AnswerKind.TEXT, "END:"),
    # 20 bytes long like a weight, and none
    "twenty bytes": (b"\nMOD:pack bench 6000\r".hex(" "), AnswerKind.TEXT, "MOD:pack bench 6000"),
}

REJECTED = {
    "19 bytes": (b"\n 1G      1.250kg \r", "19 bytes"),
    "21 bytes": (b"\n 1G        1.250kg \r", "21 bytes"),
    "empty": (b"\n\r", "2 bytes"),
    "zero error with digits": (b"\nE1G       1.250kg \r", "ten dashes"),
    "dashes without an error": (b"\n 1G  ----------kg \r", "not a number"),
    "space inside": (b"\n 1G      1 .250kg \r", "not a number"),
    "two minus signs": (b"\n 1G     --1.000kg \r", "not a number"),
    "minus apart from the digits": (b"\n 1G    -  1.000kg \r", "not a number"),
    "two points": (b"\n 1G       1.2.5kg \r", "not a number"),
    "decimal comma": (b"\n 1G       1,250kg \r", "not a number"),
    "no digit before the point": (b"\n 1G        .250kg \r", "not a number"),
    "no digit after the point": (b"\n 1G        250.kg \r", "not a number"),
    "filled with zeros": (b"\n 1G  000001.250kg \r", "not a number"),
    "left-justified": (b"\n 1G  1.250     kg \r", "not a number"),
    "no digits at all": (b"\n 1G            kg \r", "not a number"),
    "unknown kind": (b"\n 1X       1.250kg \r", "kind"),
    "unknown status": (b"\nX1G       1.250kg \r", "status"),
    "unknown motion": (b"\n 1GS      1.250kg \r", "motion"),
    "range 0": (b"\n 0G       1.250kg \r", "range"),
    "no unit": (b"\n 1G       1.250   \r", "unit"),
    "unit to the right": (b"\n 1G       1.250 kg\r", "unit"),
    "bit 7 set": (b"\n 1G       \xb1.250kg \r", "not a number"),
    "own command echoed": (b"\nW\r", "3 bytes"),
    "NUL in reserved": (b"\n 1G \x00     1.250kg \r", "reserved"),
}

digits = st.builds(
    lambda sign, whole, part: f"{sign}{whole}{part}",
    st.sampled_from(["", "-"]),
    st.integers(0, 9999).map(str),
    st.sampled_from(["", ".0", ".25", ".005", ".1234"]),
)
usual = st.sampled_from([Condition.NORMAL, Condition.OVER_CAPACITY, Condition.UNDER_CAPACITY])
dashed = st.sampled_from(
    [
        Condition.ZERO_ERROR,
        Condition.INITIAL_ZERO_ERROR,
        Condition.TARE_ERROR,
        Condition.NOT_DISPLAYED,
    ]
)
kinds = st.sampled_from(
    [(Kind.GROSS, False), (Kind.NET, False), (Kind.TARE, False), (Kind.GROSS, True)]
)
frames = st.builds(
    lambda weight, unit, kind, motion, number: WeightFrame(
        weight[0], unit, kind[0], kind[1], motion, weight[1], number
    ),
    st.one_of(st.tuples(digits, usual), st.tuples(st.none(), dashed)),
    st.sampled_from(["g", "kg", "lb", "oz", "ozt"]),
    kinds,
    st.booleans(),
    st.integers(1, 9),
)
pieces = st.one_of(
    frames.map(render),
    st.binary(max_size=90),
    st.sampled_from([b"\n", b"\r", b"\r\n", b"\n?\r", b"\nEND:\r", GOOD[:11], GOOD[9:]]),
)
streams = st.lists(pieces, max_size=12).map(b"".join)


def parse(*chunks: bytes) -> list:
    parser = Scp0499Parser()
    return [item for chunk in chunks for item in parser.feed(chunk)]


@pytest.mark.parametrize(("hexadecimal", "frame"), WEIGHTS.values(), ids=WEIGHTS.keys())
def test_weight_of_the_standard(hexadecimal: str, frame: WeightFrame) -> None:
    raw = bytes.fromhex(hexadecimal)
    (read,) = parse(raw)
    assert read == frame
    assert read.raw == raw
    assert render(frame) == raw


def test_value_is_exact() -> None:
    (read,) = parse(GOOD)
    assert read.value == Decimal("1.250")
    assert str(read.value) == "1.250"


def test_underscore_fills_a_unit() -> None:
    (read,) = parse(bytes.fromhex(UNDERSCORE))
    assert (read.unit, read.digits) == ("kg", "1.250")


@pytest.mark.parametrize(("hexadecimal", "kind", "text"), ANSWERS.values(), ids=ANSWERS.keys())
def test_answer_of_the_standard(hexadecimal: str, kind: AnswerKind, text: str) -> None:
    raw = bytes.fromhex(hexadecimal)
    (answer,) = parse(raw)
    assert isinstance(answer, Answer)
    assert (answer.kind, answer.text, answer.raw) == (kind, text, raw)


@pytest.mark.parametrize(("raw", "why"), REJECTED.values(), ids=REJECTED.keys())
def test_rejected_frame_says_why_and_the_next_is_read(raw: bytes, why: str) -> None:
    first, second = parse(raw + GOOD)
    assert isinstance(first, Garbage)
    assert first.raw == raw
    assert why in first.why
    assert second.raw == GOOD


@pytest.mark.parametrize(
    ("before", "items"),
    [
        (b"250kg \r", 1),  # lost start
        (GOOD[:-1], 1),  # lost end
        (GOOD[:8], 1),  # cut off
        (GOOD[:8] + b"\n" + GOOD[8:], 2),  # LF inside: cut off, and the rest is no frame
        (GOOD[:7] + GOOD[8:], 1),  # lost byte
        (GOOD[:7] + GOOD[6:], 1),  # doubled byte
        (b"\x00" * 7, 1),
        (b"\x11\x13", 1),  # XON XOFF
        (b"\xff" * 200, 4),  # in pieces of the bound
        (b"\n" + b"5" * 100, 2),  # a start without an end
        (GOOD[12:] + GOOD[:5], 2),  # tail of one, head of another
    ],
)
def test_good_frame_is_found_after_damage(before: bytes, items: int) -> None:
    *damaged, good = parse(before + GOOD)
    assert good.raw == GOOD
    assert [type(item) for item in damaged] == [Garbage] * items
    assert b"".join(item.raw for item in damaged) == before


def test_carriage_return_line_feed_at_the_end_is_understood_after_the_first() -> None:
    line = GOOD[1:] + b"\n"  # ends CR LF, has no LF of its own
    items = parse(line * 3)
    assert [item.raw for item in items if isinstance(item, WeightFrame)] == [GOOD, GOOD]


def test_two_hundred_frames_in_one_read() -> None:
    assert len(parse(GOOD * 200)) == 200


def test_ten_megabytes_without_an_end_keep_nothing() -> None:
    parser = Scp0499Parser()
    for _ in range(10):
        parser.feed(b"7" * 1_000_000)
        assert parser.pending <= parser.MAX_PENDING
    assert parser.feed(GOOD)[-1].raw == GOOD


@given(streams, st.lists(st.integers(0, 400), max_size=12))
def test_any_cutting_gives_the_same_items(stream: bytes, cuts: list[int]) -> None:
    places = [0, *sorted(cuts), len(stream)]
    chunks = [stream[a:b] for a, b in pairwise(places)]
    chunks = chunks if b"".join(chunks) == stream else [stream]
    single = [stream[n : n + 1] for n in range(len(stream))]
    whole = parse(stream)
    for cut in (chunks, single):
        items = parse(*cut)
        assert items == whole
        assert [item.raw for item in items] == [item.raw for item in whole]


CONDITIONS = dict(zip(" ZOUEITe", Condition, strict=True))
LETTERS = {
    "G": (Kind.GROSS, False),
    "N": (Kind.NET, False),
    "T": (Kind.TARE, False),
    "g": (Kind.GROSS, True),
    "n": (Kind.NET, True),
}


def as_stretch(item: WeightFrame | Garbage | Answer) -> tuple:
    match item:
        case WeightFrame():
            letters = {kind: letter for letter, kind in LETTERS.items()}
            statuses = {condition: status for status, condition in CONDITIONS.items()}
            told = (
                item.digits,
                item.unit,
                letters[item.kind, item.high_resolution],
                "M" if item.motion else " ",
                statuses[item.condition],
                str(item.range_no),
            )
            return ("weight", item.raw, told)
        case Answer():
            return ("answer", item.raw, None)
        case Garbage():
            return ("garbage", item.raw, None)


ALPHABET = b"\n\r ZOUEITe1209GNTgnM-.kglbo_:?!RC\x00\xff"
near_frames = st.tuples(frames.map(render), st.integers(0, 19), st.integers(0, 255)).map(
    lambda given: given[0][: given[1]] + bytes([given[2]]) + given[0][given[1] + 1 :]
)
hard_streams = st.lists(
    st.one_of(pieces, near_frames, st.lists(st.sampled_from(ALPHABET), max_size=90).map(bytes)),
    max_size=12,
).map(lambda some: b"".join(some + some[:2]))  # the first come again, when they are known


@given(hard_streams, st.integers(1, 97), st.sampled_from([1, 2, 4096]))
def test_same_items_as_a_slow_parser_that_shares_no_code(
    stream: bytes, step: int, most: int
) -> None:
    """However the stream is cut and however few frames are kept in mind."""

    class Forgetful(Scp0499Parser):
        MOST_KNOWN = most

    parser = Forgetful()
    items = [i for n in range(0, len(stream), step) for i in parser.feed(stream[n : n + step])]
    expected, rest = stretches(stream)
    assert [as_stretch(item) for item in items] == expected
    assert parser.pending == len(rest)
    assert len(parser._known) <= most


@given(st.lists(st.binary(max_size=300), max_size=10))
def test_any_bytes_never_raise_and_little_is_kept(chunks: list[bytes]) -> None:
    parser = Scp0499Parser()
    seen = b""
    for chunk in chunks:
        seen += b"".join(item.raw for item in parser.feed(chunk))
        assert parser.pending < parser.MAX_PENDING
    # nothing is lost and nothing invented
    assert seen + parser._pending == b"".join(chunks)


@given(st.binary(max_size=200), frames)
def test_next_good_frame_is_found_after_any_garbage(garbage: bytes, frame: WeightFrame) -> None:
    assert parse(garbage + render(frame))[-1] == frame


@given(frames)
def test_parse_of_render_is_the_frame(frame: WeightFrame) -> None:
    raw = render(frame)
    assert len(raw) == 20
    assert parse(raw) == [frame]


@pytest.mark.parametrize(
    "frame",
    [
        WeightFrame("12345678.90", "kg", Kind.GROSS, False, False, Condition.NORMAL, 1),
        WeightFrame("1,25", "kg", Kind.GROSS, False, False, Condition.NORMAL, 1),
        WeightFrame("1.25", "gram", Kind.GROSS, False, False, Condition.NORMAL, 1),
        WeightFrame("1.25", "kg", Kind.TARE, True, False, Condition.NORMAL, 1),
        WeightFrame("1.25", "kg", Kind.GROSS, False, False, Condition.ZERO_ERROR, 1),
        WeightFrame(None, "kg", Kind.GROSS, False, False, Condition.NORMAL, 1),
        WeightFrame("1.25", "kg", Kind.GROSS, False, False, Condition.NORMAL, 12),
        WeightFrame("1.25", "µg", Kind.GROSS, False, False, Condition.NORMAL, 1),
    ],
)
def test_render_refuses_what_does_not_fit(frame: WeightFrame) -> None:
    with pytest.raises(ValueError, match=r"does not fit|no high resolution"):
        render(frame)
