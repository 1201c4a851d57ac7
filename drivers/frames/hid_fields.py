"""Where the fields of a USB device's input reports lie, by its report descriptor. Pure.

Source: USB Implementers' Forum, *Device Class Definition for HID*, 1.11, section 6.2.2 (report
descriptor: short and long items, main, global and local ones, and the order fields have in a
report). A short item is

    byte   0                                  1..size
           tag (4 bits) type (2) size (2)     value, low byte first; size 3 stands for four bytes

Fields follow each other in a report without gaps, the first after the byte with the report's id
where reports have one. Each usage named before an input item is one field; the last one named
goes on through what is left of the item.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

_LONG = 0xFE
_MAIN, _GLOBAL, _LOCAL = 0, 1, 2
_INPUT = 0x8
_USAGE_PAGE, _SIZE, _ID, _COUNT, _PUSH, _POP = 0x0, 0x7, 0x8, 0x9, 0xA, 0xB
_USAGE, _FIRST, _LAST = 0x0, 0x1, 0x2
_MOST_BITS = 8 * 4096
"""Reports longer than this are taken for a broken descriptor."""


class DescriptorError(ValueError):
    """A descriptor that cannot be read; says where."""


@dataclass(frozen=True, slots=True)
class InputField:
    """One field of an input report.

    Args:
        report: id of its report; 0 where reports have none.
        usage: usage page in the high 16 bits, usage in the low ones.
        bit: where it begins, counted from the first byte of the report, its id included.
        bits: how long it is.
    """

    report: int
    usage: int
    bit: int
    bits: int

    def of(self, report: bytes) -> bytes:
        """Its bytes in a report, as many as the report has; for fields of whole bytes."""
        return report[self.bit // 8 : (self.bit + self.bits) // 8]

    def is_set(self, report: bytes) -> bool:
        """Whether any of its bits is 1."""
        whole = int.from_bytes(report, "little") >> self.bit
        return whole & ((1 << self.bits) - 1) != 0


@dataclass(frozen=True, slots=True)
class _Globals:
    page: int = 0
    size: int = 0
    count: int = 0
    report: int = 0


@dataclass(slots=True)
class _State:
    now: _Globals = field(default_factory=_Globals)
    kept: list[_Globals] = field(default_factory=list)
    usages: list[int] = field(default_factory=list)
    first: int = 0
    ends: dict[int, int] = field(default_factory=dict)


def input_fields(descriptor: bytes) -> tuple[InputField, ...]:
    """Return the named fields of all input reports, in their order.

    Raises:
        DescriptorError: it ends within an item, or a report is beyond all measure.
    """
    state, found = _State(), []
    for kind, tag, value, size in _items(descriptor):
        if kind == _GLOBAL:
            _set_global(state, tag, value)
        elif kind == _LOCAL:
            _set_local(state, tag, value if size == 4 else state.now.page << 16 | value)
        elif kind == _MAIN:
            if tag == _INPUT:
                found += _fields(state)
            state.usages = []
    return tuple(found)


def _items(descriptor: bytes) -> Iterator[tuple[int, int, int, int]]:
    """Kind, tag, value and size of each item."""
    at = 0
    while at < len(descriptor):
        head = descriptor[at]
        size = 4 if head & 3 == 3 else head & 3
        if head == _LONG:
            size = descriptor[at + 1] + 2 if at + 1 < len(descriptor) else 2
        value = descriptor[at + 1 : at + 1 + size]
        if len(value) < size:
            raise DescriptorError(f"the report descriptor ends within its item at byte {at}")
        if head != _LONG:
            yield head >> 2 & 3, head >> 4, int.from_bytes(value, "little"), size
        at += 1 + size


def _set_global(state: _State, tag: int, value: int) -> None:
    if tag == _PUSH:
        state.kept.append(state.now)
    elif tag == _POP and state.kept:
        state.now = state.kept.pop()
    else:
        names = {_USAGE_PAGE: "page", _SIZE: "size", _COUNT: "count", _ID: "report"}
        if tag in names:
            state.now = replace(state.now, **{names[tag]: value})


def _set_local(state: _State, tag: int, usage: int) -> None:
    if tag == _USAGE:
        state.usages.append(usage)
    elif tag == _FIRST:
        state.first = usage
    elif tag == _LAST and usage - state.first < _MOST_BITS:
        state.usages += range(state.first, usage + 1)


def _fields(state: _State) -> list[InputField]:
    now = state.now
    begin = state.ends.get(now.report, 8 if now.report else 0)
    end = begin + now.size * now.count
    if end > _MOST_BITS:
        raise DescriptorError(f"input report {now.report} would be {end // 8} bytes long")
    state.ends[now.report] = end
    named = state.usages[: now.count]
    if not named:
        return []  # a gap
    starts = [begin + place * now.size for place in range(len(named))]
    return [
        InputField(now.report, usage, start, after - start)
        for usage, start, after in zip(named, starts, [*starts[1:], end], strict=True)
    ]
