"""Reads the bar codes of a finished label back, before the label is released.

The linear and QR encoders share no code with the reader (zxing-cpp); the DataMatrix writer is
another library within it, and tests have libdmtx read it too. Compared are the transmitted
bytes and the symbology identifier: a reader's text may look alike for data that differ, and a plain
Code 128 symbol carries the same bytes as a GS1-128 one.
"""

from collections import Counter
from dataclasses import dataclass

import zxingcpp

from labels.raster import rasterise_pages
from labels.symbol import Symbol

# What to look for, by the first two characters of the symbology identifier (ISO/IEC 15424).
FORMATS = {
    "]C": zxingcpp.BarcodeFormat.Code128,
    "]d": zxingcpp.BarcodeFormat.DataMatrix,
    "]Q": zxingcpp.BarcodeFormat.QRCode,
    "]E": zxingcpp.BarcodeFormat.EAN13,
}


@dataclass(frozen=True, slots=True)
class Found:
    """One symbol as read: symbology identifier and transmitted bytes."""

    identifier: str
    data: bytes


@dataclass(frozen=True, slots=True)
class ReadBack:
    """Outcome of reading a label back.

    Attributes:
        ok: True when exactly the expected symbols were read.
        found: What was read.
        why: Empty when ok, else what differs.
    """

    ok: bool
    found: tuple[Found, ...]
    why: str


def read_back(pdf: bytes, expected: tuple[Symbol, ...], dots_per_mm: int = 8) -> ReadBack:
    """Set a label in dots, read its bar codes and compare them with what they must say.

    Args:
        pdf: The label.
        expected: Every symbol it must carry, no more and no fewer.
        dots_per_mm: Resolution of the print head.

    Raises:
        LabelError: The PDF cannot be opened.
    """
    formats = sorted({FORMATS[symbol.identifier[:2]] for symbol in expected}, key=int)
    if not formats:
        return ReadBack(False, (), "no bar code is expected; a label must carry at least one")
    found = _read(pdf, formats, dots_per_mm)
    wanted = Counter(Found(symbol.identifier, symbol.expected_bytes) for symbol in expected)
    missing, extra = wanted - Counter(found), Counter(found) - wanted
    if not missing and not extra:
        return ReadBack(True, found, "")
    parts = [f"not read: {one.identifier} {one.data!r}" for one in missing.elements()]
    parts += [f"read instead: {one.identifier} {one.data!r}" for one in extra.elements()]
    return ReadBack(False, found, "; ".join(parts))


def scan(pdf: bytes, dots_per_mm: int = 8) -> tuple[Found, ...]:
    """Return every bar code of a label, of any kind a label may carry, as a scanner sends it.

    Raises:
        LabelError: The PDF cannot be opened.
    """
    return _read(pdf, sorted(FORMATS.values(), key=int), dots_per_mm)


def _read(pdf: bytes, formats: list[zxingcpp.BarcodeFormat], dots_per_mm: int) -> tuple[Found, ...]:
    read = [
        code
        for page in rasterise_pages(pdf, dots_per_mm)
        for code in zxingcpp.read_barcodes(
            page,
            formats=zxingcpp.BarcodeFormats(formats),
            try_rotate=False,
            try_downscale=False,
            try_invert=False,
            binarizer=zxingcpp.Binarizer.FixedThreshold,  # as a head does: a dot is set or not
        )
    ]
    return tuple(Found(code.symbology_identifier, bytes(code.bytes)) for code in read)
