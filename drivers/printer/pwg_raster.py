"""Pages of dots for printers that take no PDF: PWG Raster (PWG 5102.4-2012).

    "RaS2" │ page header, 1796 octets │ lines
    a line is: times-1 │ runs          (the same line up to 256 times)
    a run is:  0…127 │ octet           (the octet 1 to 128 times)
           or  129…255 │ octets        (257 minus that many octets as they stand)

One page, black on white, either one bit a dot (black_1) or one octet a dot (sgray_8). What is not
set in the header stays 0.
"""

from __future__ import annotations

import re
import struct
from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from itertools import groupby

from drivers.errors import PrinterError

PWG_RASTER = "image/pwg-raster"
_SYNC = b"RaS2"
_HEADER = 1796
_MOST_TIMES = 256
_MOST_IN_RUN = 128
_MOST_DOTS = 0xFFFF
_RUN = re.compile(rb"(.)\1{1,127}", re.DOTALL)


class RasterType(StrEnum):
    """How a dot is written; the words of ``pwg-raster-document-type-supported``."""

    BLACK_1 = "black_1"
    SGRAY_8 = "sgray_8"


# By type: bits of a dot and the standard's number of the colour space (3 = black, where 1 is ink;
# 18 = sGray, where 0 is black).
_KINDS = {RasterType.BLACK_1: (1, 3), RasterType.SGRAY_8: (8, 18)}


@dataclass(frozen=True, slots=True)
class Bitmap:
    """Dots of one page.

    Args:
        width: dots in a line, 1 to 65535.
        height: lines, 1 to 65535.
        packed: the lines from the top, each in whole octets, the leftmost dot in the highest bit,
            1 is black; bits beyond the width are 0.

    Raises:
        PrinterError: the size is not allowed, or the octets are not those of that size.
    """

    width: int
    height: int
    packed: bytes

    def __post_init__(self) -> None:
        size = f"bitmap of {self.width} × {self.height} dots"
        if not (0 < self.width <= _MOST_DOTS and 0 < self.height <= _MOST_DOTS):
            raise PrinterError(size, f"allowed is 1 to {_MOST_DOTS} each way")
        if len(self.packed) != self.stride * self.height:
            raise PrinterError(
                size, f"takes {self.stride * self.height} octets and has {len(self.packed)}"
            )
        beyond = 0xFF >> (self.width % 8 or 8)
        if any(octet & beyond for octet in self.packed[self.stride - 1 :: self.stride]):
            raise PrinterError(size, "has black beyond its right edge")

    @property
    def stride(self) -> int:
        """Octets of a line."""
        return (self.width + 7) // 8

    def lines(self) -> Iterator[bytes]:
        """Give the lines from the top."""
        for start in range(0, len(self.packed), self.stride):
            yield self.packed[start : start + self.stride]


def pwg_raster(
    bitmap: Bitmap,
    dots_per_inch: int,
    media_width: int,
    media_height: int,
    kind: RasterType = RasterType.BLACK_1,
) -> bytes:
    """Return a one-page document with exactly these dots.

    Args:
        bitmap: the dots.
        dots_per_inch: of the print head, both ways, as the printer states it.
        media_width: width of the label stock, 1/100 mm.
        media_height: its height, 1/100 mm.
        kind: how a dot is written.
    """
    lines = bitmap.lines()
    if kind is RasterType.SGRAY_8:
        lines = (_greys(line, bitmap.width) for line in lines)
    header = _header(bitmap, dots_per_inch, media_width, media_height, kind)
    return _SYNC + header + b"".join(_compressed(lines))


def _header(
    bitmap: Bitmap, dpi: int, media_width: int, media_height: int, kind: RasterType
) -> bytes:
    bits, colour_space = _KINDS[kind]
    points = (round(media_width * 72 / 2540), round(media_height * 72 / 2540))
    size = f"{media_width / 100:g}x{media_height / 100:g}mm"
    fields: tuple[tuple[int, tuple[int, ...]], ...] = (
        (276, (dpi, dpi)),  # HWResolution
        (340, (1,)),  # NumCopies
        (352, points),  # PageSize
        (372, (bitmap.width, bitmap.height)),  # Width, Height
        (384, (bits, bits)),  # BitsPerColor, BitsPerPixel
        (392, ((bitmap.width * bits + 7) // 8,)),  # BytesPerLine
        (396, (0, colour_space)),  # ColorOrder, ColorSpace
        (420, (1,)),  # NumColors
        (452, (1, 1, 1)),  # TotalPageCount, CrossFeedTransform, FeedTransform
        (464, (0, 0, bitmap.width, bitmap.height)),  # ImageBox
    )
    header = bytearray(_HEADER)
    header[0:9] = b"PwgRaster"
    for offset, numbers in fields:
        struct.pack_into(f">{len(numbers)}I", header, offset, *numbers)
    name = f"custom_{size}_{size}".encode()  # PageSizeName, spelt by PWG 5101.1
    header[1732 : 1732 + len(name)] = name
    return bytes(header)


def _compressed(lines: Iterator[bytes]) -> Iterator[bytes]:
    for line, same in groupby(lines):
        times = sum(1 for _ in same)
        runs = _runs(line)
        for first in range(0, times, _MOST_TIMES):
            yield bytes([min(_MOST_TIMES, times - first) - 1]) + runs


def _runs(line: bytes) -> bytes:
    out = bytearray()
    place = 0
    for run in _RUN.finditer(line):
        _put_as_they_stand(out, line[place : run.start()])
        place = run.end()
        out += bytes([place - run.start() - 1, line[place - 1]])
    _put_as_they_stand(out, line[place:])
    return bytes(out)


def _put_as_they_stand(out: bytearray, octets: bytes) -> None:
    for first in range(0, len(octets), _MOST_IN_RUN):
        some = octets[first : first + _MOST_IN_RUN]
        # One octet alone is a run of one: 257 - 1 would not fit.
        out.append(0 if len(some) == 1 else 257 - len(some))
        out += some


_EIGHT_GREYS = tuple(
    bytes(0 if octet & bit else 255 for bit in (128, 64, 32, 16, 8, 4, 2, 1))
    for octet in range(256)
)


def _greys(line: bytes, width: int) -> bytes:
    return b"".join(map(_EIGHT_GREYS.__getitem__, line))[:width]
