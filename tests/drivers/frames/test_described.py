"""Described lines: the three descriptions of our own invention, and what a damaged line may do."""

from decimal import Decimal
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

import drivers.frames
from drivers.frames.base import Condition, Garbage, Item, Kind, WeightFrame
from drivers.frames.checksum import KINDS
from drivers.frames.described import DescribedParser
from drivers.frames.description import Description, Example, Meaning, ValueForm
from drivers.frames.description_file import load_description

FOLDER = Path(drivers.frames.__path__[0]) / "descriptions"
SHIPPED = {path.stem: load_description(path) for path in sorted(FOLDER.glob("*.toml"))}
REST = frozenset({Meaning.STABLE})


def parse(form: Description, *chunks: bytes) -> list[Item]:
    parser = DescribedParser(form)
    return [item for chunk in chunks for item in parser.feed(chunk)]


def heron(state: str, tenths: str) -> bytes:
    body = f"{state}{tenths};".encode()
    return b"<" + body + f"{KINDS['xor'].of(body):02X}>".encode()


def test_three_are_shipped() -> None:
    assert sorted(SHIPPED) == ["heron", "lantern", "tern"]


@pytest.mark.parametrize("form", SHIPPED.values(), ids=SHIPPED)
def test_every_flipped_bit_of_every_example_is_refused_or_told_by_two_lines(
    form: Description,
) -> None:
    """A line with a checksum refuses each; one without is caught by the agreement of two lines."""
    for example in form.examples:
        for n in range(len(example.line)):
            for bit in range(8):
                raw = bytearray(example.line)
                raw[n] ^= 1 << bit
                weights = [
                    (item.digits, item.unit)
                    for item in parse(form, bytes(raw))
                    if isinstance(item, WeightFrame)
                ]
                if form.checksum is not None and form.checksum.form == "tail":
                    assert weights == []
                assert len(weights) <= 1


@pytest.mark.parametrize(
    ("line", "frame"),
    [
        (b"q=     254 g \r\n", ("254", "g", Kind.GROSS, False, Condition.NORMAL)),
        (b"q=  000254 g \r\n", ("254", "g", Kind.GROSS, False, Condition.NORMAL)),
        (b"z=       0 g \r\n", ("0", "g", Kind.GROSS, False, Condition.CENTRE_OF_ZERO)),
        (b"w=     254 g \r\n", ("254", "g", Kind.GROSS, True, Condition.NORMAL)),
        (b"n=   0.254 kg\r\n", ("0.254", "kg", Kind.NET, False, Condition.NORMAL)),
        (b"x=   0.254 kg\r\n", ("0.254", "kg", Kind.GROSS, True, Condition.NORMAL)),
        (b"w=    ~~~~ kg\r\n", (None, "kg", Kind.GROSS, True, Condition.OVER_CAPACITY)),
    ],
)
def test_lantern(line: bytes, frame: tuple) -> None:
    (read,) = parse(SHIPPED["lantern"], line)
    assert isinstance(read, WeightFrame)
    assert (read.digits, read.unit, read.kind, read.motion, read.condition) == frame
    assert read.raw == line


@pytest.mark.parametrize(
    ("line", "why"),
    [
        (b"q=     254 lb\r\n", "unit 'lb' is not in the description"),
        (b"q=    2 54 g \r\n", "value is '    2 54', not a number"),
        (b"q=     254,g \r\n", "does not fit the pattern"),
        (b"q=    2,54 g \r\n", "not a number as described"),
        (b"q=   - 254 g \r\n", "not a number as described"),
        (b"q=    .254 g \r\n", "not a number as described"),
        (b"q=   \xb2 254 g \r\n", "does not fit the pattern"),
        (b"\r\n", "does not fit the pattern"),
        (b"8" * 70, "line without an end within 64 bytes"),
    ],
)
def test_lantern_refuses(line: bytes, why: str) -> None:
    first, *_ = parse(SHIPPED["lantern"], line)
    assert isinstance(first, Garbage)
    assert why in first.why


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        (heron("A", "+002540"), "254.0"),
        (heron("A", "+000005"), "0.5"),
        (heron("A", "-000005"), "-0.5"),
        (heron("A", " 000000"), "0.0"),
        (heron("A", "+002541"), "254.1, not a multiple of 0.5"),
        (heron("A", "+062005"), "6200.5, above the highest of the description, 6200"),
        (heron("A", "-001005"), "-100.5, below the lowest of the description, -100"),
        (heron("A", "--00005"), "not a number|contradict|'-00005'"),
        (heron("A", "+002540")[:-3] + b"00>", "checksum xor does not agree"),
        (b"<A+00<A+002540;52>", "cut off after 5 bytes"),
    ],
)
def test_heron(line: bytes, expected: str) -> None:
    first, *_ = parse(SHIPPED["heron"], line)
    if isinstance(first, WeightFrame):
        assert first.digits == expected
    else:
        assert isinstance(first, Garbage)
        assert any(words in first.why for words in expected.split("|"))


def test_bits_of_a_status_byte() -> None:
    over, net = parse(SHIPPED["heron"], heron("E", "+062000") + heron("C", "+000010"))
    assert isinstance(over, WeightFrame)
    assert isinstance(net, WeightFrame)
    assert (over.condition, over.kind) == (Condition.OVER_CAPACITY, Kind.GROSS)
    assert (net.condition, net.kind, net.motion) == (Condition.NORMAL, Kind.NET, False)


def simple(**changes: object) -> Description:
    given: dict = {
        "name": "simple",
        "end": b"\n",
        "pattern": "{f:1}{value:6}",
        "unit": "g",
        "flags": {"f": {"s": REST, "b": REST | {Meaning.GROSS, Meaning.NET}}},
        "examples": (Example(b"s   254\n", "254", "g", REST),),
    }
    return Description(**given | changes)


def test_sign_apart_from_its_digits_where_described() -> None:
    assert isinstance(parse(simple(), b"s-  254\n")[0], Garbage)
    (read,) = parse(simple(value=ValueForm(sign_apart=True)), b"s-  254\n")
    assert read.value == Decimal(-254)


def test_flags_that_contradict_are_no_weight() -> None:
    assert "contradict: gross, net, stable" in parse(simple(), b"b   254\n")[0].why


def test_without_a_flag_of_rest_six_equal_lines_are_needed() -> None:
    silent = simple(
        pattern="{value:6}", flags={}, examples=(Example(b"   254\n", "254", "g", frozenset()),)
    )
    assert (simple().agree_frames, silent.agree_frames) == (2, 6)
    (read,) = parse(silent, b"   254\n")
    assert not read.motion


streams = st.lists(
    st.one_of(
        st.sampled_from([example.line for form in SHIPPED.values() for example in form.examples]),
        st.binary(max_size=80),
        st.lists(st.sampled_from(b"<>\x02\x03\r\nqzw=~ g;A+-0123pan yes,"), max_size=80).map(bytes),
    ),
    max_size=10,
).map(b"".join)


@given(st.sampled_from(sorted(SHIPPED)), streams, st.lists(st.integers(0, 500), max_size=10))
def test_any_cutting_gives_the_same_items_and_loses_nothing(
    name: str, stream: bytes, cuts: list[int]
) -> None:
    places = [0, *sorted(cut for cut in cuts if cut < len(stream)), len(stream)]
    form = SHIPPED[name]
    whole = DescribedParser(form)
    items = whole.feed(stream)
    assert whole.pending <= whole.MAX_PENDING
    chunks = [stream[a:b] for a, b in pairwise(places)]
    for cut in (chunks, [stream[n : n + 1] for n in range(len(stream))]):
        again = parse(form, *cut)
        assert again == items
        assert [item.raw for item in again] == [item.raw for item in items]
    assert b"".join(item.raw for item in items) + whole._pending == stream


@given(st.sampled_from(sorted(SHIPPED)), st.binary(max_size=150))
def test_a_good_line_is_found_after_any_garbage(name: str, garbage: bytes) -> None:
    """At the latest the second one, where nothing marks the start of a line."""
    form = SHIPPED[name]
    line = form.examples[0].line
    assert parse(form, garbage + line * 2)[-1].raw == line
