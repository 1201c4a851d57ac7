"""Bags summed where they lie: how many of each kind in each hour, and the exact sum of their net.

One pass over the bags of the days asked for, grouped in the database, so that a week of many bags
is a few hundred rows here.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path

from sqlalchemy import Text, cast, func, select

from station.core.pack import LabelState, Quality
from station.store.engine import reading
from station.store.queries import local_time
from station.store.tables import OF_BLEND, blend, pack, run


@dataclass(frozen=True, slots=True)
class BagSum:
    """Bags that are alike.

    Args:
        run: id of their run.
        day: their production day.
        hour: full hour of the plant's clock in which they were judged, without an offset.
        operator: id of the person at the scale.
        quality: what they are worth now.
        label: how far their label has come.
        reason: why they were set aside; empty for all others.
        bags: how many.
        micrograms: exact sum of their net.
    """

    run: str
    day: date
    hour: datetime
    operator: str
    quality: Quality
    label: LabelState
    reason: str
    bags: int
    micrograms: int


@dataclass(frozen=True, slots=True)
class RunSpan:
    """When a run with bags was packed.

    Args:
        run: its id.
        opened: when it was started, in UTC.
        closed: when it was ended, in UTC; None while it is open.
        began: its first bag, in the plant's time.
        ended: its last one, in the plant's time.
    """

    run: str
    opened: datetime
    closed: datetime | None
    began: datetime
    ended: datetime

    @property
    def open(self) -> bool:
        """Bags are still packed."""
        return self.closed is None


def bag_sums(home: Path, first: date, last: date) -> tuple[BagSum, ...]:
    """Return the bags of production days, summed, in the order of their runs.

    Args:
        home: folder of the record.
        first: first production day.
        last: last one, counted in.
    """
    offset = cast(pack.c.offset_minutes, Text) + " minutes"
    hour = func.strftime("%Y-%m-%dT%H:00:00", pack.c.judged_at, offset)
    columns = (
        run.c.uid,
        blend.c.production_day,
        hour.label("hour"),
        pack.c.operator,
        pack.c.quality,
        pack.c.label,
        pack.c.reason,
    )
    statement = (
        select(*columns, func.count(), func.sum(pack.c.net_ug))
        .select_from(pack)
        .join(blend, OF_BLEND)
        .join(run, blend.c.run_id == run.c.id)
        .where(blend.c.production_day >= first, blend.c.production_day <= last)
        .group_by(run.c.id, *columns[1:])
        .order_by(run.c.id, "hour")
    )
    with reading(home) as connection:
        rows = connection.execute(statement).all()
    return tuple(
        BagSum(uid, day, datetime.fromisoformat(at), *rest) for uid, day, at, *rest in rows
    )


def run_spans(home: Path, runs: Collection[str]) -> tuple[RunSpan, ...]:
    """Return when runs with bags were packed, in the order they were started."""
    newest = select(func.max(pack.c.id)).scalar_subquery()
    first, last = func.min(blend.c.first_bag), func.max(func.min(blend.c.last_bag, newest))
    ends = (
        select(blend.c.run_id, first.label("first"), last.label("last"))
        .where(blend.c.run_id.in_(select(run.c.id).where(run.c.uid.in_(tuple(runs)))))
        .group_by(blend.c.run_id)
        .subquery()
    )
    begin, end = pack.alias("begin"), pack.alias("end")
    statement = (
        select(
            run.c.uid,
            run.c.started_at,
            run.c.ended_at,
            begin.c.judged_at,
            begin.c.offset_minutes,
            end.c.judged_at,
            end.c.offset_minutes,
        )
        .join(ends, ends.c.run_id == run.c.id)
        .join(begin, begin.c.id == ends.c.first)
        .join(end, end.c.id == ends.c.last)
        .where(run.c.uid.in_(tuple(runs)))
        .order_by(run.c.id)
    )
    with reading(home) as connection:
        rows = connection.execute(statement).all()
    return tuple(
        RunSpan(uid, opened, closed, local_time(began, one), local_time(ended, other))
        for uid, opened, closed, began, one, ended, other in rows
    )


def production_days(home: Path) -> tuple[date, ...]:
    """Return every production day on record, oldest first."""
    with reading(home) as connection:
        found = connection.execute(
            select(blend.c.production_day).distinct().order_by(blend.c.production_day)
        )
        return tuple(found.scalars())
