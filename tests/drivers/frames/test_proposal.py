"""A person marks fields on lines of three invented formats; the proposal reads others of them."""

from dataclasses import replace
from decimal import Decimal
from functools import partial

import pytest

from drivers.errors import DescriptionError
from drivers.frames.base import Condition, Kind, WeightFrame
from drivers.frames.checksum import KINDS, Checksum
from drivers.frames.described import DescribedParser
from drivers.frames.description import Description, Meaning
from drivers.frames.description_file import read_description, write_description
from drivers.frames.proposal import Mark, MarkedLine, propose, split_lines
from tests.drivers.chain import STEADY, Chain, Tape

REST, MOTION = frozenset({Meaning.STABLE}), frozenset({Meaning.MOTION})
NET = frozenset({Meaning.STABLE, Meaning.NET})
DASHED = frozenset({Meaning.MOTION, Meaning.OVER})


def marked(line: bytes, says: frozenset, shown: str | None, its: str, **fields: str) -> MarkedLine:
    """Mark the first place of each field's text, from left to right."""
    marks, place = [], 0
    for name, text in fields.items():
        begin = line.index(text.encode(), place)
        place = begin + len(text)
        marks.append(Mark(name, begin, place))
    return MarkedLine(line, tuple(marks), shown, its, says)


def plain(value: str, flag: str = "s", unit: str = "g ") -> bytes:
    return f"{flag}:{value:>9}{unit}\r\n".encode()


PLAIN = [
    marked(plain("254"), REST, "254", "g", flag="s", value="254", unit="g "),
    marked(plain("12", "m"), MOTION, "12", "g", flag="m", value="12", unit="g "),
    marked(plain("1.254", "n", "kg"), NET, "1.254", "kg", flag="n", value="1.254", unit="kg"),
    marked(plain("-----", "m", "kg"), DASHED, None, "kg", flag="m", value="-----", unit="kg"),
]


def test_right_justified_lines() -> None:
    proposed = propose("plain", PLAIN)
    assert proposed.pattern == "{flag:1}:{value:9}{unit:2}"
    assert (proposed.start, proposed.end) == (b"", b"\r\n")
    read = DescribedParser(proposed).feed(plain("-7.5", "n", "kg"))
    assert read == [WeightFrame("-7.5", "kg", Kind.NET, False, False, Condition.NORMAL, 1)]
    (over,) = DescribedParser(proposed).feed(plain("-----", "s", "kg"))
    assert (over.digits, over.condition) == (None, Condition.OVER_CAPACITY)


def implied(tenths: int, still: str) -> bytes:
    body = f"{still} {tenths:06d}~".encode()
    return b"\x02" + body + b"\x03" + bytes([KINDS["xor"].of(body + b"\x03")])


def test_implied_decimals_and_a_check_after_the_end() -> None:
    lines = [
        marked(implied(2540, "Y"), REST, "254.0", "g", flag="Y", value="002540"),
        marked(implied(15, "N"), MOTION, "1.5", "g", flag="N", value="000015"),
        MarkedLine(implied(99999, "Y"), (), "9999.9", "g", REST),
    ]
    proposed = propose("implied", lines)
    assert proposed.value.implied_decimals == 1
    assert proposed.checksum == Checksum("xor", "tail", False, True)
    read = DescribedParser(proposed).feed(implied(2600, "Y"))
    assert [(r.digits, r.unit, r.motion) for r in read] == [("260.0", "g", False)]


def ragged(value: str, state: str) -> bytes:
    body = f"#{state},{value} kg,".encode()
    return body + f"{KINDS['CRC-16/ARC'].of(body):04X}\n".encode()


def ragged_line(value: str, state: str, says: frozenset) -> MarkedLine:
    line = ragged(value, state)
    given = {"state": state, "value": value, "unit": "kg", "check": line[-5:-1].decode()}
    return marked(line, says, value.replace(",", "."), "kg", **given)


def test_changing_widths_with_a_decimal_comma_and_a_written_check() -> None:
    lines = [ragged_line("0,254", "01", REST), ragged_line("-12,5", "00", MOTION)]
    lines.append(ragged_line("7", "01", REST))
    proposed = propose("ragged", lines)
    assert proposed.pattern == "#{state:2},{value:1-12} {unit:2},{check:4}"
    assert proposed.checksum == Checksum("CRC-16/ARC", "hex", False, False)
    parser = DescribedParser(proposed)
    (read,) = parser.feed(ragged("1,002", "01"))
    assert (read.digits, read.motion) == ("1.002", False)
    (unknown,) = parser.feed(ragged("1,002", "07"))
    assert unknown.motion, "a flag never seen means motion"


def test_proposed_description_packs_a_bag_through_the_whole_chain() -> None:
    formats = [
        (propose("plain", PLAIN[:2]), plain("0"), plain("258")),
        (
            propose(
                "implied",
                [
                    marked(implied(2540, "Y"), REST, "254.0", "g", flag="Y", value="002540"),
                    marked(implied(15, "N"), MOTION, "1.5", "g", flag="N", value="000015"),
                ],
            ),
            implied(0, "Y"),
            implied(2580, "Y"),
        ),
        (
            propose(
                "no flags",
                [
                    marked(b"w 12\n", frozenset(), "12", "g", value="12"),
                    marked(b"w 254\n", frozenset(), "254", "g", value="254"),
                ],
            ),
            b"w 0\n",
            b"w 258\n",
        ),
    ]
    for proposed, zero, bag in formats:
        tape = Tape()
        for line in [zero] * 12 + [bag] * 20 + [zero] * 12:
            tape.send(line)
        steady = replace(STEADY, agree_frames=proposed.agree_frames)
        captured = Chain(partial(DescribedParser, proposed), steady).play(tape)
        assert [Decimal(digits) for digits in captured] == [258], proposed.name


@pytest.mark.parametrize("proposed", [propose("plain", PLAIN)])
def test_proposal_is_written_and_read_back(proposed: Description) -> None:
    assert read_description(write_description(proposed)) == proposed


@pytest.mark.parametrize(
    ("lines", "words"),
    [
        (PLAIN[:1], "two or more, with different weights"),
        ([PLAIN[0], PLAIN[0]], "two or more, with different weights"),
        (
            [MarkedLine(b"s 1\r", (), "1", "g"), MarkedLine(b"s 2\r", (), "2", "g")],
            "mark the value",
        ),
        ([PLAIN[0], MarkedLine(b"m: 1 g\r\n", (), "1", "g")], "mark the same fields"),
        ([PLAIN[0], MarkedLine(plain("1"), (Mark("flag", 0, 40),), "1", "g")], "mark the same"),
        (
            [
                MarkedLine(b"254 g\r", (Mark("value", 0, 3),), "254", "g"),
                MarkedLine(b" 12 g\r", (Mark("value", 0, 3),), "13", "g"),
            ],
            "value is read as '12', not '13'",
        ),
        (
            [
                MarkedLine(b"254 g\r", (Mark("value", 0, 3),), "254", "g"),
                MarkedLine(b"0.2kg\r", (Mark("value", 0, 3),), "0.2", "kg"),
            ],
            "it changes: mark it",
        ),
        (
            [
                MarkedLine(b"254 g;1\r", (Mark("value", 0, 3), Mark("check", 6, 7)), "254", "g"),
                MarkedLine(b" 12 g;2\r", (Mark("value", 0, 3), Mark("check", 6, 7)), "12", "g"),
            ],
            "no checksum known here",
        ),
        (
            [
                MarkedLine(b"254 gross g\r", (Mark("value", 0, 3),), "254", "g"),
                MarkedLine(b" 12 net g\r", (Mark("value", 0, 3),), "12", "g"),
            ],
            "mark what changes",
        ),
        (
            [
                MarkedLine(b"254 g\r", (Mark("value", 0, 3),), "254", "g"),
                MarkedLine(b" 12 g\n", (Mark("value", 0, 3),), "12", "g"),
            ],
            "end with the same control characters",
        ),
    ],
)
def test_what_teaches_too_little_is_refused(lines: list[MarkedLine], words: str) -> None:
    with pytest.raises(DescriptionError, match=words):
        propose("x", lines)


def signed(sign: str, digits: str, state: str = "S") -> bytes:
    return f"{state}{sign}{digits:>7} g {len(digits)}\r\n".encode()


def test_sign_left_unmarked_is_asked_for_and_never_left_out() -> None:
    """A scale that sends + on a load and a blank at zero would have its minus ignored."""
    value = Mark("value", 2, 9)
    lines = [
        MarkedLine(signed("+", "254.0"), (value,), "254.0", "g"),
        MarkedLine(signed(" ", "0.0"), (value,), "0.0", "g"),
    ]
    with pytest.raises(DescriptionError, match=r"'S.' and also 'S ': mark what changes"):
        propose("Signed", lines)
    marked_too = [replace(one, marks=(Mark("sign", 1, 2), value)) for one in lines]
    (read,) = DescribedParser(propose("Signed", marked_too)).feed(signed("-", "254.0"))
    assert isinstance(read, WeightFrame)
    assert read.digits == "-254.0"


def test_letter_left_unmarked_is_asked_for() -> None:
    """The next letter there may mean net, over or motion."""
    value = Mark("value", 2, 9)
    with pytest.raises(DescriptionError, match=r"'S.' and also 'Z ': mark what changes"):
        propose(
            "Lettered",
            [
                MarkedLine(signed(" ", "254.0"), (value,), "254.0", "g"),
                MarkedLine(signed(" ", "0.0", "Z"), (value,), "0.0", "g"),
            ],
        )


def test_start_of_text_in_noise_does_not_cut_the_stream() -> None:
    stream = b"".join(plain(str(n)) for n in range(20))
    assert len(split_lines(stream[:50] + b"\x02" + stream[50:])) >= 18


def test_stream_is_cut_into_whole_lines() -> None:
    assert split_lines(b"4 g\r\n" + plain("1") + plain("2") + b"s:") == (plain("1"), plain("2"))
    stream = b"9\x03x" + implied(1, "Y") + implied(2, "Y") + b"\x02Y"
    assert split_lines(stream) == (implied(1, "Y"), implied(2, "Y"))
