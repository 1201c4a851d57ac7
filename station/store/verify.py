"""Proves that the journal is whole and that every table follows from it.

The journal is read from its first entry; each hash must follow from the one before. All tables are
then built anew from the bodies in a scratch database and compared, row by row, with the ones in the
file. SQLite checks its own structure last. The file is opened read-only.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import zip_longest
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Row, Table, select
from sqlalchemy.exc import DBAPIError

from station.core.journal import GENESIS, Entry, JournalError, first_break
from station.store import journal as j
from station.store.engine import reading, scratch_engine
from station.store.faults import explain, means_damage
from station.store.heads import SeenHead, read_head
from station.store.hold_ranges import UnknownFact
from station.store.projections import Projections
from station.store.schema import metadata
from station.store.tables import PROJECTIONS, identity
from station.store.tree import Blocks

_NAMES = {
    "lot": ("lot", "code"),
    "lot_set": ("lot set", "key"),
    "lot_use": ("use of lot", "lot"),
    "run": ("run", "uid"),
    "blend": ("blend lot", "code"),
    "pack": ("bag", "serial"),
    "fact": ("fact", "uid"),
    "hold_range": ("range of hold", "hold"),
    "tree_block": ("Merkle root of block", "number"),
    "shipment": ("shipment", "number"),
    "unit": ("case or pallet", "sscc"),
    "case_span": ("bags of a case", "first"),
}
"""What a row of a table is called, and the column that names it."""


class Damage(Exception):
    """The record does not hold.

    Args:
        seq: the entry at fault, or None when the journal is whole and a table is not.
        why: what was found and where.
    """

    def __init__(self, seq: int | None, why: str) -> None:
        super().__init__(why)
        self.seq = seq
        self.why = why


@dataclass(frozen=True, slots=True)
class VerifyReport:
    """What was found.

    Args:
        entries: journal entries that hold, from the first one on.
        whole: nothing is missing, changed or added anywhere.
        first_break: seq of the first entry that does not hold, or None.
        why: what is wrong and where; empty when whole.
        epoch: of the last entry that holds, or None without any.
        head_seq: seq of that entry.
        head: its hash as 64 hex digits.
    """

    entries: int
    whole: bool
    first_break: int | None
    why: str
    epoch: int | None
    head_seq: int
    head: str


class Chain:
    """Reads a journal's entries, each checked against the one before.

    Args:
        connection: inside a transaction.
        seen: the head written down beside the file, or None.
    """

    def __init__(self, connection: Connection, seen: SeenHead | None = None) -> None:
        self._connection = connection
        self._seen = seen
        self._identity = connection.execute(select(identity)).one_or_none()
        self.entries = 0
        self.epoch: int | None = None
        self.seq = 0
        self.hash = GENESIS

    def walk(self) -> Iterator[tuple[Entry, int]]:
        """Yield each entry with its row number.

        Raises:
            Damage: an entry does not follow, or the journal ends too early.
        """
        epochs: set[int] = set()
        for kept in j.entries(self._connection):
            if kept.epoch != self.epoch:
                if kept.epoch in epochs:
                    raise Damage(kept.stored.seq, f"epoch {kept.epoch} goes on after another one")
                epochs.add(kept.epoch)
                self.epoch, self.seq, self.hash = kept.epoch, 0, GENESIS
            broken = first_break((kept.stored,), self.hash, self.seq + 1)
            if broken is not None:
                raise Damage(broken.seq, broken.why)
            entry = self._read(kept)
            self.entries, self.seq, self.hash = self.entries + 1, kept.stored.seq, kept.stored.hash
            self._compare_with_seen()
            yield entry, kept.row
        self._check_end()

    def _read(self, kept: j.Kept) -> Entry:
        seq = kept.stored.seq
        try:
            entry = j.read_entry(kept.stored.canonical)
        except JournalError as fault:
            raise Damage(seq, f"entry {seq}: {fault}") from fault
        if (entry.epoch, entry.seq, str(entry.kind)) != (kept.epoch, seq, kept.kind):
            raise Damage(
                seq, f"entry {seq} stands under another epoch, number or kind than its own"
            )
        ours = self._identity
        if ours is None or (entry.site, entry.station) != (ours.site, ours.station):
            raise Damage(
                seq, f"entry {seq} was written by station {entry.station} at site {entry.site}"
            )
        return entry

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


def verify(home: Path) -> VerifyReport:
    """Check the whole record in ``home`` without changing it.

    Raises:
        BadInput: there is no record in ``home``.
        EnvironmentFault: the file cannot be read at all.
    """
    with reading(home) as connection:
        chain = None
        scratch = scratch_engine()
        try:
            chain = Chain(connection, read_head(home))
            with scratch.connect() as copy, copy.begin():
                metadata.create_all(copy)
                replay(chain, copy)
                _compare(connection, copy)
            _check_structure(connection)
        except Damage as damage:
            return _report(chain, damage)
        except (DBAPIError, sqlite3.Error) as fault:
            if not means_damage(fault):
                raise
            at = chain.seq + 1 if chain is not None else None
            return _report(
                chain, Damage(at, f"after entry {(at or 1) - 1}: {explain(fault).words}")
            )
        finally:
            scratch.dispose()
        return _report(chain, None)


def replay(chain: Chain, target: Connection) -> None:
    """Build all projections in empty tables of ``target`` from the entries of a chain.

    Raises:
        Damage: an entry does not hold, or its body does not fit the ones before.
    """
    projections = Projections(target)
    blocks = Blocks(target)
    for entry, row in chain.walk():
        try:
            projections.apply(entry, row)
        except (UnknownFact, KeyError, TypeError, ValueError) as fault:
            raise Damage(entry.seq, f"entry {entry.seq} cannot be understood: {fault}") from fault
        blocks.add(entry.epoch, entry.seq, chain.hash)


def _compare(connection: Connection, copy: Connection) -> None:
    for table in PROJECTIONS:
        columns = ", ".join(f'"{column.name}"' for column in table.columns)
        keys = ", ".join(f'"{column.name}"' for column in table.primary_key)
        statement = f"SELECT {columns} FROM {table.name} ORDER BY {keys}"
        rows = zip_longest(connection.exec_driver_sql(statement), copy.exec_driver_sql(statement))
        for found, expected in rows:
            if found is None or expected is None or tuple(found) != tuple(expected):
                raise Damage(None, _difference(table, found, expected))


def _check_structure(connection: Connection) -> None:
    """Let SQLite check its pages, and each index against its table."""
    (found,) = connection.exec_driver_sql("PRAGMA integrity_check(1)").one()
    if found != "ok":
        raise Damage(None, f"the journal and the tables hold, but the file is damaged: {found}")


def _difference(table: Table, found: Row[Any] | None, expected: Row[Any] | None) -> str:
    word, column = _NAMES[table.name]
    if expected is None:
        assert found is not None
        return f"{word} {getattr(found, column)} stands in a table, but no journal entry made it"
    if found is None or getattr(found, column) != getattr(expected, column):
        return f"{word} {getattr(expected, column)} is missing from its table"
    differing = ", ".join(
        f"{field.name} is {was!r}, the journal says {should!r}"
        for field, was, should in zip(table.columns, found, expected, strict=True)
        if was != should
    )
    return f"{word} {getattr(expected, column)} was changed in its table: {differing}"


def _report(chain: Chain | None, damage: Damage | None) -> VerifyReport:
    return VerifyReport(
        entries=chain.entries if chain else 0,
        whole=damage is None,
        first_break=damage.seq if damage else None,
        why=damage.why if damage else "",
        epoch=chain.epoch if chain else None,
        head_seq=chain.seq if chain else 0,
        head=(chain.hash if chain else GENESIS).hex(),
    )
