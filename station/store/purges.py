"""What the purges of a record say went, for whoever reads the journal or builds its tables.

The entries of purges are found by an index on the journal itself, because the tables are what is
to be proved. Nothing they say is believed before the chain has come to them.
"""

from __future__ import annotations

from bisect import bisect_right
from collections import defaultdict
from collections.abc import Iterable

from sqlalchemy import Connection

from station.core.journal import EntryKind, JournalError
from station.core.merkle import leaf_hash, root
from station.core.purging import PurgedRun, kinds_digest, purge_of
from station.core.shipping import ShippingError, serial_parts
from station.store import journal as j
from station.store.damage import Damage
from station.store.facts import fact_record
from station.store.prepared import driver_of

_PURGES = f"SELECT seq, canonical FROM journal WHERE kind = '{EntryKind.PURGE}' ORDER BY id"


class Gone:
    """Runs and bags that were purged.

    Args:
        runs: of all purges.
    """

    def __init__(self, runs: Iterable[PurgedRun] = ()) -> None:
        self._runs: set[str] = set()
        spans: dict[str, list[tuple[int, int]]] = defaultdict(list)
        for run in runs:
            self._runs.add(run.uid)
            for head, first, last in run.serials:
                spans[head].append((first, last))
        self._spans = {head: sorted(its) for head, its in spans.items()}

    def run(self, uid: str) -> bool:
        """Whether a run went."""
        return uid in self._runs

    def bag(self, serial: str) -> bool:
        """Whether a bag went with its run."""
        try:
            head, number = serial_parts(serial)
        except ShippingError:
            return False
        its = self._spans.get(head, [])
        place = bisect_right(its, (number, number + (1 << 60))) - 1
        return place >= 0 and its[place][1] >= number


class PurgedEntries:
    """Holds emptied entries to the purges that emptied them, while the journal is read.

    Args:
        connection: inside a transaction.
    """

    def __init__(self, connection: Connection) -> None:
        self._runs: list[PurgedRun] = []
        self._unread = ""
        for seq, kept in driver_of(connection).execute(_PURGES):
            try:
                self._runs += purge_of(fact_record(j.read_entry(kept)).fact).runs
            except (JournalError, KeyError, TypeError, ValueError, AssertionError) as fault:
                self._unread = f"; entry {seq}, a purge, cannot be read: {fault}"
        self.gone = Gone(self._runs)
        self._spans: dict[int, list[tuple[int, int, int]]] = defaultdict(list)
        for place, run in enumerate(self._runs):
            for epoch, first, last in run.entries:
                self._spans[epoch].append((first, last, place))
        for its in self._spans.values():
            its.sort()
        self._open: dict[int, list[tuple[bytes, str]]] = {}
        self._left = {place: run.count for place, run in enumerate(self._runs)}

    def __bool__(self) -> bool:
        return bool(self._runs)

    def take(self, kept: j.Kept) -> None:
        """See the next entry.

        Raises:
            Damage: it is empty and no purge names it, or its purge knew another hash or kind.
        """
        seq = kept.stored.seq
        place = self._place(kept.epoch, seq)
        if place is None:
            if kept.stored.canonical:
                return
            raise Damage(
                seq,
                f"entry {seq} is empty and no purge names it: its bytes were taken{self._unread}",
            )
        its = self._open.setdefault(place, [])
        its.append((leaf_hash(kept.stored.hash), kept.kind))
        self._left[place] -= 1
        if not self._left[place]:
            self._compare(self._runs[place], self._open.pop(place))

    def names(self, epoch: int, seq: int) -> bool:
        """Whether a purge says that it emptied an entry."""
        return self._place(epoch, seq) is not None

    def done(self) -> None:
        """See that each purged run was met whole.

        Raises:
            Damage: one was not.
        """
        for place, left in self._left.items():
            if left:
                run = self._runs[place]
                raise Damage(None, f"{left} purged entries of run {run.uid} are not in the journal")

    def _place(self, epoch: int, seq: int) -> int | None:
        its = self._spans.get(epoch)
        if its is None:
            return None
        at = bisect_right(its, (seq, 1 << 62, 0)) - 1
        return its[at][2] if at >= 0 and its[at][1] >= seq else None

    def _compare(self, run: PurgedRun, found: list[tuple[bytes, str]]) -> None:
        same = root(leaf for leaf, _ in found).hex() == run.root
        if same and kinds_digest(kind for _, kind in found) == run.kinds:
            return
        first, last = run.entries[0][1], run.entries[-1][2]
        raise Damage(
            first,
            f"the {'kind' if same else 'hash'} of a purged entry from {first} to {last} was "
            f"changed: it is not what run {run.uid} was purged with",
        )
