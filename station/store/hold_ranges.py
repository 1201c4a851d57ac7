"""Held bags: ranges of bag numbers, laid on and taken off, and what that makes of each bag.

A good bag that a hold covers is *held*; once no open hold covers it any more it is *released*.
A reject stays what it is: its own disposition decides.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from sqlalchemy import Connection, and_, exists, insert, select, update

from station.core.journal import Entry
from station.core.pack import FREE, Quality
from station.store.number_range import rows_between
from station.store.tables import hold_range, pack

_Body = Mapping[str, Any]


class UnknownFact(Exception):
    """An entry refers to something that no entry before it recorded; the message names it."""


COVERS = and_(
    hold_range.c.released == 0,
    hold_range.c.epoch == pack.c.epoch,
    hold_range.c.first <= pack.c.number,
    hold_range.c.last >= pack.c.number,
)
"""A range of an open hold covers a bag."""


class HoldRanges:
    """Applies holds and releases on the writer's connection, inside its transactions."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection

    def hold(self, entry: Entry) -> None:
        """Hold the ranges ``details.ranges``: lists of epoch (as text), first and last number."""
        body: _Body = entry.body
        for epoch, first, last in body["details"]["ranges"]:
            values = {"epoch": int(epoch), "first": first, "last": last}
            self._connection.execute(
                insert(hold_range).values(hold=body["uid"], released=0, **values)
            )
            self._connection.execute(
                update(pack)
                .where(rows_between(self._connection, int(epoch), first, last))
                .where(pack.c.quality.in_(FREE))
                .values(quality=Quality.HELD)
            )

    def is_open(self, hold: str) -> bool:
        """Whether a hold still covers bags."""
        found = select(hold_range.c.id).where(hold_range.c.hold == hold, hold_range.c.released == 0)
        return self._connection.execute(found.limit(1)).first() is not None

    def release(self, entry: Entry) -> None:
        """Take off the hold ``details.hold``; bags no other open hold covers are released.

        Raises:
            UnknownFact: there is no such hold, or it was released before.
        """
        body: _Body = entry.body
        uid = body["details"]["hold"]
        mine = (hold_range.c.hold == uid) & (hold_range.c.released == 0)
        ranges = self._connection.execute(select(hold_range).where(mine)).all()
        if not ranges:
            raise UnknownFact(f"hold {uid} is not open in the record")
        self._connection.execute(update(hold_range).where(mine).values(released=1))
        covered = exists().where(COVERS)
        for one in ranges:
            self._connection.execute(
                update(pack)
                .where(rows_between(self._connection, one.epoch, one.first, one.last))
                .where(pack.c.quality == Quality.HELD, ~covered)
                .values(quality=Quality.RELEASED)
            )
