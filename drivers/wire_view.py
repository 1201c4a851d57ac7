"""What passed over a line as rows for a person: bytes, text, timing, and what each was. Pure."""

from __future__ import annotations

import itertools
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from drivers.frames.base import Condition, FrameParser, Garbage, Item, WeightFrame
from drivers.wire import Passed

_MS = 1_000_000
_WINDOW_NS = 10_000_000_000
_NAMES = {0x0A: "LF", 0x0D: "CR", 0x02: "STX", 0x03: "ETX", 0x1B: "ESC", 0x00: "NUL"}


@dataclass(frozen=True, slots=True)
class WireRow:
    """One thing that passed.

    Args:
        at_ns: steady count when its last byte came.
        gap_ms: since the row before; None for the first.
        data: its bytes.
        what: what it was, or why it was nothing, in words.
        good: the scale sent it and it was understood.
        sent: it went to the scale.
    """

    at_ns: int
    gap_ms: int | None
    data: bytes
    what: str
    good: bool
    sent: bool = False

    @property
    def hex(self) -> str:
        """The bytes in hexadecimal."""
        return self.data.hex(" ")

    @property
    def text(self) -> str:
        """The bytes as text, control characters by their names."""
        return text_of(self.data)


@dataclass(frozen=True, slots=True)
class WireCount:
    """What came of late.

    Args:
        frames: weights within ten seconds.
        garbage: what was no frame within them.
        bytes: all bytes within them.
        gap_ms: the median time between two weights; None where there are fewer than two.
        seconds: how far back this looks: ten, or as far as bytes are kept.
    """

    frames: int
    garbage: int
    bytes: int
    gap_ms: int | None
    seconds: int = 10

    @property
    def bad_percent(self) -> int:
        """Share of garbage, rounded up."""
        total = self.frames + self.garbage
        return -(-self.garbage * 100 // total) if total else 0


def text_of(data: bytes) -> str:
    """Return bytes as text; what is not printable stands by its name in ‹›."""
    return "".join(
        chr(byte) if 0x20 <= byte < 0x7F else f"‹{_NAMES.get(byte, f'{byte:02X}')}›"
        for byte in data
    )


def rows_of(passed: Sequence[Passed], new_parser: Callable[[], FrameParser]) -> tuple[WireRow, ...]:
    """Return everything that passed as rows, the oldest first.

    Args:
        passed: in order.
        new_parser: makes the parser of the line.
    """
    parser = new_parser()
    rows: list[WireRow] = []
    last_ns: int | None = None
    for one in passed:
        if one.sent:
            found = [(one.data, "sent to the scale", False)]
        else:
            found = [(item.raw, _words(item), not isinstance(item, Garbage))
                     for item in parser.feed(one.data)]  # fmt: skip
        for data, what, good in found:
            gap = None if last_ns is None else (one.at_ns - last_ns) // _MS
            rows.append(WireRow(one.at_ns, gap, data, what, good, one.sent))
            last_ns = one.at_ns
    first = next((n for n, row in enumerate(rows) if not row.sent), None)
    if first is not None and not rows[first].good:
        del rows[first]  # the rest of a frame whose begin is no longer kept
    return tuple(rows)


def count_of(passed: Sequence[Passed], rows: Sequence[WireRow], now_ns: int) -> WireCount:
    """Return what came within the last ten seconds, or since the oldest bytes that are kept."""
    since = max([now_ns - _WINDOW_NS, *(one.at_ns for one in passed[:1])])
    late = [row for row in rows if row.at_ns >= since and not row.sent]
    good = [row.at_ns for row in late if row.good]
    gaps = sorted(after - before for before, after in itertools.pairwise(good))
    return WireCount(
        frames=len(good),
        garbage=len(late) - len(good),
        bytes=sum(len(one.data) for one in passed if one.at_ns >= since and not one.sent),
        gap_ms=gaps[len(gaps) // 2] // _MS if gaps else None,
        seconds=-(-(now_ns - since) // 1_000_000_000) if passed else 10,
    )


def _words(item: Item) -> str:
    match item:
        case WeightFrame():
            shown = "no weight" if item.digits is None else f"{item.digits} {item.unit}"
            said = [str(item.kind), "in motion" if item.motion else "at rest"]
            if item.condition is not Condition.NORMAL:
                said.append(str(item.condition))
            if item.high_resolution:
                said.append("high resolution")
            return f"{shown}, {', '.join(said)}"
        case Garbage():
            return item.why
        case _:
            return f"{item.kind}: {item.text}"
