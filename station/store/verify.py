"""Proves that the journal is whole and that every table follows from it.

The journal is read from its first entry; each hash must follow from the one before. All tables are
then built anew from the bodies in a scratch database and compared, row by row, with the ones in the
file. SQLite checks its own structure last. The file is opened read-only.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from dataclasses import dataclass
from itertools import zip_longest
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Table, insert
from sqlalchemy.exc import DBAPIError

from station.core.journal import GENESIS, Entry, EntryKind, canonical
from station.core.tree_head import SignedHead
from station.store.chain import Chain
from station.store.damage import Damage
from station.store.damaged_page import page_of, readable, unreadable
from station.store.engine import reading, scratch_engine
from station.store.head_check import Elsewhere
from station.store.heads import read_head
from station.store.hold_ranges import UnknownFact
from station.store.prepared import driver_of
from station.store.projections import Projections
from station.store.schema import metadata
from station.store.tables import PROJECTIONS, journal
from station.store.tree import BLOCK, blocks_told, keep_block

_Row = tuple[Any, ...]

_NAMES = {
    "lot": ("lot", "code"),
    "lot_set": ("lot set", "key"),
    "lot_use": ("use of lot", "lot"),
    "run": ("run", "uid"),
    "blend": ("blend lot", "code"),
    "pack": ("bag", "serial"),
    "fact": ("fact", "uid"),
    "hold_range": ("range of hold", "hold"),
    "disposition": ("disposition of bag", "serial"),
    "standing": ("fact that still counts", "key"),
    "tree_block": ("Merkle root of block", "number"),
    "shipment": ("shipment", "number"),
    "unit": ("case or pallet", "sscc"),
    "case_span": ("bags of a case", "first"),
}
"""What a row of a table is called, and the column that names it."""
_LOOKED_UP = (EntryKind.HOLD, EntryKind.RELEASE)
"""A release of a lot is held against the entries before it."""


def _ignore(_: int) -> None:
    """Nobody watches."""


@dataclass(frozen=True, slots=True)
class VerifyReport:
    """What was found.

    Args:
        entries: journal entries that hold, from the first one on.
        whole: nothing is missing, changed or added anywhere.
        first_break: seq of the first entry that does not hold, or None.
        page: the damaged page of the file, from 1, where one is named.
        purged: entries of which number, kind and hash alone are left, as their purge says.
        why: what is wrong and where; empty when whole.
        epoch: of the last entry that holds, or None without any.
        head_seq: seq of that entry.
        head: its hash as 64 hex digits.
        heads: heads of the Merkle tree in the journal, each of which fits the entries before it.
        signed: the newest of them that is signed, or None.
    """

    entries: int
    whole: bool
    first_break: int | None
    why: str
    epoch: int | None
    head_seq: int
    head: str
    heads: int = 0
    signed: SignedHead | None = None
    page: int | None = None
    purged: int = 0


def verify(
    home: Path,
    elsewhere: Elsewhere | None = None,
    progress: Callable[[int], None] = _ignore,
) -> VerifyReport:
    """Check the whole record in ``home`` without changing it.

    Args:
        home: the station's folder.
        elsewhere: heads and key that are known from outside the record.
        progress: told from time to time how many entries were checked.

    Raises:
        BadInput: there is no record in ``home``.
        EnvironmentFault: the file cannot be read at all.
    """
    chain: Chain | None = None
    scratch = scratch_engine()
    try:
        with reading(home) as connection:
            with readable(connection, "the identity of the record", 1):
                chain = Chain(connection, read_head(home), elsewhere)
            with scratch.connect() as copy, copy.begin():
                _make_scratch(copy)
                _replay(connection, chain, copy, progress)
                with readable(connection, "the journal holds, but a table"):
                    _compare(connection, copy)
            with readable(connection, "the journal and the tables hold, but the file"):
                _check_structure(connection)
    except Damage as damage:
        return _report(chain, damage)
    finally:
        scratch.dispose()
    return _report(chain, None)


def _replay(
    connection: Connection, chain: Chain, copy: Connection, progress: Callable[[int], None]
) -> None:
    try:
        replay(chain, copy, progress, scratch=True)
    except (DBAPIError, sqlite3.Error) as fault:
        next_one = chain.seq + 1
        raise unreadable(connection, fault, f"entry {next_one}", next_one) from fault


def replay(
    chain: Chain,
    target: Connection,
    progress: Callable[[int], None] = _ignore,
    *,
    scratch: bool = False,
) -> None:
    """Build all projections in empty tables of ``target`` from the entries of a chain.

    Args:
        chain: the entries.
        target: where the tables are.
        progress: told the number of entries now and then.
        scratch: the target has no journal of its own: entries that later ones look up are put in.

    Raises:
        Damage: an entry does not hold, or its body does not fit the ones before.
    """
    projections = Projections(target, chain.gone)
    apply = projections.apply
    for entry, row in chain.walk():
        if entry is not None:
            if scratch and entry.kind in _LOOKED_UP:
                _put_in(target, entry, row)
            try:
                apply(entry, row)
            except (UnknownFact, KeyError, TypeError, ValueError) as fault:
                why = f"entry {entry.seq} cannot be understood: {fault}"
                raise Damage(entry.seq, why) from fault
        if chain.block is not None and chain.epoch is not None:
            keep_block(target, chain.epoch, chain.seq // BLOCK - 1, chain.block)
            progress(chain.entries)


def _put_in(target: Connection, entry: Entry, row: int) -> None:
    """Let a later entry find this one."""
    values = {"id": row, "epoch": entry.epoch, "seq": entry.seq, "kind": entry.kind}
    kept = insert(journal).values(**values, hash=GENESIS, canonical=canonical(entry))
    target.execute(kept)


def _make_scratch(copy: Connection) -> None:
    """Make empty tables without what only serves questions or the disk."""
    metadata.create_all(copy)
    for table in PROJECTIONS:
        for index in table.indexes:
            index.drop(copy)


def _compare(connection: Connection, copy: Connection) -> None:
    found_in, made_in = driver_of(connection), driver_of(copy)
    for table in PROJECTIONS:
        columns = ", ".join(f'"{column.name}"' for column in table.columns)
        keys = ", ".join(f'"{column.name}"' for column in table.primary_key)
        statement = f"SELECT {columns} FROM {table.name} ORDER BY {keys}"
        rows = zip_longest(found_in.execute(statement), made_in.execute(statement))
        for found, expected in rows:
            if found != expected:
                raise Damage(None, _difference(table, found, expected))


def _check_structure(connection: Connection) -> None:
    """Let SQLite check its pages, and each index against its table."""
    (found,) = connection.exec_driver_sql("PRAGMA integrity_check(1)").one()
    if found != "ok":
        words = f"the journal and the tables hold, but the file is damaged: {found}"
        raise Damage(None, words, page_of(found))


def _difference(table: Table, found: _Row | None, expected: _Row | None) -> str:
    word, column = _NAMES[table.name]
    place = [field.name for field in table.columns].index(column)
    said = blocks_told if table.name == "tree_block" else str
    if expected is None:
        assert found is not None, "two rows differ, so one of them is there"
        return f"{word} {said(found[place])} stands in a table, but no journal entry made it"
    if found is None or found[place] != expected[place]:
        return f"{word} {said(expected[place])} is missing from its table"
    differing = ", ".join(
        f"{field.name} is {was!r}, the journal says {should!r}"
        for field, was, should in zip(table.columns, found, expected, strict=True)
        if was != should
    )
    return f"{word} {said(expected[place])} was changed in its table: {differing}"


def _report(chain: Chain | None, damage: Damage | None) -> VerifyReport:
    return VerifyReport(
        entries=chain.entries if chain else 0,
        whole=damage is None,
        first_break=damage.seq if damage else None,
        why=damage.why if damage else "",
        epoch=chain.epoch if chain else None,
        head_seq=chain.seq if chain else 0,
        head=(chain.hash if chain else GENESIS).hex(),
        heads=chain.heads.heads if chain else 0,
        signed=chain.heads.last_signed if chain else None,
        page=damage.page if damage else None,
        purged=chain.purged if chain else 0,
    )
