"""Checksums that lines of scales carry. Pure.

The 16-bit ones are named and parametrised as in the *Catalogue of parametrised CRC algorithms*
(G. Cook); each has that catalogue's check value over the nine bytes ``123456789``.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import reduce
from operator import xor


@dataclass(frozen=True, slots=True)
class Crc16:
    """A 16-bit cyclic redundancy check.

    Args:
        polynomial: without its highest term.
        start: of the register.
        mirrored: bits go in and come out lowest first.
        flipped: what the result is combined with by exclusive or.
    """

    polynomial: int
    start: int
    mirrored: bool
    flipped: int = 0

    def __call__(self, data: bytes) -> int:
        """Return the check of ``data``."""
        register = self.start
        for byte in data:
            register ^= (_mirrored(byte, 8) if self.mirrored else byte) << 8
            for _ in range(8):
                carried = register & 0x8000
                register = register << 1 & 0xFFFF
                if carried:
                    register ^= self.polynomial
        return (_mirrored(register, 16) if self.mirrored else register) ^ self.flipped


def _mirrored(number: int, bits: int) -> int:
    return int(f"{number:0{bits}b}"[::-1], 2)


@dataclass(frozen=True, slots=True)
class Kind:
    """One kind of checksum: how many bytes it has and how it is made."""

    size: int
    of: Callable[[bytes], int]


KINDS: Mapping[str, Kind] = {
    "sum": Kind(1, lambda data: sum(data) % 256),
    "negative sum": Kind(1, lambda data: -sum(data) % 256),
    "xor": Kind(1, lambda data: reduce(xor, data, 0)),
    "CRC-16/ARC": Kind(2, Crc16(0x8005, 0x0000, True)),
    "CRC-16/MODBUS": Kind(2, Crc16(0x8005, 0xFFFF, True)),
    "CRC-16/USB": Kind(2, Crc16(0x8005, 0xFFFF, True, 0xFFFF)),
    "CRC-16/KERMIT": Kind(2, Crc16(0x1021, 0x0000, True)),
    "CRC-16/IBM-SDLC": Kind(2, Crc16(0x1021, 0xFFFF, True, 0xFFFF)),
    "CRC-16/XMODEM": Kind(2, Crc16(0x1021, 0x0000, False)),
    "CRC-16/IBM-3740": Kind(2, Crc16(0x1021, 0xFFFF, False)),
    "CRC-16/GENIBUS": Kind(2, Crc16(0x1021, 0xFFFF, False, 0xFFFF)),
}
"""By name: plain sums of all bytes, and published 16-bit checks."""

FORMS = ("hex", "decimal", "tail")
"""How it is written: digits in the field ``check``, or bytes after the end, high byte first."""


@dataclass(frozen=True, slots=True)
class Checksum:
    """The checksum of a described line.

    Args:
        kind: one of KINDS.
        form: one of FORMS.
        with_start: the bytes that start the line count too.
        with_end: the bytes that end it count too; only with the form ``tail``.
    """

    kind: str
    form: str = "hex"
    with_start: bool = False
    with_end: bool = False

    @property
    def tail(self) -> int:
        """How many bytes follow the end of the line."""
        return KINDS[self.kind].size if self.form == "tail" else 0

    @property
    def width(self) -> int:
        """How wide the field ``check`` must be; 0 where there is none."""
        size = KINDS[self.kind].size
        return {"hex": 2 * size, "decimal": 3 if size == 1 else 5, "tail": 0}[self.form]

    def agrees(self, covered: bytes, written: bytes) -> bool:
        """Whether ``written`` is the checksum of ``covered``."""
        due = KINDS[self.kind].of(covered)
        if self.form == "tail":
            return written == due.to_bytes(self.tail, "big")
        if len(written) != self.width or not written.isalnum():
            return False
        try:
            return int(written, 16 if self.form == "hex" else 10) == due
        except ValueError:
            return False
