"""The journal in the database: one entry after the other, and nothing ever changed."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from sqlalchemy import Connection, func, select

from station.core.journal import GENESIS, Entry, EntryKind, JournalError, Stored, Value, entry_hash
from station.core.journal import canonical as canonical_bytes
from station.core.pack import Moment
from station.store.engine import reading
from station.store.prepared import driver_of
from station.store.tables import journal
from station.store.tree import BLOCK, close_block

# The entry before is looked at in the same statement: a chain goes on only from what was written,
# else the hash is nothing, which the table refuses. INSERT ... SELECT would copy the entry first.
_ADD = (
    "INSERT INTO journal (id, epoch, seq, kind, hash, canonical) VALUES (?, ?, ?, ?,"
    " CASE WHEN ? = 1 OR (SELECT hash FROM journal WHERE id = ?) = ? THEN ? END, ?)"
)
_LAST = "SELECT id, epoch, seq, hash FROM journal ORDER BY id DESC LIMIT 1"
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
        connection: writes the entries, inside whatever transaction was begun on it.
        site, station, epoch: name the chain.
        head: its last entry, as verified on opening.
    """

    def __init__(
        self, connection: Connection, site: str, station: str, epoch: int, head: Head
    ) -> None:
        self._connection = connection
        self._driver = driver_of(connection)
        self._execute = self._driver.cursor().execute
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

    def begin(self) -> None:
        """A transaction begins: what is added now follows the last durable entry."""
        self._pending = self._head

    def append(
        self, kind: EntryKind, at: Moment, who: str, body: Mapping[str, Value]
    ) -> tuple[Entry, Head]:
        """Add one entry to the transaction begun with :meth:`begin`.

        Raises:
            JournalError: the body holds what the journal cannot keep exactly.
        """
        seq = self.next_seq
        entry = Entry(self._site, self._station, self._epoch, seq, kind, at, who, body)
        return entry, self.add(kind, canonical_bytes(entry))

    @property
    def next_seq(self) -> int:
        """Number of the next entry of the transaction begun with :meth:`begin`."""
        return self._pending.seq + 1

    def add(self, kind: EntryKind, kept: bytes) -> Head:
        """Add one entry, number ``next_seq``, whose canonical bytes are made already.

        Raises:
            ChainFault: someone else wrote to the file, or took something out of it.
        """
        before, epoch = self._pending, self._epoch
        row, seq, digest = before.row + 1, before.seq + 1, entry_hash(before.hash, kept)
        try:
            self._execute(_ADD, (row, epoch, seq, kind, seq, before.row, before.hash, digest, kept))
        except sqlite3.IntegrityError:
            self._check()
            raise
        if not seq % BLOCK:
            close_block(self._connection, epoch, seq, row)
        self._pending = head = Head(row, seq, digest)
        return head

    def _check(self) -> None:
        found, ours = _last_head(self._driver, self._epoch), self._pending
        if found != ours:
            raise ChainFault(
                f"the journal ends at entry {found.seq} where entry {ours.seq} was written last"
            )

    def committed(self) -> None:
        """The transaction is durable: its last entry is the head."""
        self._head = self._pending


def last_head(connection: Connection, epoch: int) -> Head:
    """Return the last entry of ``epoch``, or where its first one will go."""
    return _last_head(driver_of(connection), epoch)


def _last_head(driver: sqlite3.Connection, epoch: int) -> Head:
    last = driver.execute(_LAST).fetchone()
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
    size = _PAGE
    while True:
        try:
            rows = driver_of(connection).execute(page, (after, size)).fetchall()
        except sqlite3.DatabaseError:
            if size == 1:
                raise
            size = 1  # so that all entries before a damaged page are still read
            continue
        for row, epoch, seq, kind, digest, kept in rows:
            yield Kept(row, epoch, kind, Stored(seq, kept, digest))
        if len(rows) < size:
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
