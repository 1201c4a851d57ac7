"""What to check, from the bytes of a line that carries no frames."""

import random

import pytest

from drivers.diagnosis import diagnose
from drivers.frames.scp0499 import Scp0499Parser
from drivers.parity import ParityLine

FRAMES = b"\n 1G         254g  \r" * 10


@pytest.mark.parametrize(
    ("sample", "frames_seen", "words"),
    [
        (random.Random(4).randbytes(300), False, "none is a frame: check baud rate and parity"),
        (b"\x00" * 300, False, "none is a frame: check baud rate and parity"),
        (b"x" * 300, False, "no line ever starts or ends"),
        (b"$GPGGA,123519,4807.038,N*47\r\n" * 9, False, "another device"),
        (ParityLine("E").sent(FRAMES), False, "even parity: set bytesize 7 and parity E"),
        (ParityLine("O").sent(FRAMES), False, "odd parity: set bytesize 7 and parity O"),
        (FRAMES[:50] + b"\xff\xff" + FRAMES[60:], True, "many frames arrive damaged"),
    ],
)
def test_words(sample: bytes, frames_seen: bool, words: str) -> None:
    said = diagnose(sample, frames_seen, "9600 8N1", Scp0499Parser)
    assert words in said
    assert frames_seen or "9600 8N1" in said
