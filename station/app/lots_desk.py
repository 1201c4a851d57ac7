"""The desk of lots: makes the facts of moves, deliveries and holds."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from pathlib import Path

from station.config.packhouse import Packhouse
from station.core.dating import newest_day
from station.core.dispositions import Decided, Disposition, disposition_fact
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.line_lots import LotMove, Move, move_fact
from station.core.lot_set import LotUse
from station.core.lots import InputLot, LotError
from station.core.mass import Mass
from station.core.receiving import (
    Notes,
    delivery_fact,
    hold_lot_fact,
    receive,
    release_lot_fact,
)
from station.errors import BadInput
from station.line.lot_duty import LotDuty, LotRow
from station.line.opening import calendar_day
from station.line.ports import Clock
from station.reports.case_scan import notes_of_scan
from station.store.queries import trace_pack


class LotsDesk:
    """Implements station.screens.lots_source.LotsSource; any thread.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
        duty: knows the line and the lots there are.
    """

    def __init__(self, house: Packhouse, home: Path, clock: Clock, duty: LotDuty) -> None:
        self._house, self._home = house, home
        self._clock, self._duty = clock, duty

    def rows(self) -> tuple[LotRow, ...]:
        """The lots on the line with their balances."""
        return self._duty.rows()

    def lot(self, code: str) -> InputLot | None:
        """The lot of a code, or None."""
        return self._duty.book.get(code)

    @property
    def known(self) -> tuple[InputLot, ...]:
        """All lots there are, as they are now."""
        return tuple(self._lots.values())

    def name(self, component: str) -> str:
        """What people call a component."""
        if not component:
            return "out of bags"
        known = self._house.components.get(component)
        return component if known is None else known.name

    @property
    def components(self) -> tuple[tuple[str, str], ...]:
        """Code and name of each component."""
        return tuple((one.code, one.name) for one in self._house.components.values())

    @property
    def suppliers(self) -> tuple[str, ...]:
        """Everybody who ever delivered."""
        return tuple(sorted({lot.supplier for lot in self._lots.values()}))

    def moves(self, moves: Sequence[LotMove]) -> tuple[Fact, ...]:
        """The facts that keep moves made together."""
        line = self._house.settings.line
        kept = tuple(move_fact(move, self._new_id(), line) for move in moves)
        ends = (self._reworked(serial, move) for move in moves for serial in move.serials)
        return (*kept, *ends)

    def _reworked(self, serial: str, move: LotMove) -> Fact:
        """The end of a reject whose content went back on the line."""
        decided = Decided(
            serial,
            Disposition.REWORK,
            "back on the line",
            lots=move.members,
            use_by=move.use_by,
        )
        run = trace_pack(self._home, serial).run.uid
        return disposition_fact(decided, self._new_id(), run)

    def rework(self, serial: str, quantity: Mass | None) -> LotMove | None:
        """The move that puts the content of a bag back on the line, with all its lots."""
        try:
            bag = trace_pack(self._home, serial)
        except BadInput:
            return None
        draft = bag.record.draft
        return LotMove(
            Move.REWORK,
            draft.blend_lot,
            quantity=quantity or draft.weighing.net,
            members=tuple(LotUse(one.component, one.code) for one in bag.lots),
            use_by=draft.use_by,
            packed_at=draft.judged_at.utc,
            serials=(serial,),
        )

    def scanned(self, text: str) -> Notes:
        """What one scanned symbol of a case says."""
        symbol = (text[:3], text[3:]) if text.startswith("]") else ("", text)
        return notes_of_scan((symbol,), calendar_day(self._clock.now()), whole=False)

    def day(self, digits: str) -> date | None:
        """The newest day not after today of a day and month."""
        return newest_day(digits, calendar_day(self._clock.now()))

    def received(self, notes: Notes, hold: str) -> tuple[str, tuple[Fact, ...]]:
        """Lot code and facts of a delivery."""
        delivery = receive(
            notes,
            self._lots,
            tuple(self._house.components),
            self._house.settings.site,
            calendar_day(self._clock.now()),
        )
        code = delivery.lot.code
        held = (hold_lot_fact(self._new_id(), code, hold),) if hold else ()
        return code, (delivery_fact(delivery, self._new_id()), *held)

    def hold(self, lot: str, why: str) -> tuple[Fact, ...]:
        """The facts that hold a lot."""
        return (hold_lot_fact(self._new_id(), lot, why),)

    def release(self, lot: str, why: str) -> tuple[Fact, ...]:
        """The facts that take every open hold off a lot."""
        holds = self._duty.book.holds(lot)
        if not holds:
            raise LotError(f"lot {lot}: no person holds it; lots.toml says what it is")
        return tuple(release_lot_fact(self._new_id(), lot, one.fact.uid, why) for one in holds)

    @property
    def _lots(self) -> Mapping[str, InputLot]:
        return self._duty.book

    def _new_id(self) -> str:
        return new_uid(self._clock.now())
