"""Lots on a line and in the cooler, for pictures and tests of their page."""

from dataclasses import replace
from datetime import UTC, date, datetime
from fractions import Fraction

from station.core.balance import Balance, Span
from station.core.dating import newest_day
from station.core.line_lots import LotMove, Move, move_fact
from station.core.lot_set import LotUse
from station.core.lots import InputLot, LotError, LotStatus
from station.core.mass import Mass
from station.core.receiving import Notes, delivery_fact, hold_lot_fact, receive, release_lot_fact
from station.line.lot_duty import LotRow
from station.reports.case_scan import notes_of_scan
from station.screens.offer import Person

BAG = "A1-7K-000131"
DAY = date(2026, 11, 25)
PEOPLE = (
    Person("P01", "Wren Calder", "lead"),
    Person("P02", "Io Marsh", "packer"),
    Person("Q01", "Tamsin Fen", "qa"),
)
NAMES = {"ROM": "romaine lettuce", "CAR": "carrot", "RAD": "radicchio", "CAB": "white cabbage"}


def lot(code, component, supplier="Aldermoor Growers", status=LotStatus.FREE):
    return InputLot(code, component, supplier, DAY, status=status)


LOTS = (
    lot("ROM-26325-A", "ROM"),
    lot("ROM-26327-B", "ROM"),
    lot("CAR-7710", "CAR", "Tarn Roots"),
    lot("RAD-0418", "RAD", "Quarry Farm"),
    lot("CAB-3301", "CAB", "Quarry Farm"),
    lot("ROM-HELD", "ROM", status=LotStatus.HELD),
)


def row(code, left, spread, loaded=120, **changes):
    """A lot with so many kilograms left, give or take."""
    component = code.split("-")[0]
    used = Span(
        *(Fraction(1000 * part) for part in (loaded - left - spread, loaded - left)),
        Fraction(1000 * (loaded - left + spread)),
    )
    made = LotRow(code, component, False, False, True, Balance(code, Fraction(1000 * loaded), used))
    return replace(made, **changes)


OVERLAP = (
    row("CAR-7710", 71, 4),
    row("ROM-26325-A", 3, 8, finishing=True),
    row("ROM-26327-B", 118, 6),
)
CROWDED = (
    *OVERLAP,
    row("RAD-0418", 22, 3, held=True),
    row("CAB-3301", -4, 2),
    replace(row("ROM-HELD", 0, 0, listed=False), balance=Balance("ROM-HELD", None, Span())),
)


class LotsSourceStub:
    """Makes facts as the desk does, of lots that stand still."""

    def __init__(self, rows=OVERLAP):
        self._rows, self._made = rows, 0
        self.lots = {one.code: one for one in LOTS}

    def rows(self):
        return self._rows

    def lot(self, code):
        return self.lots.get(code)

    def name(self, component):
        return NAMES.get(component, component)

    @property
    def components(self):
        return tuple(NAMES.items())

    @property
    def suppliers(self):
        return ("Aldermoor Growers", "Quarry Farm", "Tarn Roots")

    def moves(self, moves):
        return tuple(move_fact(move, self._uid(), "A") for move in moves)

    def rework(self, serial, quantity):
        if serial != BAG:
            return None
        return LotMove(
            Move.REWORK,
            "A2632901",
            quantity=quantity or Mass.parse("252 g"),
            members=(LotUse("ROM", "ROM-26325-A"),),
            use_by=date(2026, 12, 1),
            packed_at=datetime(2026, 11, 25, 9, tzinfo=UTC),
            serials=(serial,),
        )

    def scanned(self, text):
        return notes_of_scan((("", text),), DAY, whole=False)

    def day(self, digits):
        return newest_day(digits, DAY)

    def received(self, notes: Notes, hold: str):
        delivery = receive(notes, self.lots, tuple(NAMES), "QH", DAY)
        code = delivery.lot.code
        held = (hold_lot_fact(self._uid(), code, hold),) if hold else ()
        return code, (delivery_fact(delivery, self._uid()), *held)

    def hold(self, code, why):
        if not why:
            raise LotError("no reason")
        return (hold_lot_fact(self._uid(), code, why),)

    def release(self, code, why):
        return (release_lot_fact(self._uid(), code, "hold-1", why),)

    def _uid(self):
        self._made += 1
        return f"u{self._made}"
