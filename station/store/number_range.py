"""Bags by their numbers or their place in the journal, found without reading all bags.

Neither the numbers of bags nor their entries have an index, because each bag would pay for it.
Their serials have one, and serials of one length stand in it in the order of their numbers. Rows
are only ever added, so they stand in the order of the journal and can be halved until an entry's
place is found.
"""

from __future__ import annotations

from sqlalchemy import ColumnElement, Connection, and_, bindparam, func, or_, select

from station.core.pack import PackId
from station.store.prepared import Prepared
from station.store.tables import pack

_FIRST_FROM = Prepared(
    select(pack.c.id, pack.c.entry_id).where(pack.c.id >= bindparam("row")).order_by(pack.c.id)
)  # only the first row is taken, and SQLite reads no further


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
    low, high = 0, (connection.execute(select(func.max(pack.c.id))).scalar_one() or 0) + 1
    while high - low > 1:  # a bag in a row up to low is not after the entry, one from high on is
        middle = (low + high) // 2
        found = _FIRST_FROM.execute(connection, {"row": middle}).fetchone()
        if found is None or found[1] > entry:
            high = middle
        else:
            low = found[0]
    return pack.c.id >= high
