"""Bags by their numbers, found without reading all bags.

The numbers of bags have no index of their own, because each bag would pay for it. Their serials
have one, and rows are only ever added, so the rows between two serials of an epoch are the bags
between two numbers.
"""

from __future__ import annotations

from sqlalchemy import ColumnElement, Connection, and_, select

from station.core.pack import PackId
from station.store.tables import identity, pack


def rows_between(connection: Connection, epoch: int, first: int, last: int) -> ColumnElement[bool]:
    """The condition that holds for the bags with these numbers of an epoch, both included."""
    numbers = and_(pack.c.epoch == epoch, pack.c.number.between(first, last))
    owner = connection.execute(select(identity.c.site, identity.c.station)).one_or_none()
    if owner is None:
        return numbers
    ends = []
    for number in (first, last):
        serial = PackId(owner.site, owner.station, epoch, number).serial
        ends.append(
            connection.execute(
                select(pack.c.id).where(pack.c.serial == serial)
            ).scalar_one_or_none()
        )
    begin, end = ends
    if begin is None or end is None:
        return numbers  # the range reaches beyond the bags there are
    return and_(pack.c.id.between(begin, end), numbers)
