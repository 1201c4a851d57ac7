r"""The open Standard Scale Serial Communication Protocol, SMA SCP-0499, Levels 1 and 2.

Source: Scale Manufacturers Association, *Standard Scale Serial Communication Protocol (SMA
SCP-0499)*, 1st edition, 24 April 1999, in its public reproductions. A weight is 20 bytes:

    byte   0    1   2   3   4   5   6..15        16..18  19
           LF   s   r   n   m   f   xxxxxx.xxx   uuu     CR

    s  Z centre of zero, O over, U under capacity, space none;
       E zero error, I initial zero error, T tare error: these three come with ten dashes
       (met in the field as well: e, weight not displayed, with dashes)
    r  range, from 1
    n  G gross, N net, T tare; g and n in high resolution
    m  M in motion, space at rest
    f  reserved
    x  right-justified, filled with spaces; minus directly before the digits; at least one digit
       before a decimal point; a decimal point only with digits after it
    u  left-justified; the standard prints the filling space as "_" and some scales send that

Other replies: ``LF ? CR`` unknown command, ``LF ! CR`` line error seen by the scale,
``LF r e c m CR`` diagnostics, ``LF xxx:text CR`` one line of a dialogue.

The line gets damaged before a frame (bytes that belong to none), inside one (a field that is not
allowed) and at its end (a new LF, or no CR at all). Each of these becomes Garbage, and the search
goes on at the next LF. The frame has no checksum, so a damaged digit may look right: only the
agreement of frames (drivers.steady) catches that.

A scale sends few different frames and each of them often, so a frame once read strictly is known
by its bytes from then on.
"""

from __future__ import annotations

import re

from drivers.frames.base import (
    Answer,
    AnswerKind,
    Condition,
    Garbage,
    Item,
    Kind,
    WeightFrame,
)

FRAME_LENGTH = 20
_LF, _CR = b"\n", b"\r"
_DASHES = "-" * 10

_CONDITIONS = {
    " ": Condition.NORMAL,
    "Z": Condition.CENTRE_OF_ZERO,
    "O": Condition.OVER_CAPACITY,
    "U": Condition.UNDER_CAPACITY,
    "E": Condition.ZERO_ERROR,
    "I": Condition.INITIAL_ZERO_ERROR,
    "T": Condition.TARE_ERROR,
    "e": Condition.NOT_DISPLAYED,
}
_DASHED = frozenset(
    {
        Condition.ZERO_ERROR,
        Condition.INITIAL_ZERO_ERROR,
        Condition.TARE_ERROR,
        Condition.NOT_DISPLAYED,
    }
)
_KINDS = {
    "G": (Kind.GROSS, False),
    "N": (Kind.NET, False),
    "T": (Kind.TARE, False),
    "g": (Kind.GROSS, True),
    "n": (Kind.NET, True),
}
_HEADS = {
    f"{status}{range_no}{letter}{motion}".encode(): (
        (*kind, motion == "M", condition, range_no), condition in _DASHED
    )
    for status, condition in _CONDITIONS.items()
    for range_no in range(1, 10)
    for letter, kind in _KINDS.items()
    for motion in "M "
}  # fmt: skip
_CONDITION_BYTES = {condition: byte for byte, condition in _CONDITIONS.items()}
_KIND_BYTES = {kind: byte for byte, kind in _KINDS.items()}

_WEIGHT = re.compile(  # the first letter after the reserved byte starts the unit, at byte 16
    rb"\n([ ZOUEITe][1-9][GNTgn][M ])[ -~](?=[-0-9. ]{10}[A-Za-z%])"
    rb"(?:-{10}| *(-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?))([A-Za-z%]{1,3})[ _]*\r"
)
_UNIT = re.compile(r"([A-Za-z%]{1,3})[ _]*")
_EDGE = re.compile(rb"[\n\r]")
_TEXT = re.compile(rb"\n([A-Z0-9 ]{3}:[ -~]{0,25})\r")
_DIAGNOSTICS = re.compile(rb"\n([R ])([E ])([C ])[ -~]\r")
_SHORT = {
    b"\n?\r": Answer(AnswerKind.UNKNOWN_COMMAND, "the scale does not know the command", b"\n?\r"),
    b"\n!\r": Answer(AnswerKind.LINE_ERROR, "the scale saw a damaged command", b"\n!\r"),
}
_DIAGNOSES = ("memory fault", "settings memory fault", "calibration fault")

# What a frame that is no weight is held against, to say why. One row a field: its place, its name,
# the whole it must match, what is allowed in words.
_FIELDS = (
    (slice(1, 2), "status", re.compile("[ ZOUEITe]"), "Z O U E I T e or a space"),
    (slice(2, 3), "range", re.compile("[1-9]"), "1 to 9"),
    (slice(3, 4), "kind", re.compile("[GNTgn]"), "G N T g n"),
    (slice(4, 5), "motion", re.compile("[M ]"), "M or a space"),
    (slice(5, 6), "reserved", re.compile("[ -~]"), "a printable character"),
    (slice(16, 19), "unit", _UNIT, "1 to 3 letters, then spaces"),
)


class Scp0499Parser:
    """Parses what an SMA SCP-0499 scale sends; see drivers.frames.base.FrameParser."""

    MAX_PENDING = 64
    """Longer than any reply of the standard (31 bytes)."""
    MOST_KNOWN = 1024
    """Different frames kept in mind; when there are more, all are forgotten."""

    def __init__(self) -> None:
        self._pending = b""
        self._known: dict[bytes, Item] = {}

    @property
    def frame_start(self) -> bytes:
        """What every frame starts with."""
        return _LF

    @property
    def pending(self) -> int:
        """Number of bytes kept that are not yet part of an item."""
        return len(self._pending)

    def feed(self, chunk: bytes) -> list[Item]:
        """Take the next bytes of the stream; return what is complete, in order."""
        data = self._pending + chunk
        items: list[Item] = []
        start, size, known = 0, len(data), self._known
        while start < size:  # a flood passes here, so a weight costs no call but its own
            end = start + FRAME_LENGTH
            raw = data[start:end]
            item = known.get(raw)
            if item is None:
                found = _WEIGHT.fullmatch(raw)
                item, end = self._next(data, start) if found is None else (_weight(raw, found), end)
                if item is None:
                    break
                if found is not None:
                    self._remember(raw, item)
            items.append(item)
            start = end
        self._pending = data[start:]
        return items

    def _remember(self, raw: bytes, item: Item) -> None:
        if len(self._known) >= self.MOST_KNOWN:
            self._known.clear()
        self._known[raw] = item

    def _next(self, data: bytes, start: int) -> tuple[Item | None, int]:
        """Return the item at ``start`` and where it ends, or None while it is incomplete."""
        limit = start + self.MAX_PENDING
        edge: int
        if data[start] != _LF[0]:
            edge = data.find(_LF, start, limit)
            if edge >= 0:
                return Garbage(data[start:edge], "bytes that belong to no frame"), edge
            why = "bytes that belong to no frame"
        else:
            found = _EDGE.search(data, start + 1, limit)
            if found is not None and found.group() == _CR:
                return _read(data[start : found.end()]), found.end()
            if found is not None:
                why = f"frame cut off after {found.start() - start} bytes by the start of the next"
                return Garbage(data[start : found.start()], why), found.start()
            why = f"frame without an end within {self.MAX_PENDING} bytes"
        if len(data) < limit:
            return None, start
        return Garbage(data[start:limit], why), limit


def _read(raw: bytes) -> Item:
    """Read one reply, from its LF to its CR."""
    if len(raw) == FRAME_LENGTH and (weight := _WEIGHT.fullmatch(raw)):
        return _weight(raw, weight)
    if raw in _SHORT:
        return _SHORT[raw]
    if found := _TEXT.fullmatch(raw):
        return Answer(AnswerKind.TEXT, found[1].decode("ascii"), raw)
    if found := _DIAGNOSTICS.fullmatch(raw):
        flags = zip(found.groups(), _DIAGNOSES, strict=True)
        faults = [words for flag, words in flags if flag != b" "]
        return Answer(AnswerKind.DIAGNOSTICS, ", ".join(faults) or "no fault", raw)
    if len(raw) == FRAME_LENGTH:
        return Garbage(raw, _refusal(raw))
    return Garbage(raw, f"frame of {len(raw)} bytes, a weight has {FRAME_LENGTH}")


def _weight(raw: bytes, found: re.Match[bytes]) -> WeightFrame | Garbage:
    head, digits, unit = found.groups()
    said, dashed = _HEADS[head]
    if dashed is not (digits is None):
        return Garbage(raw, _refusal(raw))
    shown = None if digits is None else digits.decode("ascii")
    return WeightFrame(shown, unit.decode("ascii"), *said, raw)


def _refusal(raw: bytes) -> str:
    """Say why 20 bytes from LF to CR are no weight."""
    text = raw.decode("latin-1")
    for place, name, pattern, allowed in _FIELDS:
        if not pattern.fullmatch(text[place]):
            return f"{name} is {text[place]!r}, allowed is {allowed}"
    status, weight = text[1], text[6:16]
    if _CONDITIONS[status] in _DASHED:
        return f"status {status} with the weight {weight!r}, it needs ten dashes"
    return f"weight is {weight!r}, not a number of the standard's form"


def render(frame: WeightFrame) -> bytes:
    """Return the 20 bytes of a weight frame, as a scale sends them.

    Raises:
        ValueError: a field does not fit the standard's frame; the message names it.
    """
    kind = _KIND_BYTES.get((frame.kind, frame.high_resolution))
    if kind is None:
        raise ValueError("a tare has no high resolution")
    weight = _DASHES if frame.digits is None else frame.digits.rjust(10)
    status = _CONDITION_BYTES[frame.condition]
    motion = "M" if frame.motion else " "
    text = f"\n{status}{frame.range_no}{kind}{motion} {weight}{frame.unit.ljust(3)}\r"
    raw = text.encode("ascii", "replace")
    read = _read(raw)
    if read != frame:
        why = read.why if isinstance(read, Garbage) else "it would be read as another reply"
        raise ValueError(f"{frame} does not fit a frame of 20 bytes: {why}")
    return raw
