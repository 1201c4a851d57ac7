"""Holds nobody released yet, with the bags they keep."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from sqlalchemy import func, select

from station.store.engine import reading
from station.store.tables import fact, hold_range


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
