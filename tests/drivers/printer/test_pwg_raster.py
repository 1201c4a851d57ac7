"""PWG Raster pages: every dot arrives, as two readers of the format see it."""

from __future__ import annotations

import math
import struct
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from drivers.errors import PrinterError
from drivers.printer.pwg_raster import Bitmap, RasterType, pwg_raster
from tests.drivers.printer import libcups

WHITE, BLACK = 0x00, 0xFF


def bitmap_of(rows: list[str]) -> Bitmap:
    """Draw a bitmap with '#' for black."""
    width = len(rows[0])
    packed = b"".join(
        int(row.replace("#", "1").replace(".", "0").ljust(-width % 8 + width, "0"), 2).to_bytes(
            (width + 7) // 8, "big"
        )
        for row in rows
    )
    return Bitmap(width, len(rows), packed)


def unpacked(document: bytes) -> bytes:
    """Read a page by the words of PWG 5102.4 (from memory): repeated lines of repeated octets."""
    assert document[:4] == b"RaS2"
    header, rest = document[4 : 4 + 1796], document[4 + 1796 :]
    (stride,) = struct.unpack_from(">I", header, 392)
    (height,) = struct.unpack_from(">I", header, 376)
    out = bytearray()
    place = 0
    while len(out) < stride * height:
        times, line = rest[place] + 1, bytearray()
        place += 1
        while len(line) < stride:
            count = rest[place]
            assert count != 128
            if count < 128:
                line += rest[place + 1 : place + 2] * (count + 1)
                place += 2
            else:
                line += rest[place + 1 : place + 1 + 257 - count]
                place += 1 + 257 - count
        assert len(line) == stride
        out += line * times
    assert place == len(rest)
    assert len(out) == stride * height
    return bytes(out)


@st.composite
def bitmaps(draw: st.DrawFn) -> Bitmap:
    """Lines much like a label's: long runs, some noise, many lines the same."""
    width = draw(st.integers(1, 2500))
    stride = (width + 7) // 8
    beyond = 0xFF << (-width % 8) & 0xFF
    packed = bytearray()
    for _ in range(draw(st.integers(1, 5))):
        parts = draw(
            st.lists(
                st.one_of(
                    st.tuples(st.binary(min_size=1, max_size=1), st.integers(1, 300)),
                    st.tuples(st.binary(min_size=1, max_size=200), st.just(1)),
                ),
                min_size=1,
            )
        )
        line = bytearray(b"".join(part * times for part, times in parts)[:stride].ljust(stride))
        line[-1] &= beyond
        packed += line * draw(st.sampled_from((1, 2, 3, 255, 256, 257, 600)))
    return Bitmap(width, len(packed) // stride, bytes(packed))


def greys(bitmap: Bitmap) -> bytes:
    out = bytearray()
    for line in bitmap.lines():
        bits = bin(int.from_bytes(b"\1" + line, "big"))[3:][: bitmap.width]
        out += bytes(0 if bit == "1" else 255 for bit in bits)
    return bytes(out)


@settings(max_examples=60)
@given(bitmaps())
def test_every_dot_comes_back(bitmap: Bitmap) -> None:
    assert unpacked(pwg_raster(bitmap, 203, 10000, 6000)) == bitmap.packed


@pytest.mark.parametrize("kind", RasterType)
def test_the_cups_library_sees_the_same_dots(kind: RasterType, tmp_path: Path) -> None:
    libcups.library()

    @settings(max_examples=30, suppress_health_check=[HealthCheck.too_slow])
    @given(bitmaps())
    def compare(bitmap: Bitmap) -> None:
        document = pwg_raster(bitmap, 203, 10000, 6000, kind)
        header, name, dots = libcups.raster_page(document, tmp_path)
        assert name == b"PwgRaster"
        assert header["size"] == (bitmap.width, bitmap.height)
        assert header["resolution"] == (203, 203)
        assert header["points"] == (283, 170)  # 100 × 60 mm, of 1/72 inch
        assert header["copies"] == header["colours"] == (1,)
        if kind is RasterType.BLACK_1:
            assert header["bits"] == (1, 1)
            assert header["colour"] == (0, 3)  # CUPS_CSPACE_K: 1 is black
            assert dots == bitmap.packed
        else:
            assert header["bits"] == (8, 8)
            assert header["colour"] == (0, 18)  # CUPS_CSPACE_SW: 0 is black
            assert dots == greys(bitmap)

    compare()


@pytest.mark.parametrize(
    ("rows", "lines"),
    [
        (["." * 16], bytes([0, 1, WHITE])),
        (["#" * 1024] * 3, bytes([2, 127, BLACK])),
        (["#" * 1032], bytes([0, 127, BLACK, 0, BLACK])),
        (["." * 8] * 257, bytes([255, 0, WHITE, 0, 0, WHITE])),
        (["#......." + ".#......"], bytes([0, 255, 0x80, 0x40])),
        (["########.....", "########....#"], bytes([0, 255, 0xFF, 0, 0, 255, 0xFF, 8])),
    ],
)
def test_lines_are_packed_as_the_standard_says(rows: list[str], lines: bytes) -> None:
    assert pwg_raster(bitmap_of(rows), 203, 10000, 6000)[1800:] == lines


def test_same_dots_give_the_same_bytes() -> None:
    bitmap = bitmap_of(["#.#.#", ".#.#."])
    assert pwg_raster(bitmap, 300, 6000, 4000) == pwg_raster(bitmap, 300, 6000, 4000)


def test_size_is_named_by_pwg_5101_1() -> None:
    document = pwg_raster(bitmap_of(["#"]), 203, 10000, 6050)
    assert document[4 + 1732 :][:40].rstrip(b"\0").startswith(b"custom_100x60.5mm_100x60.5mm")


def test_label_of_600_dots_per_inch_is_small() -> None:
    """Mostly white, as labels are: far below the 420 kB of its dots."""
    width, height = 2362, 1417
    line = b"\xaa" * 40 + bytes(math.ceil(width / 8) - 40)
    white = bytes(len(line))
    document = pwg_raster(Bitmap(width, height, line * 400 + white * 1017), 600, 10000, 6000)
    assert len(document) < 2000


@pytest.mark.parametrize(
    ("width", "height", "packed", "why"),
    [
        (0, 1, b"", "allowed is 1 to 65535"),
        (1, 65536, bytes(65536), "allowed is 1 to 65535"),
        (9, 2, bytes(3), "takes 4 octets and has 3"),
        (9, 1, b"\x00\x40", "black beyond its right edge"),
        (8, 1, b"\x00\x00", "takes 1 octets and has 2"),
    ],
)
def test_wrong_bitmap_is_refused(width: int, height: int, packed: bytes, why: str) -> None:
    with pytest.raises(PrinterError, match=why):
        Bitmap(width, height, packed)
