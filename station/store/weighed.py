"""Every bag of a run, a blend lot or a span of time as weighed, with the run that judges it."""

from __future__ import annotations

from collections.abc import Collection
from datetime import datetime
from itertools import groupby
from pathlib import Path
from zoneinfo import ZoneInfo

from sqlalchemy import ColumnElement, Connection, func, select

from station.core.pack import IN_THE_BATCH
from station.errors import BadInput
from station.line.numbers import Bag
from station.store import journal as j
from station.store.answers import RunBlend, RunPacks, WeighedPack
from station.store.bodies import run_of
from station.store.columns import mass_of
from station.store.engine import reading
from station.store.number_range import rows_judged
from station.store.purged import refusal_of
from station.store.queries import local_time, unknown
from station.store.tables import OF_BLEND, blend, journal, lot_use, pack, run

LAST = "last"
"""Stands for the id of the run started last."""


def packs_of_run(home: Path, uid: str) -> RunPacks:
    """Return a run with all its bags, whatever became of them.

    Args:
        home: folder of the record.
        uid: id of the run, or ``last``.

    Raises:
        BadInput: no such run; the message names close ones.
    """
    with reading(home) as connection:
        asked = run.c.uid == uid
        if uid == LAST:
            asked = run.c.id == select(func.max(run.c.id)).scalar_subquery()
        if not connection.execute(select(run.c.id).where(asked)).first():
            raise unknown_run(connection, uid)
        return _grouped(connection, asked)[0]


def unknown_run(connection: Connection, uid: str) -> BadInput:
    """Return the refusal of a run the record has not: its purge, or close ones."""
    known = list(connection.execute(select(run.c.uid).order_by(run.c.id.desc())).scalars())
    return refusal_of(connection, uid) or unknown(f"run {uid!r}", uid.lower(), known)


def bags_of(packs: RunPacks) -> tuple[Bag, ...]:
    """The bags of a run as its figures take them."""
    return tuple(
        Bag(pack.serial, pack.at, pack.net, pack.quality in IN_THE_BATCH) for pack in packs.packs
    )


def run_before(home: Path, uid: str) -> RunPacks | None:
    """Return the run before a run that packed the same version of the same product, or None.

    Args:
        home: folder of the record.
        uid: id of the later run.
    """
    later, earlier = run.alias("later"), run.alias("earlier")
    statement = (
        select(earlier.c.uid)
        .join(
            later,
            (earlier.c.product == later.c.product)
            & (earlier.c.version == later.c.version)
            & (earlier.c.id < later.c.id),
        )
        .where(later.c.uid == uid)
        .order_by(earlier.c.id.desc())
        .limit(1)
    )
    with reading(home) as connection:
        found = connection.execute(statement).scalar_one_or_none()
        return None if found is None else _grouped(connection, run.c.uid == found)[0]


def packs_of_blend(home: Path, code: str) -> tuple[RunPacks, ...]:
    """Return the bags that carry a blend lot code, by run.

    Raises:
        BadInput: no such blend lot; the message names close ones.
    """
    with reading(home) as connection:
        found = _grouped(connection, blend.c.code == code)
        if not found:
            codes = connection.execute(select(blend.c.code).distinct()).scalars()
            raise refusal_of(connection, code) or unknown(
                f"blend lot {code!r}", code.upper(), list(codes)
            )
        return found


def packs_between(home: Path, after: datetime, until: datetime) -> tuple[RunPacks, ...]:
    """Return the bags judged after one moment and not after another, by run.

    Args:
        home: folder of the record.
        after: aware time.
        until: aware time.
    """
    with reading(home) as connection:
        return _grouped(connection, *rows_judged(connection, after, until), empty=False)


def plant_zone(home: Path) -> ZoneInfo:
    """Return the time zone the plant's clock was in at the last journal entry.

    Raises:
        BadInput: the record is empty.
    """
    last = select(journal.c.canonical).order_by(journal.c.id.desc()).limit(1)
    with reading(home) as connection:
        kept = connection.execute(last).scalar_one_or_none()
        if kept is None:
            raise BadInput(f"the record in {home} is empty", "its plant has no time zone yet")
        return ZoneInfo(j.read_entry(kept).at.zone)


def _grouped(
    connection: Connection, *conditions: ColumnElement[bool], empty: bool = True
) -> tuple[RunPacks, ...]:
    """Runs with the bags that meet one of some conditions, both in order.

    Args:
        connection: to the record.
        conditions: on runs, blends or bags, which no bag meets twice, in the order of bags.
        empty: a run without bags stays; without it a condition on bags finds them first.
    """
    asked = (
        select(
            run.c.id.label("run_id"),
            run.c.ended_at,
            pack.c.serial,
            pack.c.judged_at,
            pack.c.offset_minutes,
            *(pack.c[f"{name}_{part}"] for name in ("gross", "net") for part in ("digits", "unit")),
            pack.c.quality,
            pack.c.reason,
            blend.c.code,
        )
        .select_from(run)
        .join(blend, blend.c.run_id == run.c.id, isouter=empty)
        .join(pack, OF_BLEND, isouter=empty)
        .order_by(run.c.id, pack.c.id)
    )
    rows = (row for one in conditions for row in connection.execute(asked.where(one)).mappings())
    packs: dict[int, list[WeighedPack]] = {}
    still_open: dict[int, bool] = {}
    for row in rows:
        still_open[row["run_id"]] = row["ended_at"] is None
        its_packs = packs.setdefault(row["run_id"], [])
        if row["serial"] is not None:
            its_packs.append(
                WeighedPack(
                    serial=row["serial"],
                    at=local_time(row["judged_at"], row["offset_minutes"]),
                    gross=mass_of(row, "gross"),
                    net=mass_of(row, "net"),
                    quality=row["quality"],
                    reason=row["reason"],
                    blend=row["code"],
                )
            )
    entries = connection.execute(
        select(run.c.id, journal.c.canonical)
        .join(journal, run.c.entry_id == journal.c.id)
        .where(run.c.id.in_(packs))
    ).all()
    facts = {row.id: run_of(j.read_entry(row.canonical).body) for row in entries}
    blends = _blends(connection, {bag.blend for bags in packs.values() for bag in bags}, packs)
    return tuple(
        RunPacks(facts[run_id], still_open[run_id], tuple(its_packs), tuple(blends[run_id]))
        for run_id, its_packs in sorted(packs.items())
    )


def _blends(
    connection: Connection, codes: Collection[str], runs: Collection[int]
) -> dict[int, list[RunBlend]]:
    """The blends of runs, by run; those of some lot codes, and all of a run without bags."""
    rows = connection.execute(
        select(
            blend.c.id,
            blend.c.run_id,
            blend.c.code,
            blend.c.use_by,
            lot_use.c.component,
            lot_use.c.lot,
        )
        .join(lot_use, lot_use.c.lot_set_id == blend.c.lot_set_id)
        .where(blend.c.run_id.in_(runs))
        .order_by(blend.c.id, lot_use.c.component, lot_use.c.lot)
    ).all()
    found: dict[int, list[RunBlend]] = {run_id: [] for run_id in runs}
    for _, uses in groupby(rows, key=lambda row: row.id):
        members = list(uses)
        first = members[0]
        if codes and first.code not in codes:
            continue
        lots = tuple((row.component, row.lot) for row in members)
        found[first.run_id].append(RunBlend(first.code, first.use_by, lots))
    return found
