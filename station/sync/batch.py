"""What goes to the centre in one piece, and what in it cannot be believed.

A piece is bounded in entries and bytes, so that a slow line still moves it in time. Each entry must
follow from the one before it; one that does not, or that is beyond all size, is set apart with its
reason, and the entries behind it go on.
"""

from __future__ import annotations

import struct
from collections.abc import Sequence
from dataclasses import dataclass

from station.core.journal import entry_hash
from station.store.outlet import Sent

ROWS = 500
SIZE = 1 << 20
"""Bytes of entries in a piece."""
LONGEST = 1 << 20
"""Bytes of one entry that the centre keeps among the others; the usual one has 400 to 2000."""

PURGED = "it was purged at the station before it came here: its bytes are in the purge's export"

_SIGNATURE = b"PGCOPY\n\xff\r\n\x00" + bytes(8)
_END = b"\xff\xff"
_LENGTH = struct.Struct("!i").pack
_NUMBER = struct.Struct("!iq").pack


@dataclass(slots=True)
class Pace:
    """How large the next piece is: smaller after each that did not get through, then larger again.

    So a line of a few hundred bytes a second still moves something within each deadline.
    """

    rows: int = ROWS
    size: int = SIZE

    def slower(self) -> None:
        """A piece was lost on the way."""
        self.rows, self.size = max(1, self.rows // 4), max(1024, self.size // 4)

    def faster(self) -> None:
        """A piece arrived."""
        self.rows, self.size = min(ROWS, self.rows * 2), min(SIZE, self.size * 2)


@dataclass(frozen=True, slots=True)
class Apart:
    """An entry that goes to quarantine.

    Args:
        entry: as it lies in the station's file.
        why: what is wrong with it.
    """

    entry: Sent
    why: str


@dataclass(frozen=True, slots=True)
class Batch:
    """One piece of an epoch.

    Args:
        after: seq of the entry in front of it.
        before: hash of that entry.
        good: entries to be kept, in order.
        apart: the others, in order.
        last: seq of its last entry.
        hash: of that entry.
    """

    after: int
    before: bytes
    good: tuple[Sent, ...]
    apart: tuple[Apart, ...]
    last: int
    hash: bytes


def batch_of(after: int, before: bytes, entries: Sequence[Sent]) -> Batch:
    """Check a piece of the journal against the entry in front of it.

    Args:
        after: seq of that entry.
        before: its hash.
        entries: one or more, in order.
    """
    good: list[Sent] = []
    apart: list[Apart] = []
    digest = before
    for entry in entries:
        why = ""
        if not entry.canonical:
            why = PURGED
        elif entry_hash(digest, entry.canonical) != entry.hash:
            why = "it does not follow from the entry before it"
        elif len(entry.canonical) > LONGEST:
            why = f"it has {len(entry.canonical)} bytes, allowed are {LONGEST}"
        if why:
            apart.append(Apart(entry, why))
        else:
            good.append(entry)
        digest = entry.hash
    return Batch(after, before, tuple(good), tuple(apart), entries[-1].seq, digest)


def copy_stream(names: tuple[str, str], epoch: int, entries: Sequence[Sent]) -> bytes:
    """The entries as PostgreSQL's COPY reads them in its binary format.

    Columns: site, station, epoch, seq, kind, hash, canonical (PostgreSQL documentation, COPY,
    "Binary Format": a signature, then for each row the number of fields and each with its length).
    """
    site, station = (_field(name.encode()) for name in names)
    head = struct.pack("!h", 7) + site + station + _NUMBER(8, epoch)
    out = [_SIGNATURE]
    for seq, kind, digest, canonical in entries:
        word = kind.encode()
        out += (
            head,
            _NUMBER(8, seq),
            _LENGTH(len(word)),
            word,
            _LENGTH(len(digest)),
            digest,
            _LENGTH(len(canonical)),
            canonical,
        )
    out.append(_END)
    return b"".join(out)


def _field(value: bytes) -> bytes:
    return _LENGTH(len(value)) + value
