"""What to check, from the bytes of a line that carries no frames."""

import random

import pytest

from drivers.diagnosis import diagnose
from drivers.frames.base import Garbage
from drivers.frames.scp0499 import Scp0499Parser
from drivers.parity import ParityLine
from drivers.port import PortSettings

FRAMES = b"\n 1G         254g  \r" * 10


@pytest.mark.parametrize(
    ("sample", "frames_seen", "words"),
    [
        (random.Random(4).randbytes(300), False, "none is a frame: check baud rate and parity"),
        (b"\x00" * 300, False, "none is a frame: check baud rate and parity"),
        (b"x" * 300, False, "no line ever starts or ends"),
        (b"$GPGGA,123519,4807.038,N*47\r\n" * 9, False, "another device"),
        (ParityLine("E").sent(FRAMES), False, "even parity: set bits 7 and even parity"),
        (ParityLine("O").sent(FRAMES), False, "odd parity: set bits 7 and odd parity"),
        (b"\x02 1 pan 254 g \x03" * 20, False, "another device"),
        (FRAMES[:50] + b"\xff\xff" + FRAMES[60:], True, "many frames arrive damaged"),
    ],
)
def test_words(sample: bytes, frames_seen: bool, words: str) -> None:
    said = diagnose(sample, frames_seen, "9600 8N1", Scp0499Parser)
    assert words in said
    assert frames_seen or "9600 8N1" in said


def test_line_that_comes_again_and_again_is_no_damage() -> None:
    """Somebody pressed the unit key: a cable has nothing to do with it."""
    pounds = Garbage(b"g= 0.560 lb\r\n", "unit 'lb' is not in the description")
    noise = [Garbage(bytes([n]) * 9, "bytes that belong to no frame") for n in range(5)]
    said = diagnose(FRAMES, True, "", Scp0499Parser, [*noise, pounds, pounds, pounds])
    assert "no weight (unit 'lb' is not in the description)" in said
    assert "set it back" in said
    assert "cable" in diagnose(FRAMES, True, "", Scp0499Parser, [*noise, pounds])


@pytest.mark.parametrize("sample", [b"\0" * 300, b"x" * 300, b"$GPGGA\r\n" * 30])
def test_where_a_converter_has_the_settings_it_is_named(sample: bytes) -> None:
    said = diagnose(sample, False, "", Scp0499Parser)
    assert "check baud rate and parity of the converter" in said


def test_parity_is_set_on_the_converter_that_has_it() -> None:
    """A plain network line carries no settings: those of the station would change nothing."""
    said = diagnose(ParityLine("E").sent(FRAMES), False, "", Scp0499Parser)
    assert "even parity: set the same on the converter" in said
    assert "this port" not in said
    assert not PortSettings("socket://10.0.0.9:4001").sets_line
    assert PortSettings("rfc2217://10.0.0.9:4001").sets_line
