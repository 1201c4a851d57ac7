"""Questions about facts: checks, holds, rolls, gates and all else people enter."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Select, select

from station.core.facts import Fact, FactRecord
from station.core.journal import Entry, EntryKind
from station.core.long_work import go_on
from station.store.engine import reading
from station.store.journal import read_entry
from station.store.tables import fact, journal


def facts(
    home: Path,
    kinds: Collection[EntryKind],
    *,
    run: str | None = None,
    subject: str | None = None,
    result: str | None = None,
    since: datetime | None = None,
    until: datetime | None = None,
    newest: int | None = None,
) -> tuple[FactRecord, ...]:
    """Return facts of some kinds, oldest first, of all epochs.

    Args:
        home: the station's folder.
        kinds: which.
        run: only those of this run.
        subject: only those about this.
        result: only those that came out so.
        since: only those recorded from this moment on.
        until: only those recorded up to this moment.
        newest: only so many of the newest.
    """
    with reading(home) as connection:
        return read_facts(
            connection,
            chosen(
                kinds,
                run=run,
                subject=subject,
                result=result,
                since=since,
                until=until,
                newest=newest,
            ),
        )


def fact_named(home: Path, uid: str) -> FactRecord | None:
    """Return the fact of this uid, or None."""
    with reading(home) as connection:
        found = read_facts(connection, _CANONICAL.where(fact.c.uid == uid))
    return found[0] if found else None


_CANONICAL = select(journal.c.canonical).join(fact, fact.c.entry_id == journal.c.id)


def chosen(
    kinds: Collection[EntryKind],
    *,
    run: str | None = None,
    subject: str | None = None,
    result: str | None = None,
    since: datetime | None = None,
    until: datetime | None = None,
    newest: int | None = None,
) -> Select[Any]:
    """The question :func:`facts` asks, for :func:`read_facts` inside another reading."""
    statement = _CANONICAL.where(fact.c.kind.in_(tuple(kinds))).order_by(fact.c.id.desc())
    if run is not None:
        statement = statement.where(fact.c.run == run)
    if subject is not None:
        statement = statement.where(fact.c.subject == subject)
    if result is not None:
        statement = statement.where(fact.c.result == result)
    if since is not None:
        statement = statement.where(fact.c.at >= since)
    if until is not None:
        statement = statement.where(fact.c.at <= until)
    return statement if newest is None else statement.limit(newest)


def read_facts(connection: Connection, newest_first: Select[Any]) -> tuple[FactRecord, ...]:
    """Read facts from canonical entries; returned oldest first."""
    found = connection.execute(newest_first).scalars().all()
    return tuple(fact_record(read_entry(kept)) for kept in _wanted(found[::-1]))


def _wanted(found: Sequence[bytes]) -> Iterator[bytes]:
    for kept in found:
        go_on()
        yield kept


def fact_record(entry: Entry) -> FactRecord:
    """The fact of an entry."""
    body = entry.body
    details = body["details"]
    assert isinstance(details, dict)
    whole = Fact(
        kind=entry.kind,
        uid=str(body["uid"]),
        subject=str(body["subject"]),
        result=str(body["result"]),
        run=str(body["run"]),
        details=details,
    )
    return FactRecord(whole, entry.at, entry.who, entry.seq)
