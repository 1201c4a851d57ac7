"""Data reports of USB weighing devices. Pure.

Source: USB Implementers' Forum, *HID Point of Sale Usage Tables*, 1.02, weighing devices, usage
page 0x8D (usages from the public tables; the order of the fields in a report is as commonly
described, from memory). A data report is six bytes:

    byte   0         1        2      3                       4..5
           id 3, 4   status   unit   exponent, signed        weight, low byte first

The weight has no sign: below zero is told by the status alone. There is neither gross nor net.
In the stream each report stands behind one byte with its length, since reports of other kinds come
over the same line. The first report after opening may be an old one and is left out.
"""

from __future__ import annotations

from decimal import Decimal

from drivers.frames.base import Answer, AnswerKind, Condition, Garbage, Item, Kind, WeightFrame

USAGE_PAGE = 0x8D
SET_ZERO = b"\x02\x02"
"""Control report 2 with bit 1, zero scale."""
_DATA_IDS = (3, 4)
_LENGTH = 6
_MOST = 64
_STATUSES = {
    1: (Condition.NOT_DISPLAYED, False),
    2: (Condition.CENTRE_OF_ZERO, False),
    3: (Condition.NORMAL, True),
    4: (Condition.NORMAL, False),
    5: (Condition.UNDER_CAPACITY, False),
    6: (Condition.OVER_CAPACITY, False),
    7: (Condition.NOT_DISPLAYED, False),
    8: (Condition.ZERO_ERROR, False),
}
_SHOWN = frozenset({Condition.CENTRE_OF_ZERO, Condition.NORMAL, Condition.OVER_CAPACITY})
UNITS = {
    1: "mg",
    2: "g",
    3: "kg",
    4: "ct",
    5: "tael",
    6: "gr",
    7: "dwt",
    8: "t",
    9: "ton",
    10: "ozt",
    11: "oz",
    12: "lb",
}
"""Usages 0x51 to 0x5C, in the order of the table."""


def in_stream(report: bytes) -> bytes:
    """Return a report as it stands in the stream."""
    return bytes([len(report)]) + report


def read_report(report: bytes) -> Item:
    """Read one report, its id first."""
    if len(report) != _LENGTH or report[0] not in _DATA_IDS:
        return Answer(AnswerKind.TEXT, f"report {report.hex(' ')}", report)
    status, unit = report[1], report[2]
    exponent = int.from_bytes(report[3:4], "little", signed=True)
    if status not in _STATUSES:
        return Garbage(report, f"status is {status}, allowed is 1 to 8")
    if unit not in UNITS:
        return Garbage(report, f"unit is {unit}, allowed is 1 to 12")
    if not -9 <= exponent <= 6:
        return Garbage(report, f"exponent is {exponent}, no scale needs more than -9 to 6")
    condition, motion = _STATUSES[status]
    weight = Decimal(int.from_bytes(report[4:6], "little")).scaleb(exponent)
    return WeightFrame(
        digits=f"{weight:f}" if condition in _SHOWN else None,
        unit=UNITS[unit],
        kind=Kind.GROSS,
        high_resolution=False,
        motion=motion,
        condition=condition,
        range_no=1,
        raw=report,
    )


class HidScaleParser:
    """Parses the stream of reports; see drivers.frames.base.FrameParser."""

    MAX_PENDING = _MOST + 1

    def __init__(self) -> None:
        self._pending = b""
        self._first = True

    @property
    def frame_start(self) -> bytes:
        """Nothing marks the start of a report."""
        return b""

    @property
    def pending(self) -> int:
        """Number of bytes kept that are not yet part of an item."""
        return len(self._pending)

    def feed(self, chunk: bytes) -> list[Item]:
        """Take the next bytes of the stream; return what is complete, in order."""
        data = self._pending + chunk
        items: list[Item] = []
        start = 0
        while start < len(data):
            length = data[start]
            if not 1 <= length <= _MOST:
                items.append(Garbage(data[start : start + 1], f"a report of {length} bytes"))
                start += 1
                continue
            end = start + 1 + length
            if end > len(data):
                break
            items.append(self._item(data[start + 1 : end]))
            start = end
        self._pending = data[start:]
        return items

    def _item(self, report: bytes) -> Item:
        if self._first:
            self._first = False
            return Garbage(report, "the first report after opening may be an old one")
        return read_report(report)
