"""Checksums against published check values.

The 16-bit ones: *Catalogue of parametrised CRC algorithms* (G. Cook), check values over the nine
bytes 123456789 (from memory), and the standard library's own CRC-CCITT for the XMODEM one.
Exclusive or: ISO 1155:1978, longitudinal parity.
"""

import binascii

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.frames.checksum import FORMS, KINDS, Checksum

CHECKS = {
    "sum": 0xDD,  # 0x31 + … + 0x39 = 0x1DD
    "negative sum": 0x23,
    "xor": 0x31,
    "CRC-16/ARC": 0xBB3D,
    "CRC-16/MODBUS": 0x4B37,
    "CRC-16/USB": 0xB4C8,
    "CRC-16/KERMIT": 0x2189,
    "CRC-16/IBM-SDLC": 0x906E,
    "CRC-16/XMODEM": 0x31C3,
    "CRC-16/IBM-3740": 0x29B1,
    "CRC-16/GENIBUS": 0xD64E,
}


@pytest.mark.parametrize("kind", KINDS)
def test_published_check_value(kind: str) -> None:
    assert KINDS[kind].of(b"123456789") == CHECKS[kind]


@given(st.binary(max_size=80))
def test_xmodem_is_the_standard_librarys(data: bytes) -> None:
    assert KINDS["CRC-16/XMODEM"].of(data) == binascii.crc_hqx(data, 0)


@given(st.binary(max_size=80), st.sampled_from(sorted(KINDS)), st.sampled_from(FORMS))
def test_own_check_agrees_and_another_does_not(data: bytes, kind: str, form: str) -> None:
    checksum, due = Checksum(kind, form), KINDS[kind].of(data)

    def written(number: int) -> bytes:
        if form == "tail":
            return number.to_bytes(checksum.tail, "big")
        digits = "X" if form == "hex" else "d"
        return f"{number:0{checksum.width}{digits}}".encode()

    assert len(written(due)) == (checksum.width or checksum.tail)
    assert checksum.agrees(data, written(due))
    assert not checksum.agrees(data, written(due ^ 1))
    assert not checksum.agrees(data, b"")


@pytest.mark.parametrize("written", [b"G1", b" 1", b"+1", b"1", b"001", b"\xb21"])
def test_what_is_not_written_as_described_never_agrees(written: bytes) -> None:
    assert Checksum("sum").agrees(b"\x01", b"01")
    assert not Checksum("sum").agrees(b"\x01", written)
