"""A bar-code scanner on a serial line: bytes become scans, or are refused with a reason. Pure.

A scanner ends each message with CR, LF or both. Only printable ASCII and the group separator (GS,
0x1D, which stands for FNC1 between GS1 element strings: GS1 General Specifications, clause on the
transmission of symbologies) may be in a message; a symbology identifier (ISO/IEC 15424, ``]`` and
two characters) is kept apart. Bytes of one message follow each other closely, so a pause inside
one cuts it off, and what follows soon after is its rest and no message. Two symbols of one stacked
pair come as two messages, and are one scan where the second follows within a short time.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

GS = "\x1d"
_END = re.compile(rb"[\r\n]")
_ALLOWED = re.compile(rb"[\x1d\x20-\x7e]*")
_IDENTIFIER = re.compile(r"\][A-Za-z][0-9A-Za-z]")
MS = 1_000_000
_REST_NS = 1_000 * MS
"""What comes later than this after a message that was cut off is another one."""


@dataclass(frozen=True, slots=True)
class ScanRules:
    """What a scan may be.

    Args:
        longest: characters of one message.
        pause_ns: a longer pause inside a message cuts it off.
        pair_ns: a message that begins so soon after the one before belongs to it; 0 for never.
    """

    longest: int = 200
    pause_ns: int = 100 * MS
    pair_ns: int = 0


@dataclass(frozen=True, slots=True)
class Symbol:
    """One symbol: its identifier such as ``]C1``, empty where none was sent, and its data."""

    identifier: str
    data: str


@dataclass(frozen=True, slots=True)
class Scan:
    """One or two symbols read at once.

    Args:
        symbols: in the order received.
        seen_at_ns: steady count when the last byte came.
    """

    symbols: tuple[Symbol, ...]
    seen_at_ns: int


@dataclass(frozen=True, slots=True)
class Refused:
    """Bytes that are no scan, and why, in words."""

    raw: bytes
    why: str


class ScanReader:
    """Turns what a scanner sends into scans.

    Args:
        rules: what a scan may be.
    """

    def __init__(self, rules: ScanRules | None = None) -> None:
        self._rules = rules or ScanRules()
        self._pending = b""
        self._heard_ns = 0
        self._began_ns = 0
        self._overlong = False
        self._cut = False
        """The rest of a message that was cut off may still come."""
        self._first: Scan | None = None
        """A scan that a second symbol may still belong to."""

    @property
    def pending(self) -> int:
        """Number of bytes kept that are no message yet."""
        return len(self._pending)

    def feed(self, chunk: bytes, now_ns: int) -> list[Scan | Refused]:
        """Take in what came; ``b""`` lets time pass.

        Args:
            chunk: bytes, however they were cut.
            now_ns: steady count; never below the one before.
        """
        done = self._pause(now_ns)
        self._cut = self._cut and now_ns - self._heard_ns <= _REST_NS
        for byte in chunk:
            done += self._take(bytes([byte]), now_ns)
        if chunk:
            self._heard_ns = now_ns
        return done + self._release(now_ns)

    def _take(self, byte: bytes, now_ns: int) -> list[Scan | Refused]:
        if self._cut:
            self._cut = not _END.match(byte)
            return []
        if not _END.match(byte):
            if not self._pending:
                self._began_ns = now_ns
            self._pending += byte
            if len(self._pending) <= self._rules.longest:
                return []
            told, self._pending = self._pending, self._pending[:1]
            was, self._overlong = self._overlong, True
            why = f"longer than {self._rules.longest} characters"
            return [] if was else [Refused(told, why)]
        raw, self._pending = self._pending, b""
        if self._overlong:
            self._overlong = False
            return []
        return self._message(raw, now_ns) if raw else []

    def _message(self, raw: bytes, now_ns: int) -> list[Scan | Refused]:
        first, self._first = self._first, None
        before: list[Scan | Refused] = [] if first is None else [first]
        if not _ALLOWED.fullmatch(raw):
            return [*before, Refused(raw, "a character that no code of ours carries")]
        text = raw.decode("ascii")
        found = _IDENTIFIER.match(text)
        symbol = Symbol(found[0], text[3:]) if found else Symbol("", text)
        if not symbol.data.strip(GS + " "):
            return [*before, Refused(raw, "no data")]
        if first is not None and self._began_ns - first.seen_at_ns <= self._rules.pair_ns:
            return [Scan((*first.symbols, symbol), now_ns)]
        scan = Scan((symbol,), now_ns)
        if not self._rules.pair_ns:
            return [*before, scan]
        self._first = scan
        return before

    def _pause(self, now_ns: int) -> list[Scan | Refused]:
        """Give up a message whose rest does not come."""
        if not self._pending or now_ns - self._heard_ns <= self._rules.pause_ns:
            return []
        raw, self._pending, self._cut = self._pending, b"", True
        was, self._overlong = self._overlong, False
        return [] if was else [Refused(raw, "cut off: its end did not come in time")]

    def _release(self, now_ns: int) -> list[Scan | Refused]:
        """Let a lone scan go once nothing can belong to it any more."""
        first = self._first
        if first is None or self._pending or now_ns - first.seen_at_ns <= self._rules.pair_ns:
            return []
        self._first = None
        return [first]
