"""Holds nobody released yet, with the bags they keep."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from sqlalchemy import func, select

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
        bags: numbers its ranges cover.
    """

    uid: str
    subject: str
    who: str
    at: datetime
    bags: int


def open_holds(home: Path) -> tuple[OpenHold, ...]:
    """Return the open holds, oldest first."""
    bags = func.sum(hold_range.c.last - hold_range.c.first + 1)
    statement = (
        select(fact.c.uid, fact.c.subject, fact.c.who, fact.c.at, bags.label("bags"))
        .join(hold_range, hold_range.c.hold == fact.c.uid)
        .where(hold_range.c.released == 0)
        .group_by(fact.c.id)
        .order_by(fact.c.id)
    )
    with reading(home) as connection:
        return tuple(OpenHold(*row) for row in connection.execute(statement))


def held_bags(home: Path, hold: str) -> tuple[tuple[str, str], ...]:
    """Return serial and run of each bag that an open hold keeps, in the order they were weighed."""
    with reading(home) as connection:
        ranges = connection.execute(
            select(hold_range).where(hold_range.c.hold == hold, hold_range.c.released == 0)
        ).all()
        bags = (
            select(pack.c.serial, run.c.uid)
            .select_from(pack)
            .join(blend, OF_BLEND)
            .join(run, blend.c.run_id == run.c.id)
            .where(pack.c.quality == Quality.HELD)
            .order_by(pack.c.id)
        )
        found = [
            row
            for one in ranges
            for row in connection.execute(
                bags.where(rows_between(connection, one.epoch, one.first, one.last))
            )
        ]
    return tuple((row.serial, row.uid) for row in found)
