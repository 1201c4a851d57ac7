"""Which runs may be purged, and what stops each of the others.

A unit is a whole run with its bags, the states of their labels and what was checked in it. What
stands beside runs stays: lots, holds, rolls, pauses, signed heads, cases and where they went. So
nothing that a start reads, and no way from a lot to a customer's case, is cut.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import datetime

from sqlalchemy import Connection, Row, func, select

from station.core.purging import AFTER_USE_BY_YEARS
from station.store.purge_entries import RunEntries, Unit, entries_of
from station.store.purge_stops import STOPS, Candidates
from station.store.queries import local_time
from station.store.tables import OF_BLEND, blend, lot_set, lot_use, pack, run


@dataclass(frozen=True, slots=True)
class Plan:
    """What a purge would do.

    Args:
        before: runs that ended before this moment were looked at.
        units: those runs, oldest first.
    """

    before: datetime
    units: tuple[Unit, ...]

    @property
    def going(self) -> tuple[Unit, ...]:
        """Runs that may go."""
        return tuple(one for one in self.units if not one.stops)

    @property
    def staying(self) -> tuple[Unit, ...]:
        """Runs that stay, each with its reasons."""
        return tuple(one for one in self.units if one.stops)


def years_before(moment: datetime, years: int) -> datetime:
    """The same moment some years before; 29 February becomes the 28th."""
    try:
        return moment.replace(year=moment.year - years)
    except ValueError:
        return moment.replace(year=moment.year - years, day=28)


def plan_purge(
    connection: Connection, now: datetime, keep_years: int, sent: Mapping[int, int] | None
) -> Plan:
    """Look at every run that ended more than ``keep_years`` ago.

    Years are counted back from the start of the newest run where that lies before ``now``: a clock
    that jumped ahead makes no run old.

    Args:
        connection: inside a transaction.
        now: aware time.
        keep_years: as the settings have it.
        sent: how far the centre has come, by epoch; None where there is no centre.

    Raises:
        EnvironmentFault: the record is empty.
    """
    newest = connection.execute(select(func.max(run.c.started_at))).scalar_one_or_none()
    now = now if newest is None else min(now, newest)
    before = years_before(now, keep_years)
    units = tuple(_units(connection, before))
    candidates = Candidates(connection, units, sent, years_before(now, AFTER_USE_BY_YEARS).date())
    stops: dict[int, list[str]] = defaultdict(list)
    for stop in STOPS:
        for row, why in stop(candidates):
            if why not in stops[row]:
                stops[row].append(why)
    _bind(candidates, stops)
    return Plan(before, tuple(replace(one, stops=tuple(stops[one.row])) for one in units))


def _units(connection: Connection, before: datetime) -> Iterator[Unit]:
    old = connection.execute(
        select(run).where(run.c.ended_at.is_not(None), run.c.ended_at <= before).order_by(run.c.id)
    ).all()
    entries = entries_of(connection, [row.id for row in old])
    for row in old:
        yield _unit(connection, row, entries[row.id])


def _unit(connection: Connection, row: Row[tuple[object, ...]], entries: RunEntries) -> Unit:
    blends = connection.execute(
        select(blend).where(blend.c.run_id == row.id).order_by(blend.c.id)
    ).all()
    inputs = connection.execute(
        select(lot_use.c.lot)
        .distinct()
        .join(lot_set, lot_set.c.id == lot_use.c.lot_set_id)
        .where(lot_set.c.id.in_({one.lot_set_id for one in blends}))
        .order_by(lot_use.c.lot)
    ).scalars()
    serials = connection.execute(
        select(pack.c.epoch, func.min(pack.c.serial), func.count(), func.min(pack.c.number),
               func.max(pack.c.number))
        .select_from(pack).join(blend, OF_BLEND)
        .where(blend.c.run_id == row.id)
        .group_by(pack.c.epoch)
        .order_by(func.min(pack.c.id))
    ).all()  # fmt: skip
    return Unit(
        row=row.id,
        uid=row.uid,
        product=row.product,
        name=row.name,
        ended=local_time(row.ended_at, row.offset_minutes),
        blend_lots=tuple(dict.fromkeys(one.code for one in blends)),
        inputs=tuple(inputs),
        first_day=min(one.production_day for one in blends),
        last_day=max(one.production_day for one in blends),
        use_by=max(one.use_by for one in blends),
        bags=sum(one[2] for one in serials),
        bags_of=tuple((one[0], one[1].rpartition("-")[0], one[3], one[4]) for one in serials),
        entries=entries,
    )


def _bind(candidates: Candidates, stops: dict[int, list[str]]) -> None:
    """Keep what belongs together together, whatever its age.

    A lot is in force while a run that stays for reasons of its own has it; what shares it stays
    too. It goes no further: where one lot always reaches into the next run, every run ever made
    would stay. Bags that stand for one another are never parted, however long their row.
    """
    names = candidates.names
    going = {one.row for one in candidates.units if not stops[one.row]}
    by_lot = {
        mine: f"{what} run {names[other]}, which stays"
        for mine, other, what in candidates.lots()
        if mine in going and other not in going
    }
    for row, why in by_lot.items():
        stops[row].append(why)
        going.discard(row)
    links = tuple(candidates.stand_ins())
    changed = True
    while changed:
        changed = False
        for mine, other, what in links:
            if mine in going and other not in going:
                stops[mine].append(f"{what} run {names[other]}, which stays")
                going.discard(mine)
                changed = True
