"""What happened on a production day beside bags that were well: exceptions, settled or not."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, timedelta
from pathlib import Path

from sqlalchemy import func, select

from station.core.checks.qa import FAILED, qa_check_of
from station.core.checks.scale import check_of, held_true
from station.core.checks.suspect import decided_window, window_of
from station.core.checks.tare import FITS
from station.core.facts import FactRecord
from station.core.holds import reason_of, scope_of
from station.core.inbox_items import Grave, Item, Where
from station.core.journal import EntryKind
from station.store.columns import UtcDateTime
from station.store.engine import reading
from station.store.facts import facts
from station.store.tables import OF_BLEND, blend, pack

_KINDS = (
    EntryKind.SCALE_CHECK,
    EntryKind.QA_CHECK,
    EntryKind.EMPTY_BAG,
    EntryKind.SCAN_BACK,
    EntryKind.SUSPECT,
    EntryKind.HOLD,
    EntryKind.RELEASE,
    EntryKind.REPRINT,
    EntryKind.PAUSE,
    EntryKind.CLOCK,
    EntryKind.BIN_COUNT,
)
_STEP = timedelta(seconds=2)
"""Bags are recorded in order; a time that goes back by more is a clock that was set."""


def day_story(home: Path, day: date, since: datetime, until: datetime) -> tuple[Item, ...]:
    """Return the exceptions of a production day, oldest first.

    Args:
        home: folder of the record.
        day: the production day.
        since: its beginning, aware.
        until: its end, aware.
    """
    records = facts(home, _KINDS, since=since, until=until)
    found = [item for record in records for item in _of(record)]
    found += _clock_steps(home, day)
    return tuple(sorted(found, key=lambda item: item.at.isoformat() if item.at else ""))


def _of(record: FactRecord) -> Iterator[Item]:
    fact = record.fact
    words, grave, where = "", Grave.ATTEND, Where.CHECKS
    match fact.kind:
        case EntryKind.SCALE_CHECK if not held_true(check_of(record)):
            words, grave, where = f"Scale {fact.subject} failed its check", Grave.STOP, Where.SCALE
        case EntryKind.QA_CHECK if fact.result == FAILED:
            made = qa_check_of(record)
            words, grave = f"{fact.subject} failed ({made.words}): {made.action}", Grave.STOP
        case EntryKind.EMPTY_BAG if fact.result != FITS:
            words, where = f"An empty bag {fact.subject} {fact.result}", Where.SCALE
        case EntryKind.SCAN_BACK if fact.result != "equal":
            words, where = f"Scan of label {fact.subject}: {fact.result}", Where.LABELS
        case EntryKind.SUSPECT:
            words, where = _suspect(record), Where.HOLDS
        case EntryKind.HOLD:
            words, where = f"Held by {scope_of(record)}: {reason_of(record)}", Where.HOLDS
        case EntryKind.RELEASE:
            words, where = f"Released: {reason_of(record)}", Where.HOLDS
        case EntryKind.REPRINT:
            words, where = f"Label {fact.subject} was printed again as {fact.result}", Where.LABELS
        case EntryKind.PAUSE if fact.result == "stopped":
            words, where = f"The line stopped: {fact.details.get('reason', '')}", Where.DAY
        case EntryKind.CLOCK:
            words, where = f"The clock: {fact.subject}, {fact.result}", Where.DAY
        case EntryKind.BIN_COUNT if fact.result == "differs":
            words, where = f"The reject bin differs: {fact.details['explanation']}", Where.REJECTS
        case _:
            return
    yield Item(grave, f"{words[:1].upper()}{words[1:]}", where, record.at.utc, fact.uid)


def _suspect(record: FactRecord) -> str:
    if decided_window(record):
        return f"Suspect bags: {record.fact.result}, {reason_of(record)}"
    window = window_of(record)
    assert window is not None, "it decides nothing"
    return f"{window.bags} bags became suspect: {window.scale}"


def _clock_steps(home: Path, day: date) -> list[Item]:
    before = func.lag(pack.c.judged_at, type_=UtcDateTime).over(order_by=pack.c.id).label("before")
    row = (
        select(pack.c.serial, pack.c.judged_at, before)
        .select_from(pack)
        .join(blend, OF_BLEND)
        .where(blend.c.production_day == day)
        .subquery()
    )
    backwards = select(row).where(row.c.judged_at < row.c.before)
    with reading(home) as connection:
        found = connection.execute(backwards).all()
    return [
        Item(
            Grave.ATTEND,
            f"The clock went back {one.before - one.judged_at} before bag {one.serial}",
            Where.DAY,
            one.judged_at,
            day.isoformat(),
        )
        for one in found
        if one.before - one.judged_at > _STEP
    ]
