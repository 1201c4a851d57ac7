"""Parity in software, for lines of 7 data bits.

A character of 7 bits with parity is as long as one of 8 bits without, so it can be received as the
latter, with the parity as its highest bit. A byte whose parity is wrong is passed on as 0xFF, which
no protocol of 7-bit text contains: the frame around it is then refused.
"""

from __future__ import annotations

DAMAGED = 0xFF


class ParityLine:
    """Adds and checks the parity bit.

    Args:
        parity: ``E`` even or ``O`` odd number of ones, the parity bit included.
    """

    def __init__(self, parity: str) -> None:
        odd = {"E": 0, "O": 1}[parity]
        self._sent = bytes(_with_parity(n & 0x7F, odd) for n in range(256))
        self._received = bytes(
            n & 0x7F if n.bit_count() % 2 == odd else DAMAGED for n in range(256)
        )

    def sent(self, data: bytes) -> bytes:
        """Give each 7-bit character its parity bit."""
        return data.translate(self._sent)

    def received(self, data: bytes) -> bytes:
        """Take the parity bit off each character; one with a wrong parity becomes DAMAGED."""
        return data.translate(self._received)


def _with_parity(character: int, odd: int) -> int:
    return character | ((character.bit_count() % 2 ^ odd) << 7)
