"""The release list: holds and runs, each with what keeps it from being released, in words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any, TypeVar

from sqlalchemy import ColumnElement, Connection, Row, Select, and_, case, func, not_, select

from station.core.checks.qa import GOOD, REFERENCE, QaLimit
from station.core.checks.suspect import FiledWindow
from station.core.facts import FactRecord
from station.core.holds import Releasable, reason_of, released_run, scope_of
from station.core.journal import EntryKind
from station.core.long_work import step
from station.core.metrology.scale_check import CheckResult
from station.core.pack import IN_THE_BATCH, LabelState, Quality
from station.store.engine import reading
from station.store.facts import chosen, read_facts
from station.store.number_range import rows_between
from station.store.open_holds import kept_in, ranges_of
from station.store.suspects import undecided_windows
from station.store.tables import (
    LABEL_OPEN,
    OF_BLEND,
    REJECTED,
    blend,
    fact,
    hold_range,
    journal,
    pack,
    run,
)

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Wanted:
    """Checks that must follow the last bag before it may go.

    Args:
        plan: checks of QA, by product code.
        scale: whether the scale is checked.
    """

    plan: Mapping[str, Sequence[QaLimit]]
    scale: bool


def release_list(home: Path, wanted: Wanted, since: date, key: str = "") -> tuple[Releasable, ...]:
    """Return the open holds, then the runs since a production day that nobody released yet.

    Args:
        home: folder of the record.
        wanted: checks that must follow the last bag.
        since: runs of earlier days are not listed.
        key: only this hold or run; empty for all.
    """
    undecided = undecided_windows(home)
    with reading(home) as connection:
        listed = _runs_since(connection, since)
        released = _released(connection, listed)
        left = [row for row in listed if row.uid not in released and key in ("", row.uid)]
        ask = _Blockers(connection, wanted, undecided)
        packed = _packed(connection, [row.id for row in left])
        holds = [
            _hold(connection, ask, one)
            for one in _part(_open_holds(connection), 0, 50)
            if key in ("", one.fact.uid)
        ]
        runs = [
            _run(connection, ask, row, packed[row.id])
            for row in _part(left, 50, 100)
            if row.id in packed
        ]
    return (*holds, *runs)


def _part(rows: Sequence[T], first: int, last: int) -> Iterator[T]:
    """Give rows one by one, all of them a part of the whole list; bounds in percent."""
    for number, row in enumerate(rows):
        step(first + (last - first) * number / len(rows))
        yield row


class _Blockers:
    """Says why bags cannot go."""

    def __init__(
        self, connection: Connection, wanted: Wanted, undecided: Sequence[FiledWindow]
    ) -> None:
        self._connection, self._wanted, self._undecided = connection, wanted, undecided
        self._good: dict[str, int] = {}
        in_doubt = (
            select(blend.c.run_id, func.count())
            .select_from(pack)
            .join(blend, OF_BLEND)
            .where(LABEL_OPEN, pack.c.label == LabelState.IN_DOUBT)
            .group_by(blend.c.run_id)
        )
        self._in_doubt: dict[int, int] = {row[0]: row[1] for row in connection.execute(in_doubt)}

    def of(
        self, runs: Iterable[int], last_entry: int | None, but: Sequence[Row[Any]] = ()
    ) -> tuple[str, ...]:
        """Why the bags of some runs, up to an entry of the journal, cannot be released.

        Rejects under the ranges ``but`` do not count: they wait for this very release.
        """
        rows = self._connection.execute(
            select(run.c.id, run.c.uid, run.c.product, run.c.entry_id).where(
                run.c.id.in_(tuple(runs))
            )
        ).all()
        return (
            *self._windows([row.uid for row in rows]),
            *self._rejects([row.id for row in rows], but),
            *self._labels([row.id for row in rows]),
            *self._checks(rows, last_entry),
        )

    def _windows(self, uids: Sequence[str]) -> list[str]:
        found = [
            window for window in self._undecided if any(one.run in uids for one in window.runs)
        ]
        return [f"a suspect window of {one.scale} is open ({one.bags} bags)" for one in found]

    def _rejects(self, runs: Sequence[int], but: Sequence[Row[Any]]) -> list[str]:
        count = self._connection.execute(
            select(func.count())
            .select_from(pack)
            .join(blend, OF_BLEND)
            .where(blend.c.run_id.in_(runs), REJECTED, pack.c.quality == Quality.REJECT)
            .where(
                *(
                    not_(rows_between(self._connection, one.epoch, one.first, one.last))
                    for one in but
                )
            )
        ).scalar_one()
        return [f"{count} rejects are undecided"] if count else []

    def _labels(self, runs: Sequence[int]) -> list[str]:
        count = sum(self._in_doubt.get(one, 0) for one in runs)
        return [f"{count} labels are in doubt"] if count else []

    def _checks(self, rows: Sequence[Any], last_entry: int | None) -> list[str]:
        if last_entry is None:
            return []
        missing: dict[str, None] = {}
        for row in rows:
            for limit in self._wanted.plan.get(row.product, ()):
                once = limit.every is None or limit.kind is REFERENCE
                after = row.entry_id if once else last_entry
                good = and_(
                    fact.c.subject == str(limit.kind),
                    fact.c.kind == EntryKind.QA_CHECK,
                    fact.c.result == GOOD,
                )
                if self._newest(str(limit.kind), good) <= after:
                    where = "in the run" if once else "after the last bag"
                    missing[f"no good check of {limit.kind} {where}"] = None
        held_true = and_(
            fact.c.kind == EntryKind.SCALE_CHECK, fact.c.result != str(CheckResult.FAILED)
        )
        if self._wanted.scale and self._newest("", held_true) <= last_entry:
            missing["no good check of the scale after the last bag"] = None
        return list(missing)

    def _newest(self, kind: str, condition: ColumnElement[bool]) -> int:
        """Entry of the newest good check of a kind, empty for the scale; 0 without any."""
        if kind not in self._good:
            newest = select(fact.c.entry_id).where(condition).order_by(fact.c.id.desc()).limit(1)
            self._good[kind] = self._connection.execute(newest).scalar_one_or_none() or 0
        return self._good[kind]


def _open_holds(connection: Connection) -> tuple[FactRecord, ...]:
    # With DISTINCT every range is gone through; without it those of the open index.
    still = select(hold_range.c.hold).where(hold_range.c.released == 0)
    statement = (
        select(journal.c.canonical)
        .join(fact, fact.c.entry_id == journal.c.id)
        .where(fact.c.kind == EntryKind.HOLD, fact.c.uid.in_(still))
        .order_by(fact.c.id.desc())
    )
    return read_facts(connection, statement)


def _hold(connection: Connection, ask: _Blockers, record: FactRecord) -> Releasable:
    open_ranges = ranges_of(connection, record.fact.uid)
    held = (
        select(blend.c.run_id, func.count().label("bags"), func.max(pack.c.entry_id).label("last"))
        .select_from(pack)
        .join(blend, OF_BLEND)
        .group_by(blend.c.run_id)
    )
    rows = [*kept_in(connection, open_ranges, held)]
    last = max((row.last for row in rows), default=None)
    bags = sum(row.bags for row in rows)
    return Releasable(
        hold=record.fact.uid,
        run="",
        subject=record.fact.subject,
        scope=scope_of(record),
        reason=reason_of(record),
        who=record.who,
        at=record.at.utc,
        bags=bags,
        frees=bags - _kept_twice(connection, record.fact.uid, open_ranges),
        blocked=ask.of({row.run_id for row in rows}, last, open_ranges),
    )


def _kept_twice(connection: Connection, uid: str, mine: Sequence[Row[Any]]) -> int:
    """How many of the bags that a hold keeps another open one keeps too."""
    others = select(hold_range).where(hold_range.c.released == 0, hold_range.c.hold != uid)
    both = sorted(
        (one.epoch, max(one.first, other.first), min(one.last, other.last))
        for other in connection.execute(others)
        for one in mine
        if one.epoch == other.epoch
    )
    held = select(func.count()).select_from(pack).where(pack.c.quality == Quality.HELD)
    count, behind = 0, (0, 0)
    for epoch, first, last in both:
        begin = max(first, behind[1] + 1) if epoch == behind[0] else first
        if begin <= last:  # what a span before it has is counted
            span = rows_between(connection, epoch, begin, last)
            count += connection.execute(held.where(span)).scalar_one()
            behind = (epoch, last)
    return count


def _runs_since(connection: Connection, since: date) -> Sequence[Row[Any]]:
    statement = (
        select(run)
        .join(blend, blend.c.run_id == run.c.id)
        .where(blend.c.production_day >= since)
        .distinct()
        .order_by(run.c.id)
    )
    return connection.execute(statement).all()


def _released(connection: Connection, runs: Sequence[Row[Any]]) -> set[str]:
    """Which runs were released, of these; a run is released after it was started."""
    if not runs:
        return set()
    since = chosen((EntryKind.RELEASE,)).where(fact.c.entry_id > runs[0].entry_id)
    return {released_run(one.fact) for one in read_facts(connection, since)}


def _packed(connection: Connection, runs: Sequence[int]) -> dict[int, Row[Any]]:
    """Bags of the batch, last entry of one and held bags of each run that has any, by its row."""
    its: Select[Any] = (
        select(
            blend.c.run_id,
            func.sum(case((pack.c.quality.in_(IN_THE_BATCH), 1), else_=0)).label("bags"),
            func.max(pack.c.entry_id).label("last"),
            func.sum(case((pack.c.quality == Quality.HELD, 1), else_=0)).label("held"),
        )
        .select_from(blend)
        .join(pack, OF_BLEND)
        .where(blend.c.run_id.in_(runs))
        .group_by(blend.c.run_id)
    )
    return {row.run_id: row for row in connection.execute(its)}


def _run(connection: Connection, ask: _Blockers, row: Row[Any], found: Row[Any]) -> Releasable:
    codes = connection.execute(
        select(blend.c.code).where(blend.c.run_id == row.id).distinct()
    ).scalars()
    blocked = ask.of([row.id], found.last)
    if row.ended_at is None:
        blocked = ("the run is open", *blocked)
    if found.held:
        blocked = (f"{found.held} of its bags are held", *blocked)
    return Releasable(
        hold="",
        run=row.uid,
        subject=row.name,
        scope="run",
        reason=", ".join(codes),
        who=row.lead,
        at=row.started_at,
        bags=found.bags,
        frees=found.bags,
        blocked=blocked,
    )
