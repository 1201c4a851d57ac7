"""Day by day, whether the centre holds what the station holds: counts, sums, and a Merkle root.

Each side works out its own figures: the station from its file, the centre from the bytes it keeps,
whose hashes are made anew from them and not read from the column. Where the roots of a day differ,
both trees (RFC 9162 section 2.1, over the entries' hashes) are gone down side by side, and only the
entries under unequal leaves are named.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta, timezone

from station.core.journal import EntryKind, entry_hash
from station.core.mass import MassError
from station.core.merkle import leaf_hash, root, subtrees_of
from station.store.bodies import mass
from station.store.outlet import EpochSpan, JournalOutlet, Sent
from station.sync.connection import CentreConnection

_PIECE = 2000
_MISSING = bytes(32)
_WAIT_S = 60.0
_THEIRS = """
    SELECT seq, kind, hash, sha256('\\x00'::bytea || coalesce(lag(hash) OVER (ORDER BY seq), %s)
            || canonical),
        CASE WHEN kind = 'pack' THEN substring(encode(canonical, 'escape')
            from '"net":"([^"]*)"') END
    FROM (SELECT seq, kind, hash, canonical FROM centre.entry WHERE site = %s AND station = %s
            AND epoch = %s AND seq BETWEEN %s AND %s
        UNION ALL SELECT seq, '', hash, canonical FROM centre.quarantine WHERE site = %s
            AND station = %s AND epoch = %s AND seq BETWEEN %s AND %s) both_ ORDER BY seq"""


@dataclass(frozen=True, slots=True)
class Figures:
    """What one side holds of a day.

    Args:
        entries, packs: how many.
        net_ug: exact sum of the bags' net at packing.
        root: over the entries' hashes.
    """

    entries: int
    packs: int
    net_ug: int
    root: bytes


@dataclass(frozen=True, slots=True)
class DayCompared:
    """One day of one epoch on both sides.

    Args:
        day: on the plant's calendar.
        epoch: whose entries.
        first, last: seq of its first and last entry at the station.
        ours, theirs: the station's figures, and the centre's.
        differing: ranges of seq whose entries are not the same, both ends included.
        purged: entries of the day that the station has purged. Their hashes are compared as they
            were kept; what the bags weighed only the centre can still say.
    """

    day: date
    epoch: int
    first: int
    last: int
    ours: Figures
    theirs: Figures
    differing: tuple[tuple[int, int], ...]
    purged: int = 0

    @property
    def equal(self) -> bool:
        """Whether both sides hold the same, or the centre alone what was purged here."""
        if self.purged:
            return replace(self.ours, net_ug=self.theirs.net_ug) == self.theirs
        return self.ours == self.theirs


@dataclass(frozen=True, slots=True)
class _Day:
    """A day as the station's file has it."""

    day: date
    span: EpochSpan
    entries: tuple[Sent, ...]


def reconcile(
    outlet: JournalOutlet,
    connection: CentreConnection,
    names: tuple[str, str],
    since: date,
    upto: dict[int, int],
) -> Iterator[DayCompared]:
    """Compare each day that has entries, the oldest first.

    Args:
        outlet: the station's record.
        connection: of a role that may read the station's entries.
        names: site and station.
        since: first day.
        upto: how far the centre has come, by epoch; what waits to be sent is not compared.

    Raises:
        CentreGone: the centre did not answer.
        EnvironmentFault: the record cannot be read.
    """
    for span in outlet.epochs():
        for day in _days(outlet, span, since, upto.get(span.epoch, 0)):
            yield _compared(outlet, connection, names, day)


def differing(ours: Sequence[bytes], theirs: Sequence[bytes], first: int) -> list[tuple[int, int]]:
    """Go down two trees side by side and return the ranges of seq whose leaves differ.

    Args:
        ours: leaves of one side.
        theirs: as many of the other.
        first: seq of the first one.
    """
    our_root, their_root = subtrees_of(ours), subtrees_of(theirs)
    found: list[tuple[int, int]] = []

    def down(start: int, end: int) -> None:
        if our_root(start, end) == their_root(start, end):
            return
        if end - start > 1:
            cut = start + (1 << (end - start - 1).bit_length() - 1)
            down(start, cut)
            down(cut, end)
        elif found and found[-1][1] == first + start - 1:
            found[-1] = (found[-1][0], first + start)
        else:
            found.append((first + start, first + start))

    down(0, len(ours))
    return found


# --- the two sides ----------------------------------------------------------------------------


def _days(outlet: JournalOutlet, span: EpochSpan, since: date, upto: int) -> Iterator[_Day]:
    entries: list[Sent] = []
    current: date | None = None
    seq = _start_of(outlet, span, since)
    while seq < min(span.last, upto):
        for entry in outlet.after(span, seq, _PIECE, 1 << 24):
            if entry.seq > upto:
                break
            day = _day_of(entry) or current
            if day != current and entries and current is not None and current >= since:
                yield _Day(current, span, tuple(entries))
                entries = []
            elif current is not None and current < since:
                entries = []
            current = day
            entries.append(entry)
            seq = entry.seq
        else:
            continue
        break
    if entries and current is not None and current >= since:
        yield _Day(current, span, tuple(entries))


def _start_of(outlet: JournalOutlet, span: EpochSpan, since: date) -> int:
    """A seq before the first entry of a day, found by halves; clocks mostly go forward."""
    low, high = 0, span.last
    while high - low > _PIECE:
        middle = (low + high) // 2
        day = _day_of(outlet.after(span, middle, 1, 0)[0])
        if day is None or day >= since:
            high = middle
        else:
            low = middle
    return max(0, low - _PIECE)


def _day_of(entry: Sent) -> date | None:
    try:
        told = json.loads(entry.canonical)
        at = datetime.fromisoformat(told["utc"])
        return at.astimezone(timezone(timedelta(minutes=told["offset"]))).date()
    except (ValueError, KeyError, TypeError):
        return None


def _compared(
    outlet: JournalOutlet, connection: CentreConnection, names: tuple[str, str], day: _Day
) -> DayCompared:
    span, first, last = day.span, day.entries[0].seq, day.entries[-1].seq
    before = outlet.hash_at(span, first - 1)
    our_leaves, digest = [], before
    for entry in day.entries:
        # Of a purged entry the hash is what is left; its purge and the heads hold it.
        digest = entry_hash(digest, entry.canonical) if entry.canonical else entry.hash
        our_leaves.append(leaf_hash(digest))
        digest = entry.hash
    nets = [_net(entry.canonical) for entry in day.entries if entry.kind == EntryKind.PACK]
    ours = Figures(len(day.entries), len(nets), sum(nets), root(our_leaves))
    key = (*names, span.epoch, first, last)
    with connection.within(_WAIT_S):
        rows = connection.execute(_THEIRS, (before, *key, *key)).fetchall()
    there = {row[0]: row for row in rows}
    their_leaves = [
        leaf_hash(bytes(there[seq][3])) if seq in there else _MISSING
        for seq in range(first, last + 1)
    ]
    kept = [row for row in there.values() if row[1]]
    their_nets = [_micrograms(row[4]) for row in kept if row[1] == EntryKind.PACK]
    theirs = Figures(len(there), len(their_nets), sum(their_nets), root(their_leaves))
    ranges = differing(our_leaves, their_leaves, first)
    purged = sum(not entry.canonical for entry in day.entries)
    return DayCompared(day.day, span.epoch, first, last, ours, theirs, tuple(ranges), purged)


def _net(canonical: bytes) -> int:
    try:
        return _micrograms(json.loads(canonical)["body"]["net"])
    except (ValueError, KeyError, TypeError):
        return 0


def _micrograms(text: object) -> int:
    try:
        return mass(str(text)).micrograms
    except (MassError, ValueError):
        return 0
