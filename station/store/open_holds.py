"""Holds nobody released yet, with the bags they keep."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Row, Select, func, select

from station.core.pack import Quality
from station.store.engine import reading
from station.store.number_range import rows_between
from station.store.tables import OF_BLEND, blend, fact, hold_range, pack, run


@dataclass(frozen=True, slots=True)
class OpenHold:
    """One open hold.

    Args:
        uid: of its fact.
        subject: what it is about.
        who: laid it on.
        at: when.
        bags: held ones that its ranges cover; rejects among them it does not keep.
    """

    uid: str
    subject: str
    who: str
    at: datetime
    bags: int


def open_holds(home: Path) -> tuple[OpenHold, ...]:
    """Return the open holds, oldest first."""
    still = select(hold_range.c.hold).where(hold_range.c.released == 0)
    statement = (
        select(fact.c.uid, fact.c.subject, fact.c.who, fact.c.at)
        .where(fact.c.uid.in_(still))
        .order_by(fact.c.id)
    )
    count = select(func.count()).select_from(pack)
    with reading(home) as connection:
        return tuple(
            OpenHold(*row, bags=sum(found[0] for found in _kept(connection, row.uid, count)))
            for row in connection.execute(statement).all()
        )


def held_bags(home: Path, hold: str) -> tuple[tuple[str, str], ...]:
    """Return serial and run of each bag that an open hold keeps, in the order they were weighed."""
    bags = (
        select(pack.c.serial, run.c.uid)
        .select_from(pack)
        .join(blend, OF_BLEND)
        .join(run, blend.c.run_id == run.c.id)
        .order_by(pack.c.id)
    )
    with reading(home) as connection:
        return tuple((row.serial, row.uid) for row in _kept(connection, hold, bags))


def ranges_of(connection: Connection, hold: str) -> Sequence[Row[Any]]:
    """Return the ranges of a hold that are open."""
    its = select(hold_range).where(hold_range.c.hold == hold, hold_range.c.released == 0)
    return connection.execute(its).all()


def kept_in(
    connection: Connection, ranges: Iterable[Row[Any]], asked: Select[Any]
) -> Iterator[Row[Any]]:
    """Ask about the bags that a hold keeps, by its ranges, one after the other."""
    for one in ranges:
        its = rows_between(connection, one.epoch, one.first, one.last)
        yield from connection.execute(asked.where(its, pack.c.quality == Quality.HELD))


def _kept(connection: Connection, hold: str, asked: Select[Any]) -> Iterator[Row[Any]]:
    return kept_in(connection, ranges_of(connection, hold), asked)
