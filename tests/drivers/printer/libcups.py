"""The reference IPP and raster reader of the CUPS library, to judge our writers by."""

from __future__ import annotations

import ctypes
import ctypes.util
import os
import struct
from pathlib import Path

import pytest

_HEADER = 1796
_OFFSETS = {
    "resolution": (276, 2),
    "copies": (340, 1),
    "points": (352, 2),
    "size": (372, 2),
    "bits": (384, 2),
    "stride": (392, 1),
    "colour": (396, 2),
    "colours": (420, 1),
}


def library() -> ctypes.CDLL:
    """Return the library, or skip the test by its name."""
    name = ctypes.util.find_library("cups")
    if name is None:
        pytest.skip("needs libcups; `sh .setup/station test` installs it where it may")
    found = ctypes.CDLL(name)
    for function in ("ippNew", "cupsRasterOpen"):
        getattr(found, function).restype = ctypes.c_void_p
    found.cupsRasterErrorString.restype = ctypes.c_char_p
    return found


def again(message: bytes, folder: Path) -> bytes:
    """Let the library read a message and write it anew."""
    cups = library()
    came, went = folder / "in.ipp", folder / "out.ipp"
    came.write_bytes(message)
    held = ctypes.c_void_p(cups.ippNew())
    try:
        _with_file(came, os.O_RDONLY, lambda fd: _demand(cups.ippReadFile(fd, held) == 3, "read"))
        cups.ippSetState(held, 0)  # IPP_STATE_IDLE: from the start
        _with_file(
            went,
            os.O_WRONLY | os.O_CREAT | os.O_TRUNC,
            lambda fd: _demand(cups.ippWriteFile(fd, held) == 3, "written"),
        )
    finally:
        cups.ippDelete(held)
    return went.read_bytes()


def raster_page(document: bytes, folder: Path) -> tuple[dict[str, tuple[int, ...]], bytes, bytes]:
    """Let the library read a raster page: numbers of its header, its name, its dots."""
    cups = library()
    file = folder / "page.pwg"
    file.write_bytes(document)
    fd = os.open(file, os.O_RDONLY)
    try:
        stream = ctypes.c_void_p(cups.cupsRasterOpen(fd, 0))
        header = ctypes.create_string_buffer(_HEADER)
        _demand(bool(cups.cupsRasterReadHeader2(stream, header)), "read as raster")
        numbers = {
            name: struct.unpack_from(f"={count}I", header.raw, offset)
            for name, (offset, count) in _OFFSETS.items()
        }
        length = numbers["stride"][0] * numbers["size"][1]
        pixels = ctypes.create_string_buffer(length)
        got = cups.cupsRasterReadPixels(stream, pixels, length)
        _demand(got == length, f"read whole ({got} of {length})")
        more = cups.cupsRasterReadHeader2(stream, ctypes.create_string_buffer(_HEADER))
        _demand(not more, "at its end after one page")
        cups.cupsRasterClose(stream)
    finally:
        os.close(fd)
    return numbers, header.raw[:64].rstrip(b"\0"), pixels.raw


def _with_file(path: Path, flags: int, use) -> None:
    fd = os.open(path, flags, 0o600)
    try:
        use(fd)
    finally:
        os.close(fd)


def _demand(well: bool, what: str) -> None:
    assert well, f"the CUPS library says that this cannot be {what}"
