"""Takes old runs out of a stopped station's record: exported first, in one transaction, provably.

Entries of purged runs keep their numbers, kinds and hashes and lose their bytes, so that the chain
and every signed head hold as before. The tables are built anew in the same transaction from what
is left, and what is left is compared with what was there: a purge changes nothing but what it
takes. A fault or a power cut at any step leaves either the whole old record or the whole new one.
"""

from __future__ import annotations

import shutil
import sqlite3
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection, delete
from sqlalchemy.exc import DBAPIError

from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.journal import JournalError
from station.core.pack import Moment
from station.core.purging import Purge, PurgedRun, purge_fact
from station.errors import BadInput, EnvironmentFault
from station.line.ports import Clock
from station.store.chain import Chain
from station.store.damage import Damage
from station.store.engine import database, writer_engine
from station.store.export_check import ExportFound, check_export
from station.store.faults import explain
from station.store.journal import ChainFault
from station.store.journal_end import JournalEnd
from station.store.lock import HomeLock
from station.store.prepared import driver_of
from station.store.purge_entries import Unit
from station.store.purge_export import Told, check_folder, export
from station.store.purge_plan import Plan, plan_purge
from station.store.purge_same import Before
from station.store.tables import PROJECTIONS
from station.store.verify import replay

_GUARD = "journal_no_update"
_RUNS_OF_ENTRY, _SPANS_OF_ENTRY = 100, 10_000
"""Runs and ranges named by one entry, so that it stays far below what the centre takes."""


@dataclass(frozen=True, slots=True)
class Order:
    """What a person asks for.

    Args:
        keep_years: as the settings have it.
        sent: how far the centre has come, by epoch; None where there is no centre.
        folder: where the export goes.
        who: id of the person who signed.
        why: the reason.
    """

    keep_years: int
    sent: Mapping[int, int] | None
    folder: Path
    who: str
    why: str


@dataclass(frozen=True, slots=True)
class Purged:
    """What was done.

    Args:
        plan: what went and what stayed.
        export: the export, as it was read back.
        entries: how many were emptied.
        before, after: bytes of the record's file.
        not_packed: why the file was not made smaller; empty where it was.
    """

    plan: Plan
    export: ExportFound
    entries: int
    before: int
    after: int
    not_packed: str


def purge(
    home: Path, names: tuple[str, str], clock: Clock, key: Path | None, order: Order, told: Told
) -> Purged:
    """Export and purge the runs that may go.

    Args:
        home: folder of a station that does not run.
        names: site and station whose record it must be.
        clock: tells the time.
        key: file of the key that signs heads.
        order: what is asked for.
        told: hears each step before it begins.

    Raises:
        BadInput: nothing may go, the folder of the export does not serve, or another station's
            record.
        EnvironmentFault: the station runs, the record or the export does not hold, or the disk does
            not serve; the record is as it was.
    """
    path = database(home)
    if not path.is_file():
        raise BadInput(f"no station record in {home}", "give the folder that holds station.sqlite")
    check_folder(order.folder, home)
    lock = HomeLock(home)
    try:
        _check_room(path)
        with _writing(path) as connection:
            before = _size(path)
            with connection.begin():
                writing = JournalEnd(connection, home, names, key, clock.now())
                plan, found = _purge(connection, writing, names, order, told)
            writing.committed()
            told("making the file smaller", 0, 1)
            not_packed = _make_smaller(connection, path)
        return Purged(
            plan=plan,
            export=found,
            entries=sum(one.entries.count for one in plan.going),
            before=before,
            after=_size(path),
            not_packed=not_packed,
        )
    finally:
        lock.release()


@contextmanager
def _writing(path: Path) -> Iterator[Connection]:
    engine = writer_engine(path)
    try:
        with engine.connect() as connection:
            yield connection
    except Damage as damage:
        raise EnvironmentFault(
            "the record does not hold, nothing was purged", damage.why
        ) from damage
    except (DBAPIError, sqlite3.Error) as fault:
        raise EnvironmentFault(f"cannot purge {path}", explain(fault).words) from fault
    except (ChainFault, JournalError) as fault:
        raise EnvironmentFault(f"cannot purge {path}", str(fault)) from fault
    finally:
        engine.dispose()


def _purge(
    connection: Connection, writing: JournalEnd, names: tuple[str, str], order: Order, told: Told
) -> tuple[Plan, ExportFound]:
    """Everything that is one transaction."""
    at = writing.at
    told("looking at old runs", 0, 1)
    plan = plan_purge(connection, at.utc, order.keep_years, order.sent)
    if not plan.going:
        raise BadInput("nothing may be purged", _why_none(plan))
    export(connection, plan.going, order.folder, names, told)
    found = check_export(order.folder, told)
    before = Before(connection, [one.row for one in plan.going])
    told("emptying", 0, 1)
    with _unguarded(connection):
        for unit in plan.going:
            for first, last in unit.entries.rows:
                connection.exec_driver_sql(
                    "UPDATE journal SET canonical = x'' WHERE id BETWEEN ? AND ?", (first, last)
                )
    for fact in _facts(plan, found, order, at):
        writing.append(fact, order.who)
    told("building the tables", 0, 1)
    for table in reversed(PROJECTIONS):
        connection.execute(delete(table))
    chain = Chain(connection)
    replay(chain, connection, lambda done: told("building the tables", done, writing.head.row))
    told("comparing", 0, 1)
    before.compare(connection)
    writing.sign()
    told("committing", 0, 1)
    return plan, found


def _facts(plan: Plan, found: ExportFound, order: Order, at: Moment) -> Iterator[Fact]:
    parts = tuple(_parts(plan.going))
    for number, units in enumerate(parts, start=1):
        yield purge_fact(
            Purge(
                uid=new_uid(at),
                before=plan.before,
                keep_years=order.keep_years,
                folder=order.folder.resolve().name,
                digest=found.digest,
                why=order.why,
                part=number,
                parts=len(parts),
                runs=tuple(_purged_run(unit, found) for unit in units),
            )
        )


def _parts(units: Sequence[Unit]) -> Iterator[Sequence[Unit]]:
    some: list[Unit] = []
    spans = 0
    for unit in units:
        mine = len(unit.entries.spans)
        if some and (len(some) == _RUNS_OF_ENTRY or spans + mine > _SPANS_OF_ENTRY):
            yield some
            some, spans = [], 0
        some.append(unit)
        spans += mine
    yield some


def _purged_run(unit: Unit, found: ExportFound) -> PurgedRun:
    proof = found.runs[unit.uid]
    return PurgedRun(
        uid=unit.uid,
        product=unit.product,
        name=unit.name,
        blend_lots=unit.blend_lots,
        inputs=unit.inputs,
        first_day=unit.first_day,
        last_day=unit.last_day,
        bags=unit.bags,
        serials=tuple((head, first, last) for _, head, first, last in unit.bags_of),
        entries=tuple(unit.entries.spans),
        root=proof.root,
        kinds=proof.kinds,
    )


@contextmanager
def _unguarded(connection: Connection) -> Iterator[None]:
    """Lift the guard against changed entries inside the transaction, and lay it down again."""
    laid = connection.exec_driver_sql(
        "SELECT sql FROM sqlite_schema WHERE type = 'trigger' AND name = ?", (_GUARD,)
    ).scalar_one_or_none()
    if laid is None:
        raise Damage(None, f"the guard {_GUARD} is missing: someone changed the file")
    connection.exec_driver_sql(f"DROP TRIGGER {_GUARD}")
    yield
    connection.exec_driver_sql(laid)


def _why_none(plan: Plan) -> str:
    if not plan.units:
        until = f"{plan.before:%Y-%m-%d}"
        return f"no run ended before {until}: years are counted back from the newest run"
    first = plan.staying[0]
    more = len(plan.staying) - 1
    return f"run {first.uid} stays: {first.stops[0]}" + (f"; {more} more stay" if more else "")


# --- the file -----------------------------------------------------------------------------------


def _check_room(path: Path) -> None:
    needed, free = _size(path), shutil.disk_usage(path.parent).free
    if free < needed:
        raise EnvironmentFault(
            f"the disk of {path} is too full to purge",
            f"{needed >> 20} MB are needed while it goes on, {free >> 20} MB are free",
        )


def _make_smaller(connection: Connection, path: Path) -> str:
    """Give room back to the disk; returns why not, where it cannot be done. All is durable."""
    driver = driver_of(connection)
    try:
        if shutil.disk_usage(path.parent).free < 2 * _size(path):
            return "the disk is too full for it: the room is used again inside the file"
        driver.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchall()
        driver.execute("VACUUM")
        driver.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchall()
    except sqlite3.Error as fault:
        return f"{explain(fault).words}: the room is used again inside the file"
    return ""


def _size(path: Path) -> int:
    log = path.with_name(f"{path.name}-wal")
    return path.stat().st_size + (log.stat().st_size if log.exists() else 0)
