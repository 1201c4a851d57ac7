"""The input lots of one station: book, duty, changes and desk, primed from the record."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from functools import partial
from pathlib import Path

from station.app.lots_desk import LotsDesk
from station.config.packhouse import Packhouse
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.run import Run
from station.line.lot_book import LotBook
from station.line.lot_change import LotChanges
from station.line.lot_duty import LotDuty
from station.line.opening import calendar_day
from station.line.ports import Clock
from station.store.line_past import LinePast
from station.store.lot_reach import bags_with
from station.store.lot_shelf import lot_on_record, lots_on_the_shelf
from station.store.standing import standing_facts


@dataclass(frozen=True, slots=True)
class LotGates:
    """What a station needs of its lots."""

    book: LotBook
    duty: LotDuty
    changes: LotChanges
    desk: LotsDesk


def lot_gates(
    house: Packhouse,
    home: Path,
    clock: Clock,
    rehearse: Callable[[Run], None],
    next_number: Callable[[str, date], int],
) -> LotGates:
    """Read the record and return the lots as it left them.

    Args:
        house: the settings; its lots are in the record already.
        home: folder of the record.
        clock: tells the time.
        rehearse: draws and reads back a label of a changed run.
        next_number: number of the next blend lot of a line and production day.
    """
    settings = house.settings
    line, lots = settings.line, settings.lots
    today = calendar_day(clock.now())
    book = LotBook(
        lots_on_the_shelf(home, today, house.lots, house.components.values()),
        standing_facts(home, EntryKind.HOLD),
        partial(lot_on_record, home),
        house.lots.values(),
    )
    duty = LotDuty(
        line,
        book,
        LinePast(home, line),
        lots.water,
        lots.on and settings.checks.clearance,
        lots.long_overlap,
    )
    changes = LotChanges(
        line=line,
        on_line=duty,
        lots=book,
        rules=lots.rules,
        rehearse=rehearse,
        next_number=next_number,
        bags_with=lambda code: bags_with(home, code),
        new_id=new_uid,
    )
    return LotGates(book, duty, changes, LotsDesk(house, home, clock, duty))
