"""The inbox of QA: everything open in the record, the gravest first."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path

from sqlalchemy import func, select

from station.core.checks.qa import FAILED, qa_check_of
from station.core.checks.scale import check_of, held_true
from station.core.dating import MIDNIGHT, production_day
from station.core.day_review import DayReview
from station.core.facts import FactRecord
from station.core.holds import reason_of
from station.core.inbox_items import Grave, Item, Where
from station.core.journal import EntryKind
from station.core.long_work import steps
from station.core.pack import Quality
from station.store.engine import reading
from station.store.facts import fact_named, facts, read_facts
from station.store.label_doubts import open_labels
from station.store.label_rolls import roll_accounts
from station.store.ledger import bin_states
from station.store.open_holds import open_holds
from station.store.queries import local_time
from station.store.standing import standing_facts
from station.store.suspects import undecided_windows
from station.store.tables import OF_BLEND, REJECTED, blend, fact, journal, pack

DAYS_BACK = 14
"""Rejects and unsigned days of so many production days are looked for."""
_ROLLS = 40
_CHECKS = 1000
"""So many of the newest checks are looked at; a failure before them was passed over."""
_NEWEST = (
    select(fact.c.id, fact.c.kind, fact.c.subject)
    .where(fact.c.kind.in_((EntryKind.SCALE_CHECK, EntryKind.QA_CHECK)))
    .order_by(fact.c.id.desc())
    .limit(_CHECKS)
    .subquery()
)
_LAST_CHECKS = (
    select(journal.c.canonical)
    .join(fact, fact.c.entry_id == journal.c.id)
    .where(
        fact.c.id.in_(select(func.max(_NEWEST.c.id)).group_by(_NEWEST.c.kind, _NEWEST.c.subject))
    )
    .order_by(fact.c.id.desc())
)
"""The newest check of each kind and subject; no other is read."""


def inbox(home: Path, today: date, cut_off: time = MIDNIGHT) -> tuple[Item, ...]:
    """Return what is open, gravest first, then oldest first.

    Args:
        home: folder of the record.
        today: the production day that goes on; it needs no signature yet.
        cut_off: when the day changes at the plant.
    """
    asked: tuple[Iterator[Item], ...] = (
        *(_windows(home), _checks(home), _scans(home), _labels(home)),
        *(_holds(home), _rolls(home), _days(home, today), _clock(home, today, cut_off)),
    )
    found = [item for items in steps(asked, len(asked)) for item in items]
    return tuple(
        sorted(
            found, key=lambda item: (item.grave, item.at is None, item.at and item.at.isoformat())
        )
    )


def day_counts(home: Path, day: date) -> tuple[int, int]:
    """Bags and rejects of a production day."""
    statement = (
        select(func.count(), func.coalesce(func.sum(pack.c.rejected), 0))
        .select_from(pack)
        .join(blend, OF_BLEND)
        .where(blend.c.production_day == day)
    )
    with reading(home) as connection:
        row = connection.execute(statement).one()
    return row[0], row[1]


def review_of_day(home: Path, day: date, items: Sequence[Item], story: Sequence[Item]) -> DayReview:
    """What QA signs for a day: everything open that is not about another day, and its story.

    Args:
        home: folder of the record.
        day: the production day.
        items: what is open, from :func:`inbox`.
        story: exceptions of the day, settled or not.
    """
    packs, rejects = day_counts(home, day)
    named = day.isoformat()
    mine = (
        item.words
        for item in items
        if not (item.where is Where.REJECTS and item.key != named) and item.where is not Where.DAY
    )
    return DayReview(day, tuple(mine), "", packs, rejects, tuple(item.words for item in story))


def signed_days(home: Path, since: date | None = None) -> dict[date, FactRecord]:
    """The days that were reviewed, each with its last review.

    Args:
        home: folder of the record.
        since: days from this one on; None for all.
    """
    # A day is reviewed once it has begun, in whatever zone.
    begun = None if since is None else _midnight(since - timedelta(days=1))
    reviews = facts(home, (EntryKind.REVIEW,), since=begun)
    return {date.fromisoformat(one.fact.subject): one for one in reviews}


def _windows(home: Path) -> Iterator[Item]:
    for window in undecided_windows(home):
        words = f"Suspect window of {window.scale}: {window.bags} bags are held"
        where = Where.HOLDS if window.cause else Where.SCALE
        yield Item(Grave.STOP, words, where, window.closed, window.uid)


def _checks(home: Path) -> Iterator[Item]:
    with reading(home) as connection:
        last = read_facts(connection, _LAST_CHECKS)
    for record in last:
        kind, subject = record.fact.kind, record.fact.subject
        if kind is EntryKind.SCALE_CHECK and not held_true(check_of(record)):
            words = f"Scale {subject} failed its last check"
            yield Item(Grave.STOP, words, Where.SCALE, record.at.utc, record.fact.uid)
        elif kind is EntryKind.QA_CHECK and record.fact.result == FAILED:
            found = qa_check_of(record)
            figure = "" if found.value is None else f": {found.words}"
            words = f"{subject} failed its last check{figure}"
            yield Item(Grave.STOP, _capital(words), Where.CHECKS, record.at.utc, record.fact.uid)


def _scans(home: Path) -> Iterator[Item]:
    for one in standing_facts(home, EntryKind.SCAN_BACK):
        words = f"The scan of label {one.fact.subject} does not match"
        yield Item(Grave.STOP, words, Where.LABELS, one.at.utc, one.fact.subject)


def _labels(home: Path) -> Iterator[Item]:
    for label in open_labels(home):
        words = f"Label {label.serial} is in doubt: {label.why}"
        yield Item(Grave.ATTEND, words, Where.LABELS, label.judged_at, label.serial)


def _holds(home: Path) -> Iterator[Item]:
    windows = {uid for window in undecided_windows(home) for uid in window.holds}
    for hold in open_holds(home):
        if hold.uid not in windows:
            record = fact_named(home, hold.uid)
            why = hold.subject if record is None else reason_of(record)
            words = f"{hold.bags} bags are held: {_shorter(why)}"
            yield Item(Grave.ATTEND, words, Where.HOLDS, hold.at, hold.uid)


def _rolls(home: Path) -> Iterator[Item]:
    for account in roll_accounts(home, _ROLLS):
        if account.open:
            words = f"Label roll {account.roll}: a difference of {account.difference} is open"
            yield Item(Grave.ATTEND, words, Where.LABELS, account.put_in.at.utc, account.roll)


def _days(home: Path, today: date) -> Iterator[Item]:
    since = today - timedelta(days=DAYS_BACK)
    signed = signed_days(home, since)
    packed = select(blend.c.production_day).where(blend.c.production_day >= since).distinct()
    with reading(home) as connection:
        days = sorted(connection.execute(packed).scalars())
        # The days by name: of a span, SQLite may go through the rejects of all days.
        undecided = (
            select(blend.c.production_day, func.count())
            .select_from(blend)
            .join(pack, OF_BLEND)
            .where(blend.c.production_day.in_(days), REJECTED, pack.c.quality == Quality.REJECT)
            .group_by(blend.c.production_day)
        )
        rejects = connection.execute(undecided).all()
    for day, count in rejects:
        words = f"{count} rejects of {day} wait for a decision"
        yield Item(Grave.ATTEND, words, Where.REJECTS, None, day.isoformat())
    open_days = [day for day in days if day < today and day not in signed]
    for day, state in bin_states(home, open_days).items():
        if state.expected and state.counted is None:
            words = f"The reject bin of {day} was not counted"
            yield Item(Grave.TELL, words, Where.REJECTS, None, day.isoformat())
        words = f"{day} is not reviewed and signed"
        yield Item(Grave.TELL, words, Where.DAY, None, day.isoformat())


def _clock(home: Path, today: date, cut_off: time) -> Iterator[Item]:
    since = today - timedelta(days=DAYS_BACK)
    signed = signed_days(home, since)
    for record in facts(home, (EntryKind.CLOCK,), since=_midnight(since)):
        day = production_day(local_time(record.at.utc, record.at.offset_minutes), cut_off)
        if day not in signed:
            words = f"The clock: {record.fact.subject}, {record.fact.result}"
            yield Item(Grave.ATTEND, words, Where.DAY, record.at.utc, day.isoformat())


def _midnight(day: date) -> datetime:
    return datetime.combine(day, time(), UTC)


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _shorter(words: str, most: int = 40) -> str:
    return words if len(words) <= most else f"{words[: most - 1]}…"
