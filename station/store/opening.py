"""Opening a station's record: whose it is, where its journal ends, and whether that end holds."""

from __future__ import annotations

import secrets
import sqlite3
from collections.abc import Collection
from dataclasses import dataclass
from importlib.metadata import version

from sqlalchemy import Connection, insert, select

from station.core.journal import GENESIS, EntryKind, first_break
from station.core.pack import Moment, epoch_mark
from station.core.training import CODE
from station.errors import BadInput, EnvironmentFault
from station.store import journal as j
from station.store.bodies import Body
from station.store.heads import SeenHead
from station.store.shape import HEAD
from station.store.tables import identity, journal, pack

TAIL = 1000
"""Entries verified on opening; ``verify`` goes through all of them."""


@dataclass(frozen=True, slots=True)
class Opened:
    """Where a record stands.

    Args:
        epoch: number of this incarnation of the record.
        head: last entry of the journal, verified.
        packs: number of the last bag of this epoch, 0 before the first.
        new: the record was made just now.
    """

    epoch: int
    head: j.Head
    packs: int
    new: bool


def establish(
    connection: Connection, site: str, station: str, at: Moment, seen: SeenHead | None
) -> Opened:
    """Find or make the identity of the record and verify the end of its journal.

    Args:
        connection: the writer's, inside a transaction.
        site: short code of the packhouse whose record it must be.
        station: short code of the station.
        at: now.
        seen: the head written down beside the file, if any.

    Raises:
        BadInput: the record belongs to another station.
        EnvironmentFault: the end of the journal does not hold, or is missing.
    """
    found = connection.execute(select(identity)).one_or_none()
    if found is None:
        if connection.execute(select(journal.c.id).limit(1)).first() is not None:
            raise EnvironmentFault("the record has lost its identity", "restore the last backup")
        epoch = new_epoch(() if seen is None else (seen.epoch,))
        connection.execute(
            insert(identity).values(
                id=1, site=site, station=station, epoch=epoch, created_at=at.utc
            )
        )
        return Opened(epoch, j.Head(), 0, new=True)
    if (found.station == CODE) != (station == CODE):
        whose = "training" if found.station == CODE else f"station {found.station}, no training"
        raise BadInput(
            f"this is the record of {whose}",
            "records of training and of work never mix: give the folder that belongs to this "
            "station, or leave the folder out",
        )
    if (found.site, found.station) != (site, station):
        raise BadInput(
            f"this is the record of station {found.station} at site {found.site}",
            f"the settings say station {station} at site {site}: correct them or the folder",
        )
    head = _verified_head(connection, found.epoch)
    if seen is not None and seen.epoch == found.epoch:
        _not_behind(connection, head, seen)
    return Opened(found.epoch, head, _last_number(connection, found.epoch), new=False)


def new_epoch(used: Collection[int]) -> int:
    """Return a random epoch whose two-letter mark is none of the ``used`` ones'."""
    marks = {epoch_mark(epoch) for epoch in used}
    while True:
        epoch = secrets.randbits(63)
        if epoch > 0 and epoch_mark(epoch) not in marks:
            return epoch


def _verified_head(connection: Connection, epoch: int) -> j.Head:
    head = j.last_head(connection, epoch)
    # The entry before the first one checked gives the hash it must follow from.
    tail = list(j.entries(connection, after=max(0, head.row - TAIL - 1)))
    ours = [kept.stored for kept in tail if kept.epoch == epoch]
    if not ours:
        return head
    first, before = ours[0], GENESIS
    if first.seq > 1:
        before, ours = first.hash, ours[1:]
    broken = first_break(ours, before, ours[0].seq if ours else head.seq)
    if broken is not None:
        raise EnvironmentFault(
            f"the journal does not hold at entry {broken.seq}",
            f"{broken.why}; keep the file as it is, run `station journal verify` and restore the "
            "last backup",
        )
    return head


def _not_behind(connection: Connection, head: j.Head, seen: SeenHead) -> None:
    row = head.row - (head.seq - seen.seq)
    there = connection.execute(select(journal.c.hash).where(journal.c.id == row)).scalar()
    if seen.seq > head.seq or there is None or there.hex() != seen.hash:
        raise EnvironmentFault(
            f"the journal ends at entry {head.seq}, but entry {seen.seq} was written before",
            "entries are missing or another copy of the file was put here: bring the newest "
            "station.sqlite (with its -wal file) back",
        )


def _last_number(connection: Connection, epoch: int) -> int:
    """Return the number of the last bag, on which journal and bags must agree."""
    row = connection.execute(
        select(pack.c.entry_id, pack.c.number, pack.c.epoch).order_by(pack.c.id.desc()).limit(1)
    ).one_or_none()
    last = connection.execute(
        select(journal.c.id, journal.c.epoch, journal.c.canonical)
        .where(journal.c.kind == EntryKind.PACK)
        .where(journal.c.id >= (0 if row is None else row.entry_id))
        .order_by(journal.c.id.desc())
        .limit(1)
    ).one_or_none()
    written = (0, 0)
    if last is not None and last.epoch == epoch:
        written = (last.id, _number(last.canonical))
    shown = (row.entry_id, row.number) if row is not None and row.epoch == epoch else (0, 0)
    if written != shown:
        raise EnvironmentFault(
            f"the journal ends with bag {written[1]}, the table of bags with bag {shown[1]}",
            "run `station journal verify`, then `station journal rebuild`",
        )
    return written[1]


def _number(kept: bytes) -> int:
    number = j.read_entry(kept).body["number"]
    assert isinstance(number, int), "a bag's body holds its number"
    return number


def start_body(opened: Opened, seen: SeenHead | None) -> Body:
    """Body of the entry of a start."""
    body: Body = {
        "software": version("pack-line-station"),
        "sqlite": sqlite3.sqlite_version,
        "journal_mode": "wal",
        "synchronous": "full",
        "shape": HEAD,
    }
    if opened.new and seen is not None:
        # A record stood here before; its epoch and last head stay known.
        body["before"] = {"epoch": str(seen.epoch), "seq": seen.seq, "hash": seen.hash}
    return body
