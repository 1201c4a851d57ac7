"""Reads the journal for somebody elsewhere: in order, a bounded piece at a time, read-only.

Epochs stand one behind the other in the file and never mix, so an entry's row follows from its
epoch and number. Each piece is a transaction of its own, so that no long reading holds back the
checkpoint of the writer.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import NamedTuple

from sqlalchemy import Connection, Engine
from sqlalchemy.exc import DBAPIError

from station.core.journal import GENESIS
from station.core.training import CODE
from station.errors import BadInput, EnvironmentFault
from station.store.engine import reader_engine, record_in
from station.store.faults import explain
from station.store.prepared import driver_of
from station.store.shape import check_shape

_PIECE = "SELECT seq, kind, hash, canonical FROM journal WHERE id > ? AND id <= ? ORDER BY id"
_AT = "SELECT epoch, seq, hash FROM journal WHERE id = ?"


class Sent(NamedTuple):
    """One entry as it lies in the file."""

    seq: int
    kind: str
    hash: bytes
    canonical: bytes


@dataclass(frozen=True, slots=True)
class EpochSpan:
    """One epoch of a record.

    Args:
        epoch: its number.
        before: row in front of its first entry.
        last: seq of its last entry.
        hash: of that entry.
    """

    epoch: int
    before: int
    last: int
    hash: bytes


@dataclass(frozen=True, slots=True)
class Owner:
    """Whose record it is."""

    site: str
    station: str
    epoch: int


class JournalOutlet:
    """Reads one record; open it in the thread that uses it, close it when done.

    Args:
        home: the station's folder.

    Raises:
        BadInput: there is no record, or it has another shape than this program reads.
        EnvironmentFault: it cannot be read.
    """

    def __init__(self, home: Path) -> None:
        self._path = record_in(home)
        self._engine: Engine = reader_engine(self._path)
        with self._faults():
            self._connection: Connection = self._engine.connect()
        try:
            with self._faults():
                check_shape(driver_of(self._connection), self._path)
        except BaseException:
            self._connection.close()
            raise

    def owner(self) -> Owner:
        """Whose record it is, and its present epoch.

        Raises:
            BadInput: it is of training, which stays where it is.
        """
        with self._reading() as driver:
            row = driver.execute("SELECT site, station, epoch FROM identity").fetchone()
        if row is None:
            raise EnvironmentFault("the record has lost its identity", "restore the last backup")
        if row[1] == CODE:
            raise BadInput(
                f"the record in {self._path.parent} is of training",
                "nothing of it goes to a centre: give the station's own folder",
            )
        return Owner(*row)

    def epochs(self) -> tuple[EpochSpan, ...]:
        """Every epoch of the file, the oldest first."""
        found: list[EpochSpan] = []
        with self._reading() as driver:
            row = driver.execute("SELECT max(id) FROM journal").fetchone()[0] or 0
            while row > 0:
                epoch, seq, digest = driver.execute(_AT, (row,)).fetchone()
                found.append(EpochSpan(epoch, row - seq, seq, digest))
                row -= seq
        return tuple(reversed(found))

    def hash_at(self, span: EpochSpan, seq: int) -> bytes:
        """Hash of an entry; 32 zero bytes before the first one."""
        if seq == 0:
            return GENESIS
        with self._reading() as driver:
            row = driver.execute(_AT, (span.before + seq,)).fetchone()
        if row is None or row[:2] != (span.epoch, seq):
            raise EnvironmentFault(
                f"entry {seq} of epoch {span.epoch} is not where it was written",
                "run `station journal verify`",
            )
        return bytes(row[2])

    def after(self, span: EpochSpan, seq: int, rows: int, size: int) -> tuple[Sent, ...]:
        """The entries behind one, in order: at most ``rows``, and ``size`` bytes of them.

        One entry is always given where there is one, however long it is.
        """
        first = span.before + seq
        found: list[Sent] = []
        with self._reading() as driver:
            for row in driver.execute(_PIECE, (first, min(first + rows, span.before + span.last))):
                size -= len(row[3])
                if found and size < 0:
                    break
                found.append(Sent._make(row))
        return tuple(found)

    def close(self) -> None:
        """Let go of the file."""
        self._connection.close()

    def __enter__(self) -> JournalOutlet:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    @contextmanager
    def _reading(self) -> Iterator[sqlite3.Connection]:
        with self._faults(), self._connection.begin():
            yield driver_of(self._connection)

    @contextmanager
    def _faults(self) -> Iterator[None]:
        try:
            yield
        except (DBAPIError, sqlite3.Error) as fault:
            raise EnvironmentFault(f"cannot read {self._path}", explain(fault).words) from fault
