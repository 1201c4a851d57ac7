"""The desk of rejects: the day's ledger, decisions about its bags, and the count of the bin."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from itertools import groupby
from pathlib import Path

from labels.reject import CODE_PREFIX
from station.app.quality_rights import DECIDERS, check_role
from station.config.packhouse import Packhouse
from station.core.dispositions import (
    BinCount,
    Decided,
    Disposition,
    DispositionError,
    bin_fact,
    check_decision,
    disposition_fact,
)
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.line_lots import LotMove, Move, move_fact
from station.core.lot_set import LotUse
from station.core.reject_ledger import BinState, LedgerRow
from station.core.shifts import shift_of
from station.line.opening import day_of
from station.line.ports import Clock
from station.reports.serial_scan import serial_of
from station.store.ledger import bin_state, ledger, ledger_and_bin
from station.store.purged import gone_between, purge_words
from station.store.queries import trace_pack
from station.store.stands_for import check_into

_TICKET = f"90{CODE_PREFIX}"


class RejectsDesk:
    """Implements station.screens.quality_sources.RejectsSource; any thread.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
    """

    def __init__(self, house: Packhouse, home: Path, clock: Clock) -> None:
        self._house, self._home, self._clock = house, home, clock

    @property
    def today(self) -> date:
        """The production day that goes on."""
        return day_of(self._clock.now(), self._house.settings.cut_off)

    @property
    def witnessed(self) -> frozenset[Disposition]:
        """Dispositions that want a second person."""
        return self._house.settings.quality.witnessed

    def shift(self, row: LedgerRow) -> str:
        """The shift a reject was weighed in."""
        return shift_of(row.at, self._house.settings.quality.shifts)

    def rows(self, day: date) -> tuple[LedgerRow, ...]:
        """The rejects of a production day; reads the record."""
        return ledger(self._home, day)

    def day_seen(self, day: date) -> tuple[tuple[LedgerRow, ...], BinState]:
        """The rejects of a production day, and what lies in its bin; reads the record once."""
        return ledger_and_bin(self._home, day)

    def gone(self, day: date) -> str:
        """What was purged of a production day, in words; reads the record."""
        return purge_words(gone_between(self._home, day, day))

    def serial(self, text: str) -> str:
        """The serial of a scanned ticket or label, or of one typed."""
        given = text.strip()
        at = given.find(_TICKET)
        return given[at + len(_TICKET) :] if at in (0, 3) else serial_of(given)

    def day_of_bag(self, serial: str) -> date:
        """The production day of a bag.

        Raises:
            BadInput: no such serial.
        """
        return trace_pack(self._home, serial).record.draft.production_day

    def decide(
        self,
        rows: Sequence[LedgerRow],
        disposition: Disposition,
        who: str,
        reason: str,
        witness: str = "",
        into: str = "",
    ) -> tuple[Fact, ...]:
        """The facts that keep a decision about some rejects, made together.

        A reject that was decided before is corrected.

        Args:
            rows: the rejects; one alone where a new bag stands for it.
            disposition: how they end.
            who: id of who decides.
            reason: why.
            witness: id of the second person.
            into: serial of the bag that stands for the one reject.

        Raises:
            ValueError: it cannot be; the message says why.
        """
        check_role(self._house.people, who, DECIDERS, "decide about rejects")
        if witness and witness not in self._house.people:
            raise DispositionError(f"{witness!r} is nobody in people.toml")
        if not rows:
            raise DispositionError("touch the rejects it is about first")
        if into and len(rows) != 1:
            raise DispositionError("one new bag stands for one reject: touch one alone")
        if into:
            check_into(self._home, rows[0], into)
        rework = disposition is Disposition.REWORK
        lots = _union(rows) if rework else ()
        use_by = min(row.use_by for row in rows) if rework else None
        made = []
        for row in rows:
            corrects = "" if row.decision is None else row.decision.uid
            decided = Decided(
                row.serial, disposition, reason, witness, into, corrects, lots, use_by
            )
            check_decision(decided, who, self.witnessed)
            made.append(disposition_fact(decided, self._uid(), row.run))
        return (*self._moves(rows), *made) if rework else tuple(made)

    def count(self, day: date, counted: int, explanation: str, who: str) -> Fact:
        """The fact that keeps a count of the bin.

        Raises:
            ValueError: a difference has no explanation, or the person may not count.
        """
        check_role(self._house.people, who, DECIDERS, "count the reject bin")
        return bin_fact(
            BinCount(day, counted, bin_state(self._home, day).expected, explanation), self._uid()
        )

    def _moves(self, rows: Sequence[LedgerRow]) -> list[Fact]:
        """What is reworked goes back on the line, blend by blend, each with its whole union."""
        moves = []
        line = self._house.settings.line
        for code, its in groupby(sorted(rows, key=_blend), key=_blend):
            bags = list(its)
            total = bags[0].net
            for bag in bags[1:]:
                total += bag.net
            move = LotMove(
                Move.REWORK,
                code,
                quantity=total,
                members=_union(bags),
                use_by=min(bag.use_by for bag in bags),
                packed_at=min(bag.at for bag in bags),
                serials=tuple(bag.serial for bag in bags),
            )
            moves.append(move_fact(move, self._uid(), line))
        return moves

    def _uid(self) -> str:
        return new_uid(self._clock.now())


def _blend(row: LedgerRow) -> str:
    return row.blend_lot


def _union(rows: Sequence[LedgerRow]) -> tuple[LotUse, ...]:
    return tuple(sorted({use for row in rows for use in row.lots}))
