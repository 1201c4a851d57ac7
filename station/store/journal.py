"""The journal in the database: one entry after the other, and nothing ever changed."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from sqlalchemy import Connection, func, insert, select

from station.core.journal import GENESIS, Entry, EntryKind, JournalError, Stored, Value, entry_hash
from station.core.journal import canonical as canonical_bytes
from station.core.pack import Moment
from station.store.engine import reading
from station.store.prepared import Prepared, driver_of
from station.store.tables import journal
from station.store.tree import close_block

_INSERT = Prepared(insert(journal), [column.name for column in journal.columns])
_LAST = Prepared(
    select(journal.c.id, journal.c.epoch, journal.c.seq, journal.c.hash).where(
        journal.c.id == select(func.max(journal.c.id)).scalar_subquery()
    )
)
_PAGE = 500


class ChainFault(Exception):
    """The journal on disk is not the one this writer knows; the message says where."""


@dataclass(frozen=True, slots=True)
class Head:
    """The last entry of a journal.

    Args:
        row: row number in the file, counting all epochs.
        seq: its number in the epoch; 0 before the first.
        hash: its hash; 32 zero bytes before the first.
    """

    row: int = 0
    seq: int = 0
    hash: bytes = GENESIS


@dataclass(frozen=True, slots=True)
class Kept:
    """One entry as it lies in the file; nothing about it is believed yet."""

    row: int
    epoch: int
    kind: str
    stored: Stored


class Journal:
    """Appends to one epoch's chain; a head moves on only when its transaction was committed.

    Args:
        site, station, epoch: name the chain.
        head: its last entry, as verified on opening.
    """

    def __init__(self, site: str, station: str, epoch: int, head: Head) -> None:
        self._site, self._station, self._epoch = site, station, epoch
        self._head = self._pending = head

    @property
    def head(self) -> Head:
        """The last durable entry."""
        return self._head

    @property
    def pending(self) -> Head:
        """The last entry of the transaction that was begun."""
        return self._pending

    def begin(self, connection: Connection) -> None:
        """Check inside a transaction that the file still ends where this chain does.

        Raises:
            ChainFault: someone else wrote to the file, or took something out of it.
        """
        self._pending = self._head
        found = last_head(connection, self._epoch)
        if found != self._head:
            raise ChainFault(
                f"the journal ends at entry {found.seq} where entry {self._head.seq} was written "
                "last"
            )

    def append(
        self,
        connection: Connection,
        kind: EntryKind,
        at: Moment,
        who: str,
        body: Mapping[str, Value],
    ) -> tuple[Entry, Head]:
        """Add one entry to the transaction begun with :meth:`begin`.

        Raises:
            JournalError: the body holds what the journal cannot keep exactly.
        """
        before = self._pending
        seq = before.seq + 1
        entry = Entry(self._site, self._station, self._epoch, seq, kind, at, who, body)
        kept = canonical_bytes(entry)
        head = Head(before.row + 1, seq, entry_hash(before.hash, kept))
        _INSERT.execute(
            connection,
            {
                "id": head.row,
                "epoch": self._epoch,
                "seq": seq,
                "kind": kind,
                "hash": head.hash,
                "canonical": kept,
            },
        )
        close_block(connection, self._epoch, seq, head.row)
        self._pending = head
        return entry, head

    def committed(self) -> None:
        """The transaction is durable: its last entry is the head."""
        self._head = self._pending


def last_head(connection: Connection, epoch: int) -> Head:
    """Return the last entry of ``epoch``, or where its first one will go."""
    last = _LAST.execute(connection, {}).fetchone()
    if last is None:
        return Head()
    row, its_epoch, seq, digest = last
    return Head(row, seq, digest) if its_epoch == epoch else Head(row)


def entries(connection: Connection, after: int = 0) -> Iterator[Kept]:
    """Read entries in the order written, a page at a time.

    Args:
        connection: inside a transaction.
        after: row number of the entry before the first one wanted.
    """
    # As text and bytes, past the column types: a word nobody knows must not stop a reading.
    page = (
        "SELECT id, epoch, seq, kind, hash, canonical FROM journal WHERE id > ? ORDER BY id LIMIT ?"
    )
    while True:
        rows = driver_of(connection).execute(page, (after, _PAGE)).fetchall()
        for row, epoch, seq, kind, digest, kept in rows:
            yield Kept(row, epoch, kind, Stored(seq, kept, digest))
        if len(rows) < _PAGE:
            return
        after = rows[-1][0]


def count(connection: Connection) -> int:
    """Return how many entries the journal has, of all epochs."""
    return connection.execute(select(func.count()).select_from(journal)).scalar_one()


def count_entries(home: Path) -> int:
    """Return how many entries the record in ``home`` has, of all epochs.

    Raises:
        BadInput: there is no record in ``home``.
        EnvironmentFault: it cannot be read.
    """
    with reading(home) as connection:
        last = select(func.max(journal.c.id))  # rows stand without a gap from 1 on
        return connection.execute(last).scalar_one() or 0


def read_entry(kept: bytes) -> Entry:
    """Read an entry back from its canonical bytes.

    Raises:
        JournalError: the bytes are no entry of a form known here.
    """
    try:
        whole = json.loads(kept.decode())  # of bytes it would guess the encoding first
        if whole["v"] != 1:
            raise JournalError(f"an entry of form {whole['v']} needs a newer program")
        at = Moment(
            datetime.fromisoformat(whole["utc"]),
            whole["offset"],
            whole["zone"],
            int(whole["monotonic"]),
        )
        return Entry(
            whole["site"],
            whole["station"],
            int(whole["epoch"]),
            whole["seq"],
            EntryKind(whole["kind"]),
            at,
            whole["who"],
            whole["body"],
        )
    except JournalError:
        raise
    except (KeyError, TypeError, ValueError) as fault:
        raise JournalError(f"the bytes are no journal entry: {fault}") from fault
