"""Data reports of USB bar-code scanners, put into the form that serial scanners send. Pure.

Source: USB Implementers' Forum, *HID Point of Sale Usage Tables*, 1.02, bar-code scanner, usage
page 0x8C: 0x12 scanned data report, 0xFB to 0xFD the three characters of the symbology identifier
(ISO/IEC 15424), 0xFE decoded data, 0xFF decode data continued; and *HID Usage Tables*, 0x3B of the
generic desktop page, byte count. Which byte is which each scanner says in its descriptor. That the
count is of the decoded data alone is from memory; without a count the data end before the zeros.

A scan of more data than a report holds comes in several, each but the last one marked continued.
What comes out is symbology identifier, data, carriage return: see :mod:`drivers.scanner`.
"""

from __future__ import annotations

from drivers.frames.hid_fields import InputField, input_fields

USAGE_PAGE = 0x8C
_BYTE_COUNT = 0x0001_003B
_IDENTIFIER = tuple(USAGE_PAGE << 16 | usage for usage in (0xFB, 0xFC, 0xFD))
_DATA, _CONTINUED = (USAGE_PAGE << 16 | usage for usage in (0xFE, 0xFF))
_END = b"\r"
_ENDS = bytes.maketrans(b"\r\n", b"\0\0")
"""An end of line within the data must not cut it: as a zero it is refused with the whole scan."""


class ScannerReports:
    """Turns reports into what a serial scanner would send.

    Args:
        descriptor: the device's report descriptor.

    Raises:
        ValueError: it cannot be read, or tells of no decoded data.
    """

    def __init__(self, descriptor: bytes) -> None:
        fields = input_fields(descriptor)
        data = next((one for one in fields if one.usage == _DATA), None)
        if data is None or data.bit % 8 or data.bits % 8 or not data.bits:
            raise ValueError("its report descriptor tells of no decoded data")
        self._data = data
        mine = {one.usage: one for one in fields if one.report == data.report}
        self._count = mine.get(_BYTE_COUNT)
        self._continued = mine.get(_CONTINUED)
        self._identifier = tuple(mine[usage] for usage in _IDENTIFIER if usage in mine)
        self._going_on = False

    def read(self, report: bytes) -> bytes:
        """Return what a report adds to the stream; empty for reports of other kinds."""
        if not report or (self._data.report and report[0] != self._data.report):
            return b""
        data = self._data.of(report)
        if self._count is not None:
            data = data[: int.from_bytes(self._count.of(report), "little")]
        else:
            data = data.rstrip(b"\0")
        told = b"" if self._going_on else self._told(report)
        self._going_on = self._continued is not None and self._continued.is_set(report)
        return told + data.translate(_ENDS) + (b"" if self._going_on else _END)

    def _told(self, report: bytes) -> bytes:
        """The symbology identifier; empty where the scanner tells none."""
        parts: tuple[InputField, ...] = self._identifier
        told = b"".join(one.of(report) for one in parts)
        return told if len(told) == len(_IDENTIFIER) and told.startswith(b"]") else b""
