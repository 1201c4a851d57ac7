"""The duty about lots: nothing held, and nothing unlisted, may be on a line that takes bags.

It also keeps the live balance of each lot on the line and asks when one should be empty by now.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Protocol

from station.core.balance import (
    Balance,
    PackedSum,
    Span,
    Water,
    balance,
    packed_key,
    together,
)
from station.core.blend_change import change_of
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.line_lots import LineLots, line_of, lots_after, move_of
from station.core.lot_set import LotSet, LotUse
from station.core.lots import LotStatus
from station.core.pack import PackRecord, Quality
from station.core.run import Run
from station.line.lot_book import LotBook
from station.line.state import Notice

LONG_OVERLAP = timedelta(minutes=30)
"""After so long an old lot is hardly still in the bags (common practice, no source)."""
_WHERE = "RUN, then LOTS (F6)"


@dataclass(frozen=True, slots=True)
class LotRow:
    """One lot on the line, as a screen shows it; rework has no component."""

    lot: str
    component: str
    finishing: bool
    held: bool
    listed: bool
    """Whether the open run's bags name it."""
    balance: Balance


class LotRecord(Protocol):
    """Knows what is on record of the lots on a line. Asked on the line's thread."""

    def moves(self) -> Iterable[FactRecord]:
        """The moves that tell which lots are there and what became of them, oldest first."""
        ...

    def packed(self, uses: Collection[LotUse]) -> Iterable[PackedSum]:
        """The bags that could hold one of these lots, summed."""
        ...

    def bags_since(self, move: str) -> int:
        """How many bags were recorded after a move, by its uid."""
        ...

    def newest(self) -> int:
        """Number of the newest entry in the journal of its epoch."""
        ...


class LotDuty:
    """Implements station.line.duties.Duty. Written by the line's thread; any thread may read.

    Bags are counted here; whatever else changes what a lot gave (a move, a bag that becomes worth
    something else) is asked of the record, so that a start says the same.

    Args:
        line: short code of the line.
        book: the lots there are; kept up here.
        record: what is on record of the lots on the line.
        water: uptake between weighing a lot and weighing the bags.
        on: whether a lot on the line that the run's bags do not name closes acceptance.
        long_overlap: a lot that finishes for longer should be asked about.
    """

    name = "LOTS"

    def __init__(
        self,
        line: str,
        book: LotBook,
        record: LotRecord,
        water: Water | None = None,
        on: bool = True,
        long_overlap: timedelta = LONG_OVERLAP,
    ) -> None:
        self._long_overlap = long_overlap
        self._code, self.book, self._on = line, book, on
        self._record, self._water = record, water or Water()
        self._packed: Mapping[str, PackedSum] = {}
        past = self._ask_record()
        made = {one.at.utc: one.fact.uid for one in past}
        self.line: LineLots = lots_after(past, line).with_bags(
            lambda since: record.bags_since(made[since])
        )
        """The lots on the line now."""
        self._sets: Mapping[str, LotSet] = {}
        self._run: Run | None = None
        self._set: LotSet | None = None

    # --- the duty -----------------------------------------------------------------------------

    def opened(self, run: Run, at: datetime) -> None:
        """The run's own set holds until a move changes it."""
        self._run, self._set = run, run.lot_set
        self._sets = {run.lot_set.key: run.lot_set}

    def packed(self, record: PackRecord) -> None:
        """Count a bag for its lots."""
        self.line = self.line.packed()
        lot_set = self._sets.get(record.draft.lot_set)
        if self._run is None or lot_set is None or record.entry_seq <= self._seen:
            return
        key = packed_key(self._run.product, lot_set)
        before = self._packed.get(key) or PackedSum(self._run.product, lot_set)
        net = record.draft.weighing.net.micrograms
        kept, rejected = before.kept, before.rejected
        if record.draft.quality is Quality.GOOD:
            kept += net
        else:
            rejected += net
        self._packed = {**self._packed, key: replace(before, kept=kept, rejected=rejected)}

    def noted(self, record: FactRecord) -> None:
        """See moves, deliveries, holds and releases."""
        self.book.noted(record)
        moved = self._is_mine(record)
        is_new = record.seq > self._seen  # with the first fact of a commit all of it was seen
        if is_new and (moved or record.fact.kind is EntryKind.DISPOSITION):
            self._ask_record()
        if not moved:
            return
        self.line = self.line.after(move_of(record.fact), record.at.utc)
        change = change_of(record.fact)
        if change is not None and self._run is not None and record.fact.run == self._run.id:
            self._set = change.lot_set
            self._sets = {**self._sets, change.lot_set.key: change.lot_set}

    def taken_back(self, serial: str) -> None:
        """A bag was set aside after it was recorded."""
        self._ask_record()

    def closing(self, now: datetime) -> str:
        """A held lot first, then one that no label names."""
        if self._set is None:
            return ""
        listed = {use.lot for use in self._set.uses}
        on_line = set(self.line.codes)
        for code in sorted(listed | on_line):
            if self._held(code):
                return f"lot {code} is held: take it off and load another: {_WHERE}"
        strange = sorted(on_line - listed)
        if strange and self._on:
            return f"lot {strange[0]} is on the line and on no label: take it off: {_WHERE}"
        return ""

    def due(self, now: datetime) -> Notice | None:
        """The question that the balance asks."""
        for row in self.rows():
            if row.balance.question:
                return Notice(row.balance.question, now)
        return None

    # --- what others may know -----------------------------------------------------------------

    def rows(self) -> tuple[LotRow, ...]:
        """The lots on the line with their balances, oldest first; rework behind them."""
        listed = () if self._set is None else tuple(use.lot for use in self._set.uses)
        again = tuple(
            LotRow(
                lot=one.lot,
                component="",
                finishing=True,
                held=any(self._held(use.lot) for use in one.members),
                listed=all(use.lot in listed for use in one.members),
                balance=Balance(one.lot, None, Span()),
            )
            for one in self.line.reworks
        )
        lots = tuple(
            LotRow(
                lot=one.lot,
                component=one.component,
                finishing=one.finishing_since is not None,
                held=self._held(one.lot),
                listed=one.lot in listed,
                balance=self.balance(one.lot, one.component),
            )
            for one in self.line.lots
        )
        return lots + again

    def lingering(self, now: datetime) -> tuple[str, ...]:
        """Codes of lots that have been finishing for long beside the next lot, oldest first."""
        return tuple(
            one.lot
            for one in self.line.lots
            if one.finishing_since is not None and now - one.finishing_since > self._long_overlap
        )

    def balance(self, lot: str, component: str) -> Balance:
        """What a lot should have left."""
        return balance(lot, component, self._moves, self._packed.values(), self._water)

    def _ask_record(self) -> tuple[FactRecord, ...]:
        """See all that is on record now, and return the moves; its bags are not counted again."""
        self._seen = self._record.newest()
        moves = tuple(self._record.moves())
        self._moves = tuple(move_of(one.fact) for one in moves)
        self._packed = together(self._record.packed(lots_after(moves, self._code).uses))
        return moves

    def _held(self, code: str) -> bool:
        lot = self.book.get(code)
        return lot is not None and lot.status is LotStatus.HELD

    def _is_mine(self, record: FactRecord) -> bool:
        return record.fact.kind is EntryKind.LOT_MOVE and line_of(record.fact) == self._code
