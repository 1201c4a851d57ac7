"""The station's store: every fact durable before it is acknowledged, through one connection.

Each use case is one transaction: its journal entry and the rows that follow from it. Nothing is
acknowledged before the commit was synced. How faults end is decided in ``faults``.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable, Mapping, Sequence
from contextlib import suppress
from datetime import date
from pathlib import Path
from types import TracebackType

from sqlalchemy import Connection, Engine, select
from sqlalchemy.exc import DBAPIError

from station.core.facts import Fact, FactRecord
from station.core.ids import new_uid
from station.core.journal import EntryKind, JournalError, Value
from station.core.label_life import LabelledBag
from station.core.lots import InputLot, LotStatus
from station.core.pack import LabelState, Moment, PackDraft, PackId, PackRecord, Quality
from station.core.receiving import held_lot
from station.core.run import Run
from station.errors import BadInput, EnvironmentFault
from station.line.ports import Clock, StoreFault
from station.store import bodies, queries
from station.store.day_heads import DayHeads
from station.store.engine import database, writer_engine
from station.store.faults import explain
from station.store.heads import LastEntry, SeenHead, read_head, write_head
from station.store.held_content import refuse_held
from station.store.hold_ranges import UnknownFact
from station.store.journal import ChainFault, Head, Journal
from station.store.label_steps import check_label, check_taken_back, on_their_way
from station.store.labelled import labelled_pack
from station.store.lock import LOCK, HomeLock
from station.store.lot_intake import News, news_of
from station.store.migrate import look, upgrade
from station.store.opening import establish, start_body
from station.store.prepared import driver_of
from station.store.projections import Projections
from station.store.run_facts import RunFacts, next_blend_number
from station.store.tables import lot
from station.store.transaction import Transaction

CHECKPOINT_EVERY = 250
"""Commits between checkpoints: about 6 MB of log."""


class StationStore:
    """The only way to the disk; made by :meth:`open`, used from one thread, closed once."""

    def __init__(
        self,
        home: Path,
        site: str,
        station: str,
        clock: Clock,
        lock: HomeLock,
        key: Path | None = None,
    ) -> None:
        self._home = home
        self._site = site
        self._station = station
        self._clock = clock
        self._lock = lock
        self._commits = 0
        self._packs = 0
        self._held: dict[str, InputLot] = {}
        """Lots that the settings hold."""
        self._engine: Engine = writer_engine(database(home))
        self._connection: Connection = self._engine.connect()
        self._driver = driver_of(self._connection)
        self._projections = Projections(self._connection)
        self._facts = RunFacts(self._connection)
        self._epoch = 0
        self._chain = (site, station, 0)
        self._journal = Journal(self._connection, site, station, 0, Head())
        self._heads = DayHeads(site, station, key)
        self._last = LastEntry(home)
        self._transaction = Transaction(
            self._connection, self._begun, self._undone, self._committed
        )

    @classmethod
    def open(
        cls, home: Path, site: str, station: str, clock: Clock, key: Path | None = None
    ) -> StationStore:
        """Open the record in ``home``, or make it; a label on its way when it ended is in doubt.

        Args:
            home: the station's folder, on a local disk.
            site: short code of the packhouse; must be the one the record was made with.
            station: short code of the station; likewise.
            clock: tells the time.
            key: file of the key that signs heads, made where it is missing; None for none.

        Raises:
            BadInput: the record belongs to another station or program.
            EnvironmentFault: the disk does not serve, the folder is in use, or the end of the
                journal does not hold.
        """
        try:
            home.mkdir(parents=True, exist_ok=True)
        except OSError as fault:
            raise EnvironmentFault(f"cannot make the folder {home}", str(fault)) from fault
        if not (home / LOCK).exists():
            look(database(home))  # a folder that is no station's is left without a lock
        lock = HomeLock(home)
        store = None
        try:
            upgrade(database(home))
            store = cls(home, site, station, clock, lock, key)
            store._begin_epoch()
        except BaseException as fault:
            if store is None:
                lock.release()
            else:
                store._release()
            if isinstance(fault, DBAPIError | sqlite3.Error):
                words = explain(fault).words
                raise EnvironmentFault(f"cannot open the record in {home}", words) from fault
            if isinstance(fault, ChainFault | UnknownFact | JournalError):
                raise EnvironmentFault(f"cannot open the record in {home}", str(fault)) from fault
            raise
        return store

    @property
    def epoch(self) -> int:
        """Number of this incarnation of the record."""
        return self._epoch

    @property
    def day_heads(self) -> DayHeads:
        """What makes heads of the journal, and whether it signs them."""
        return self._heads

    def head(self) -> tuple[int, str]:
        """Seq and hash (64 hex digits) of the last durable journal entry."""
        head = self._journal.head
        return head.seq, head.hash.hex()

    def in_doubt(self) -> tuple[str, ...]:
        """Serials of bags about whose label a person must answer, oldest first."""
        return queries.in_doubt(self._home)

    def add_lots(self, lots: Sequence[InputLot], at: Moment, who: str) -> int:
        """Record input lots that are not known yet, and known ones whose status changed.

        A lot that a person holds stays held whatever comes with it, and one that comes held is
        held again whenever a person's last hold is taken off it.

        Returns:
            How many were new.

        Raises:
            StoreFault: also when a known code comes with another component, supplier or date: two
                deliveries under one code cannot be traced apart.
        """
        with self._transaction:
            new = self._intake(lots, at, who)
            told = self._held | {given.code: given for given in lots}
        self._held = {code: one for code, one in told.items() if one.status is LotStatus.HELD}
        return new

    def _intake(self, lots: Iterable[InputLot], at: Moment, who: str) -> int:
        new = 0
        for given in lots:
            news = news_of(self._connection, self._projections.lots, given)
            if news is not None:
                new += news is News.NEW
                self._append(EntryKind.LOT, at, who, bodies.lot_body(given))
        return new

    def next_blend_number(self, line: str, day: date) -> int:
        """The number, from 1, of the next blend lot of a line and production day."""
        with self._transaction:
            return next_blend_number(self._connection, line, day)

    def start_run(self, run: Run, at: Moment) -> None:
        """Record a run with its frozen product, limits, dates and lot set."""
        with self._transaction:
            codes = {use.lot for use in run.lot_set.uses}
            known = set(
                self._connection.execute(select(lot.c.code).where(lot.c.code.in_(codes))).scalars()
            )
            if missing := sorted(codes - known):
                raise StoreFault(
                    f"lot {', '.join(missing)} is not in the record: receive it before the run"
                )
            if self._facts.known(run.id):
                raise StoreFault(f"run {run.id} is already in the record")
            self._append(EntryKind.RUN, at, run.lead, bodies.run_body(run))

    def end_run(self, run_id: str, at: Moment, who: str) -> None:
        """Record the end of a run."""
        with self._transaction:
            self._facts.check_open(run_id)
            self._append(EntryKind.RUN_END, at, who, {"run": run_id})
        self._facts.ended(run_id)

    def add_pack(self, draft: PackDraft) -> PackRecord:
        """Give the bag its number and record bag, lot set and journal entry in one commit."""
        if draft.quality is not Quality.GOOD and not draft.reason:
            raise StoreFault("a bag that is not good needs a reason: choose one")
        number = self._packs + 1
        identity, uid = PackId(*self._chain, number), new_uid(draft.judged_at)
        with self._transaction:
            form = self._facts.form(self._chain, draft)
            if draft.quality is Quality.GOOD:
                self._facts.check_usable(draft.lot_set)
            self._sign_if_due(draft.judged_at)
            blend_id = self._projections.blend_of(form.blend, form.shared)
            before = self._journal.pending
            places = (before.seq + 1, before.row + 1, blend_id)
            kept, row = form.entry_and_row(draft, identity, uid, *places)
            head = self._journal.add(EntryKind.PACK, kept)
            self._projections.add_pack(row, blend_id)
        self._packs = number
        return PackRecord(identity, uid, draft, head.seq, head.hash.hex())

    def mark_label(self, serial: str, state: LabelState, at: Moment, who: str, why: str) -> None:
        """Record how far the label of a bag has come."""
        with self._transaction:
            check_label(self._connection, serial, state)
            body: bodies.Body = {"serial": serial, "label": str(state), "why": why}
            self._append(EntryKind.LABEL, at, who, body)

    def take_back(self, serial: str, reason: str, at: Moment, who: str) -> None:
        """Record that a labelled bag became a reject and its label is void, in one commit."""
        if not reason:
            raise StoreFault(f"setting bag {serial} aside needs a reason: choose one")
        with self._transaction:
            check_taken_back(self._connection, serial)
            body: bodies.Body = {
                "serial": serial,
                "label": str(LabelState.VOIDED),
                "quality": str(Quality.REJECT),
                "why": reason,
            }
            self._append(EntryKind.LABEL, at, who, body)

    def labelled(self, serial: str) -> LabelledBag:
        """The bag of a serial, with its run and what became of its label.

        Raises:
            StoreFault: no such serial; the message names close ones.
        """
        try:
            return labelled_pack(self._home, serial)
        except BadInput as unknown:
            raise StoreFault(str(unknown)) from unknown

    def note(self, words: str, at: Moment, who: str) -> None:
        """Record an event in words."""
        with self._transaction:
            self._append(EntryKind.EVENT, at, who, {"words": words})

    def record(self, facts: Sequence[Fact], at: Moment, who: str) -> tuple[FactRecord, ...]:
        """Record facts in one commit, all or none.

        Raises:
            StoreFault: also when one refers to what is not in the record.
        """
        with self._transaction:
            refuse_held(self._connection, facts)
            heads = [self._append(fact.kind, at, who, fact.body()) for fact in facts]
            let_go = {held_lot(fact): None for fact in facts if fact.kind is EntryKind.RELEASE}
            self._intake([self._held[code] for code in let_go if code in self._held], at, "station")
        return tuple(
            FactRecord(fact, at, who, head.seq) for fact, head in zip(facts, heads, strict=True)
        )

    def close(self) -> None:
        """Record the stop, fold the log into the file and let go of the folder.

        Raises:
            StoreFault: the stop could not be recorded; the store is closed all the same.
        """
        try:
            if not self._transaction.refusal:
                with self._transaction:
                    body: bodies.Body = {"packs": self._packs}
                    at = self._clock.now()
                    self._append(EntryKind.STOP, at, "station", body)
                    if self._heads.signs:
                        self._sign(at)
                self._checkpoint("TRUNCATE")
        finally:
            self._release()

    def __enter__(self) -> StationStore:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        fault: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    # --- one transaction ----------------------------------------------------------------------

    def _begun(self) -> None:
        self._journal.begin()
        self._heads.begin()

    def _undone(self) -> None:
        self._projections.forget()
        self._facts.forget()

    def _committed(self) -> None:
        self._journal.committed()
        self._heads.committed()
        head = self._journal.head
        self._last.note(self._epoch, head.seq, head.hash)
        self._commits += 1
        if self._commits % CHECKPOINT_EVERY == 0:
            self._checkpoint("PASSIVE")

    def _append(self, kind: EntryKind, at: Moment, who: str, body: Mapping[str, Value]) -> Head:
        self._sign_if_due(at)
        return self._keep(kind, at, who, body)

    def _sign_if_due(self, at: Moment) -> None:
        due = self._heads.due(self._connection, self._journal.pending, at)
        if due is not None:
            self._keep(due.kind, at, "station", due.body())

    def _sign(self, at: Moment) -> None:
        head = self._heads.sign(self._connection, self._journal.pending, at)
        self._keep(head.kind, at, "station", head.body())

    def _keep(self, kind: EntryKind, at: Moment, who: str, body: Mapping[str, Value]) -> Head:
        entry, head = self._journal.append(kind, at, who, body)
        self._projections.apply(entry, head.row)
        self._facts.changed(kind)
        return head

    def _checkpoint(self, mode: str) -> None:
        """Fold the log into the file; what was committed is durable whether or not this works."""
        try:
            self._driver.execute(f"PRAGMA wal_checkpoint({mode})").fetchall()
        except sqlite3.Error as fault:
            explained = explain(fault)
            if explained.final:
                self._transaction.refusal = explained.words
            return
        self._write_head()

    def _write_head(self) -> None:
        seq, digits = self.head()
        write_head(self._home, SeenHead(self._epoch, seq, digits))

    # --- opening and closing ------------------------------------------------------------------

    def _begin_epoch(self) -> None:
        at = self._clock.now()
        seen = read_head(self._home)
        with self._connection.begin():
            opened = establish(self._connection, self._site, self._station, at, seen)
            self._epoch, self._packs = opened.epoch, opened.packs
            self._chain = (self._site, self._station, opened.epoch)
            self._journal = Journal(self._connection, *self._chain, opened.head)
            self._journal.begin()
            self._heads.opened(self._connection, opened.epoch, opened.head)
            left = on_their_way(self._connection)
            self._append(EntryKind.START, at, "station", start_body(opened, seen))
            taken = self._heads.take_key(self._connection, at)
            if taken is not None:
                self._append(taken.kind, at, "station", taken.body())
            for serial in left:
                body: bodies.Body = {
                    "serial": serial,
                    "label": str(LabelState.IN_DOUBT),
                    "why": "the station ended before the label's fate was recorded",
                }
                self._append(EntryKind.LABEL, at, "station", body)
        self._journal.committed()
        self._heads.committed()
        self._write_head()

    def _release(self) -> None:
        with suppress(DBAPIError):
            self._connection.close()
        self._engine.dispose()
        self._last.close()
        self._lock.release()
        self._transaction.refusal = "the store is closed"
