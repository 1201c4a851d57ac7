"""Reads a journal from its first entry on, each one checked against the ones before it."""

from __future__ import annotations

from collections.abc import Iterator

from sqlalchemy import Connection, select

from station.core.journal import (
    GENESIS,
    Entry,
    EntryKind,
    entry_hash,
    first_break,
)
from station.store import journal as j
from station.store.damage import Damage
from station.store.facts import fact_record
from station.store.head_check import KINDS as HEADS
from station.store.head_check import Elsewhere, HeadCheck
from station.store.heads import SeenHead
from station.store.kept_entry import entry_of
from station.store.purges import PurgedEntries
from station.store.tables import identity
from station.store.tree import GrowingTree


class Chain:
    """Reads a journal's entries, each checked against the one before.

    Args:
        connection: inside a transaction.
        seen: the head written down beside the file, or None.
        elsewhere: what else is known of the record from outside.
    """

    def __init__(
        self,
        connection: Connection,
        seen: SeenHead | None = None,
        elsewhere: Elsewhere | None = None,
    ) -> None:
        self._connection = connection
        self._seen = seen
        self._identity = connection.execute(select(identity)).one_or_none()
        ours = self._identity
        self._owner = None if ours is None else (ours.site, ours.station)
        site, station = self._owner or ("", "")
        self.heads = HeadCheck(site, station, elsewhere or Elsewhere())
        self._sizes: dict[int, int] = {}
        self._before: tuple[int | None, int, bytes] = (None, 0, GENESIS)
        self._tree = GrowingTree()
        self._purged = PurgedEntries(connection)
        self.gone = self._purged.gone
        """Runs and bags that were purged."""
        self.purged = 0
        """Entries so far that are empty, as a purge says."""
        self.entries = 0
        self.epoch: int | None = None
        self.seq = 0
        self.hash = GENESIS
        self.block: bytes | None = None
        """Root of the block that the entry yielded last made whole."""

    def walk(self) -> Iterator[tuple[Entry | None, int]]:
        """Yield each entry, None in the place of a purged one, with its row number.

        Raises:
            Damage: an entry does not follow, a head does not fit, or the journal ends too early.
        """
        for kept in j.entries(self._connection):
            stored = kept.stored
            if kept.epoch != self.epoch:
                self._next_epoch(kept)
            empty = not stored.canonical and stored.seq == self.seq + 1
            if not empty and (
                stored.seq != self.seq + 1 or entry_hash(self.hash, stored.canonical) != stored.hash
            ):
                broken = first_break((stored,), self.hash, self.seq + 1)
                assert broken is not None, "an entry that does not follow breaks the chain"
                raise Damage(broken.seq, broken.why)
            if empty or self._purged:
                self._purged.take(kept)
            entry = None if empty else entry_of(kept, self._owner)
            if entry is None:
                self.purged += 1  # its hash stands for it: the next entry and its purge hold it
            elif entry.kind in HEADS:
                self.heads.entry(entry, self._tree)
            elif entry.kind is EntryKind.RESTORE:
                self._check_restore(entry)
            self.entries, self.seq, self.hash = self.entries + 1, stored.seq, stored.hash
            self.block = self._tree.add(stored.hash)
            if self.seq in self.heads.sizes:
                self.heads.grown(kept.epoch, self._tree)
            self._compare_with_seen()
            yield entry, kept.row
        self._check_end()

    def _next_epoch(self, kept: j.Kept) -> None:
        if kept.epoch in self._sizes:
            raise Damage(kept.stored.seq, f"epoch {kept.epoch} goes on after another one")
        if self.epoch is not None:
            self._sizes[self.epoch] = self.seq
        self._before = (self.epoch, self.seq, self.hash)
        self._sizes[kept.epoch] = 0
        self.epoch, self.seq, self.hash = kept.epoch, 0, GENESIS
        self._tree = GrowingTree()

    def _check_restore(self, entry: Entry) -> None:
        """A restored record says where the journal it goes on from ended."""
        details = fact_record(entry).fact.details
        epoch, seq, digest = self._before
        if (details["epoch"], details["seq"], details["hash"]) != (str(epoch), seq, digest.hex()):
            raise Damage(
                entry.seq,
                f"entry {entry.seq} goes on from entry {details['seq']} of epoch "
                f"{details['epoch']}, but entry {seq} of epoch {epoch} stands before it",
            )

    def _compare_with_seen(self) -> None:
        seen = self._seen
        if seen is None or (seen.epoch, seen.seq) != (self.epoch, self.seq):
            return
        if seen.hash != self.hash.hex():
            raise Damage(self.seq, f"entry {self.seq} is not the one written down beside the file")

    def _check_end(self) -> None:
        seen, ours = self._seen, self._identity
        if ours is None or ours.epoch != self.epoch:
            raise Damage(
                self.seq + 1,
                f"the record's epoch is {ours.epoch if ours else 'missing'}, the journal ends in "
                f"epoch {self.epoch}",
            )
        if seen is not None and seen.epoch != self.epoch:
            raise Damage(None, f"the head written beside the file is of epoch {seen.epoch}")
        if seen is not None and seen.seq > self.seq:
            raise Damage(
                self.seq + 1,
                f"the end is missing: entry {seen.seq} was written, the journal ends at {self.seq}",
            )
        self._purged.done()
        self.heads.done({**self._sizes, ours.epoch: self.seq})
