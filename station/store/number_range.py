"""Bags by their numbers, their place in the journal or their time, without reading all bags.

Neither numbers of bags nor entries nor times have an index, because each bag would pay for it.
Their serials have one, and serials of one length stand in it in the order of their numbers. Rows
are only ever added, so they stand in the order of the journal and can be halved until an entry's
place is found.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from sqlalchemy import ColumnElement, Connection, and_, bindparam, func, or_, select

from station.core.clock_guard import Found
from station.core.journal import EntryKind
from station.core.pack import PackId
from station.store.columns import utc_text
from station.store.halving import first_past
from station.store.prepared import Prepared
from station.store.tables import fact, pack

_FIRST_FROM = Prepared(
    select(pack.c.id, pack.c.entry_id, pack.c.judged_at)
    .where(pack.c.id >= bindparam("row"))
    .order_by(pack.c.id)
)  # only the first row is taken, and SQLite reads no further


_BENT = timedelta(minutes=1)
"""Far more than a time service moves a clock without a step that is noted."""
_LATE = 64
"""Far more bags than are judged between a step of the clock and its finding."""


def rows_between(connection: Connection, epoch: int, first: int, last: int) -> ColumnElement[bool]:
    """The condition that holds for the bags with these numbers of an epoch, both included.

    Numbers that no bag has cost nothing; neither does an epoch of another station.
    """
    # All bags of a record are of one station; a replayed record has bags and no identity.
    newest = select(pack.c.serial).where(pack.c.id == select(func.max(pack.c.id)).scalar_subquery())
    station = (connection.execute(newest).scalar_one_or_none() or "").partition("-")[0]
    its = and_(pack.c.epoch == epoch, pack.c.number.between(first, last))

    def serial(number: int) -> str:
        return PackId("", station, epoch, number).serial

    spans = []
    while first <= last:
        head = serial(first)
        longest = int("9" * len(head.rpartition("-")[2]))  # the last number of as many digits
        end = min(last, longest)
        spans.append(and_(pack.c.serial.between(head, serial(end)), its))
        first = end + 1
    return or_(*spans)


def rows_after(connection: Connection, entry: int) -> ColumnElement[bool]:
    """The condition that holds for the bags recorded after an entry, by its row in the journal."""
    return pack.c.id >= _first_after(connection, entry)


def bags_after(connection: Connection, entry: int) -> int:
    """How many bags were recorded after an entry, by its row in the journal: rows have no gaps."""
    return _end(connection) - max(_first_after(connection, entry), 1)


def rows_judged(
    connection: Connection, after: datetime, until: datetime
) -> tuple[ColumnElement[bool], ...]:
    """The conditions one of which holds for a bag judged after one moment and not after another.

    Bags stand in the order of their times wherever the clock ran, so time too is halved: between
    any two findings that the clock stepped or that the station started with a clock that was
    behind. A finding is recorded up to a second after the step, so the bags just before it are
    looked at one by one. What a time service does without a finding lies within ``_BENT``.

    Args:
        connection: to the record.
        after: aware time.
        until: aware time.

    Returns:
        One for each stretch of rows with such a bag, in the order of rows. They are asked one by
        one: of several joined by OR, SQLite reads the whole table.
    """
    steps = select(fact.c.entry_id).where(
        fact.c.kind == EntryKind.CLOCK, fact.c.result.in_((Found.STEPPED, Found.BACK_DATED))
    )
    cuts = {_first_after(connection, entry) for entry in connection.execute(steps).scalars()}
    within = and_(pack.c.judged_at > after, pack.c.judged_at <= until)
    spans = []
    first = 1
    for cut in sorted({*cuts, _end(connection)}):
        tail = max(first, cut - _LATE if cut in cuts else cut)
        low = _first_judged(connection, first, tail, after - _BENT)
        high = _first_judged(connection, low, tail, until + _BENT)
        spans += [(low, high), (tail, cut)]
        first = cut
    chosen = [and_(pack.c.id >= low, pack.c.id < high, within) for low, high in spans if low < high]
    return tuple(
        one for one in chosen if connection.execute(select(pack.c.id).where(one).limit(1)).first()
    )


def _end(connection: Connection) -> int:
    """The row behind the last one."""
    return (connection.execute(select(func.max(pack.c.id))).scalar_one() or 0) + 1


def _first_after(connection: Connection, entry: int) -> int:
    """The first row of a bag recorded after an entry, or the one behind the last."""

    def look(row: int) -> tuple[int, bool] | None:
        found = _FIRST_FROM.execute(connection, {"row": row}).fetchone()
        return None if found is None else (found[0], found[1] > entry)

    return first_past(0, _end(connection), look)


def _first_judged(connection: Connection, first: int, end: int, after: datetime) -> int:
    """The first row from one up to another, of rows in the order of time, after a moment."""
    text = utc_text(after)

    def look(row: int) -> tuple[int, bool] | None:
        found = _FIRST_FROM.execute(connection, {"row": row}).fetchone()
        return None if found is None else (found[0], found[2] > text)

    return first_past(first - 1, end, look)
