"""Parity in software: every single flipped bit of a 7-bit line is seen."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.frames.base import Garbage
from drivers.frames.scp0499 import Scp0499Parser
from drivers.parity import DAMAGED, ParityLine

FRAME = b"\n 1N       1.250kg \r"


# Even parity of ASCII (ITU-T V.4): A = 100 0001 has two ones, C = 100 0011 has three.
@pytest.mark.parametrize(
    ("parity", "character", "sent"),
    [("E", b"A", b"\x41"), ("E", b"C", b"\xc3"), ("O", b"A", b"\xc1"), ("O", b"C", b"\x43")],
)
def test_known_characters(parity: str, character: bytes, sent: bytes) -> None:
    assert ParityLine(parity).sent(character) == sent


@given(st.sampled_from("EO"), st.binary().map(lambda b: bytes(c & 0x7F for c in b)))
def test_what_is_sent_is_received(parity: str, text: bytes) -> None:
    line = ParityLine(parity)
    assert line.received(line.sent(text)) == text


@pytest.mark.parametrize("parity", ["E", "O"])
def test_every_flipped_bit_makes_the_frame_garbage(parity: str) -> None:
    line = ParityLine(parity)
    sent = line.sent(FRAME)
    for place in range(len(sent)):
        for bit in range(8):
            damaged = bytearray(sent)
            damaged[place] ^= 1 << bit
            received = line.received(bytes(damaged))
            assert received[place] == DAMAGED
            items = Scp0499Parser().feed(received + FRAME)
            assert all(isinstance(item, Garbage) for item in items[:-1])
            assert items[-1].raw == FRAME


def test_other_parity_of_the_line_damages_everything() -> None:
    assert set(ParityLine("O").received(ParityLine("E").sent(FRAME))) == {DAMAGED}
