"""Many bags at once, for measuring on a long record; never in front of a line.

The record is a true one: every bag has its journal entry in the chain and its row in the table, as
:mod:`projections` would have made it. Three things are left out: the sync of each bag, the steps of
its label (its entry says *applied* at once), and the residue of the pan. One entry of each kind of
bag is written by the code that writes bags; the others differ in the same six places.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy import Connection

from station.core.facts import Fact
from station.core.ids import uuid7
from station.core.journal import Entry, EntryKind, Value, canonical, entry_hash
from station.core.lots import InputLot
from station.core.pack import LabelState, Moment, PackDraft, PackId, Quality, epoch_mark
from station.core.run import Run
from station.store import bodies
from station.store.columns import mass_values
from station.store.day_heads import DayHeads
from station.store.engine import database, writer_engine
from station.store.heads import SeenHead, read_head, write_head
from station.store.journal import Head, Journal
from station.store.lock import HomeLock
from station.store.opening import establish
from station.store.prepared import driver_of
from station.store.projections import Projections
from station.store.tables import pack
from station.store.tree import BLOCK, close_block

_PAGES_EACH = 20
"""Runs between commits."""

_NUMBER, _SEQ = 8_765_432_101, 8_765_432_102
_SERIAL, _UID, _UTC, _TICKS = "<serial>", "<uid>", datetime(2001, 2, 3, 4, 5, 6, 7, UTC), 7_007_007
_COLUMNS = tuple(column.name for column in pack.columns if column.name != "id")
_ADD_PACK = f"INSERT INTO pack ({', '.join(_COLUMNS)}) VALUES ({', '.join('?' * len(_COLUMNS))})"
_ADD_ENTRY = (
    "INSERT INTO journal (id, epoch, seq, kind, hash, canonical) VALUES (?, ?, ?, 'pack', ?, ?)"
)


@dataclass(frozen=True, slots=True)
class BulkRun:
    """One run and its bags.

    Args:
        run: as opened.
        lots: input lots to be made known before it.
        start: when it began.
        bags: how many.
        each: time from bag to bag.
        kinds: bags to be repeated by turns; good ones and rejects.
        before, after: facts recorded before its first bag and behind its last.
    """

    run: Run
    lots: Sequence[InputLot]
    start: Moment
    bags: int
    each: timedelta
    kinds: Sequence[PackDraft]
    before: Sequence[Fact] = ()
    after: Sequence[Fact] = ()


class BulkRecord:
    """A record of one station, open for many bags; the folder must hold a record already.

    Args:
        home: the station's folder.
        site, station: whose record it is.
        at: now, of the record's own time.
    """

    def __init__(self, home: Path, site: str, station: str, at: Moment) -> None:
        self._home, self._site, self._station = home, site, station
        self._lock = HomeLock(home)
        self._engine = writer_engine(database(home))
        self._connection: Connection = self._engine.connect()
        driver = driver_of(self._connection)
        driver.execute("PRAGMA synchronous=OFF")
        driver.execute("PRAGMA cache_size=-200000")
        self._projections = Projections(self._connection)
        self._heads = DayHeads(site, station, None)
        with self._connection.begin():
            opened = establish(self._connection, site, station, at, read_head(home))
            self._heads.opened(self._connection, opened.epoch, opened.head)
        self._epoch, self._head, self._packs = opened.epoch, opened.head, opened.packs
        self._folded = opened.head

    def add(self, runs: Iterable[BulkRun]) -> int:
        """Record runs with their bags, one after the other; returns the number of bags."""
        before = self._packs
        for number, given in enumerate(runs, start=1):
            if not self._connection.in_transaction():
                self._connection.begin()
            self._add(given)
            if number % _PAGES_EACH == 0:
                self._fold()
        self._fold()
        return self._packs - before

    def close(self) -> None:
        """Bring all of it to the disk and let go of the folder; runs cut short are undone."""
        if self._connection.in_transaction():
            self._connection.rollback()
        driver = driver_of(self._connection)
        driver.execute("PRAGMA synchronous=FULL")
        driver.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchall()
        self._connection.close()
        self._engine.dispose()
        write_head(self._home, SeenHead(self._epoch, self._folded.seq, self._folded.hash.hex()))
        self._lock.release()

    def _fold(self) -> None:
        if self._connection.in_transaction():
            self._connection.commit()
            self._folded = self._head
        driver_of(self._connection).execute("PRAGMA wal_checkpoint(PASSIVE)").fetchall()

    def _add(self, given: BulkRun) -> None:
        run = given.run
        for lot in given.lots:
            self._entry(EntryKind.LOT, given.start, "station", bodies.lot_body(lot))
        self._entry(EntryKind.RUN, given.start, run.lead, bodies.run_body(run))
        self._facts(given.before, given.start, run.lead)
        driver = driver_of(self._connection)
        blend_id = driver.execute("SELECT max(id) FROM blend").fetchone()[0]
        forms = [_Form.of(run, kind, self._names(), blend_id) for kind in given.kinds]
        entries: list[tuple[Any, ...]] = []
        rows: list[tuple[Any, ...]] = []
        for entry, row in self._bags(given, forms):
            entries.append(entry)
            rows.append(row)
        driver.executemany(_ADD_ENTRY, entries)
        if rows:
            self._projections.fill(blend_id)
        driver.executemany(_ADD_PACK, rows)
        for row, epoch, seq, *_ in entries:
            if not seq % BLOCK:
                close_block(self._connection, epoch, seq, row)
        self._packs += given.bags
        ended = _later(given.start, given.each * given.bags)
        self._entry(EntryKind.RUN_END, ended, run.lead, {"run": run.id})
        self._facts(given.after, ended, run.lead)

    def _facts(self, facts: Sequence[Fact], at: Moment, who: str) -> None:
        for fact in facts:
            self._entry(fact.kind, at, who, fact.body())

    def _names(self) -> tuple[str, str, int]:
        return self._site, self._station, self._epoch

    def _bags(
        self, given: BulkRun, forms: Sequence[_Form]
    ) -> Iterator[tuple[tuple[Any, ...], tuple[Any, ...]]]:
        epoch, head, kinds = self._epoch, self._head, len(forms)
        mark = f"{self._station}-{epoch_mark(epoch)}-"
        for bag in range(given.bags):
            form = forms[bag % kinds]
            number = self._packs + bag + 1
            at = given.start.utc + given.each * bag
            serial = f"{mark}{number:06d}"
            uid = str(uuid7(at, number.to_bytes(10, "big")))
            row, seq = head.row + 1, head.seq + 1
            text = at.isoformat(timespec="microseconds")
            kept = (form.entry % (number, serial, uid, bag, seq, text)).encode()
            digest = entry_hash(head.hash, kept)
            head = Head(row, seq, digest)
            values = (*form.before, number, serial, uid, row, *form.after[0])
            yield (
                (row, epoch, seq, digest, kept),
                (*values, f"{text[:-6]}Z", *form.after[1]),
            )
        self._head = head

    def _entry(self, kind: EntryKind, at: Moment, who: str, body: Mapping[str, Value]) -> None:
        over = self._heads.due(self._connection, self._head, at)
        if over is not None:
            self._keep(over.kind, at, "station", over.body())
        self._keep(kind, at, who, body)

    def _keep(self, kind: EntryKind, at: Moment, who: str, body: Mapping[str, Value]) -> None:
        chain = (self._site, self._station, self._epoch)
        journal = Journal(self._connection, *chain, self._head)
        journal.begin()
        entry, self._head = journal.append(kind, at, who, body)
        self._projections.apply(entry, self._head.row)


@dataclass(frozen=True, slots=True)
class _Form:
    """One kind of bag: its entry with six gaps, and its row in three parts with gaps between."""

    entry: str
    before: tuple[object, ...]
    after: tuple[tuple[object, ...], tuple[object, ...]]

    @classmethod
    def of(cls, run: Run, kind: PackDraft, names: tuple[str, str, int], blend_id: int) -> _Form:
        members = bodies.lot_set_body(run.lot_set)
        identity = PackId(*names, number=_NUMBER)
        body = bodies.pack_body(bodies.run_frame(run), members, kind, identity, _UID)
        good = kind.quality is Quality.GOOD
        label = LabelState.APPLIED if good else LabelState.NONE
        body |= {"serial": _SERIAL, "label": str(label)}
        at = Moment(_UTC, kind.judged_at.offset_minutes, kind.judged_at.zone, _TICKS)
        whole = Entry(*names, _SEQ, EntryKind.PACK, at, kind.operator, body)
        text = canonical(whole).decode().replace("%", "%%")
        gaps = (str(_NUMBER), _SERIAL, _UID, str(_TICKS), str(_SEQ), _utc(_UTC))
        for gap, mark in zip(gaps, ("%d", "%s", "%s", "%d", "%d", "%s"), strict=True):
            assert text.count(gap) == 1, f"{gap} stands once in an entry"
            text = text.replace(gap, mark)
        row = _row(kind, names[2], blend_id, label)
        values = [row.get(name) for name in _COLUMNS]
        start, at_index = _COLUMNS.index("number"), _COLUMNS.index("judged_at")
        middle = values[start + 4 : at_index]
        return cls(text, tuple(values[:start]), (tuple(middle), tuple(values[at_index + 1 :])))


def _row(kind: PackDraft, epoch: int, blend_id: int, label: LabelState) -> dict[str, Any]:
    weighing = kind.weighing
    return {
        "epoch": epoch,
        "blend_id": blend_id,
        **mass_values("gross", weighing.gross),
        **mass_values("tare", weighing.tare),
        **mass_values("net", weighing.net),
        "verdict": kind.verdict,
        "quality": kind.quality,
        "rejected": int(kind.quality is Quality.REJECT),
        "reason": kind.reason,
        "label": label,
        "operator": kind.operator,
        "offset_minutes": kind.judged_at.offset_minutes,
        "copies": 0,
    }


def _later(moment: Moment, by: timedelta) -> Moment:
    return Moment(moment.utc + by, moment.offset_minutes, moment.zone, moment.monotonic_ns)


def _utc(at: datetime) -> str:
    return at.isoformat(timespec="microseconds")
