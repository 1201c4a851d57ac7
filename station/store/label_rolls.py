"""The account of each label roll: what was printed while it was in, by the record."""

from __future__ import annotations

from collections.abc import Collection
from functools import lru_cache
from pathlib import Path

from sqlalchemy import Connection, Text, cast, func, literal, select

from station.core.checks.first_off import first_off_of
from station.core.checks.rolls import RollAccount, RollStep, accounts, is_step
from station.core.dispositions import PRINTED
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.pack import LabelState
from station.store.engine import reading
from station.store.facts import chosen, read_facts
from station.store.tables import OF_BLEND, blend, fact, journal, pack, run

_Printed = tuple[tuple[str, int], ...]
"""Labels by run; tickets under an empty name."""
_KEPT = 400


def roll_accounts(
    home: Path, newest: int | None = None, only: Collection[str] | None = None
) -> tuple[RollAccount, ...]:
    """Return the accounts of rolls that were put in, oldest first.

    Every label handed to the printer while a roll was in counts, copies too, and every ticket of a
    reject; a label times the pieces of paper the first-off of its run says it takes. A roll whose
    labels went with a purge has no account any more.

    Args:
        home: the station's folder.
        newest: only so many of the rolls put in last.
        only: uids of the rolls wanted; None for all.
    """
    rolls = _steps(home, newest)
    put_in = [one for one in rolls if is_step(one, RollStep.PUT_IN)][-(newest or len(rolls)) :]
    if not put_in:
        return ()
    rolls = rolls[rolls.index(put_in[0]) :]
    wanted = [one for one in put_in if only is None or one.fact.uid in only]
    with reading(home) as connection:
        places = _places(connection, rolls[0])
        purge = _last_purge(connection)
        gone = {one.fact.uid for one in wanted if _purged(connection, purge, one, rolls, places)}
        used = {one.fact.uid: _used(home, connection, one, rolls, places) for one in wanted}
    steps = [one for one in rolls if {one.fact.uid, one.fact.details.get("roll")} & used.keys()]
    return tuple(one for one in accounts(steps, used.values()) if one.uid not in gone)


def _steps(home: Path, newest: int | None) -> tuple[FactRecord, ...]:
    """What became of rolls, of so many put in last and of all since; None for all."""
    wanted = chosen((EntryKind.ROLL,))
    with reading(home) as connection:
        if newest is not None:
            put_in = (
                select(fact.c.id)
                .where(fact.c.kind == EntryKind.ROLL, fact.c.result == RollStep.PUT_IN)
                .order_by(fact.c.id.desc())
                .offset(newest - 1)
                .limit(1)
            )
            first = connection.execute(put_in).scalar_one_or_none()
            wanted = wanted if first is None else wanted.where(fact.c.id >= first)
        return read_facts(connection, wanted)


def _used(
    home: Path,
    connection: Connection,
    put_in: FactRecord,
    rolls: tuple[FactRecord, ...],
    places: dict[str, int],
) -> int:
    """Pieces of paper printed from a roll; one that was never taken out ends with the next."""
    begin, end = _span(put_in, rolls, places)
    if end is None:
        found = _printed(connection, begin, end)
    else:
        found = _printed_between(home, put_in.fact.uid, begin, end)
    first_offs = chosen((EntryKind.FIRST_OFF,)).where(fact.c.run.in_([its for its, _ in found]))
    seen = map(first_off_of, read_facts(connection, first_offs))
    pieces = {one.run: one.pieces for one in seen}
    return sum(count * pieces.get(its, 1) for its, count in found)


def _span(
    put_in: FactRecord, rolls: tuple[FactRecord, ...], places: dict[str, int]
) -> tuple[int, int | None]:
    """Rows of the journal between which a roll was in; it is in still where the second is None."""
    uid = put_in.fact.uid
    begin = places[uid]
    ends = [
        places[one.fact.uid]
        for one in rolls
        if is_step(one, RollStep.PUT_IN) or one.fact.details.get("roll") == uid
    ]
    return begin, min((row for row in ends if row > begin), default=None)


def _last_purge(connection: Connection) -> int | None:
    """Row of the newest purge in the journal."""
    newest = select(fact.c.entry_id).where(fact.c.kind == EntryKind.PURGE)
    return connection.execute(newest.order_by(fact.c.id.desc()).limit(1)).scalar_one_or_none()


def _purged(
    connection: Connection,
    last: int | None,
    put_in: FactRecord,
    rolls: tuple[FactRecord, ...],
    places: dict[str, int],
) -> bool:
    """Whether a label of a roll was purged, up to the newest purge."""
    if last is None or last < places[put_in.fact.uid]:
        return False
    begin, end = _span(put_in, rolls, places)
    gone = select(journal.c.id).where(
        journal.c.id > begin,
        journal.c.id < (end or last),
        journal.c.kind == EntryKind.LABEL,
        journal.c.canonical == b"",
    )
    return connection.execute(gone.limit(1)).first() is not None


@lru_cache(maxsize=_KEPT)
def _printed_between(home: Path, uid: str, begin: int, end: int) -> _Printed:
    """What was printed from a roll that is out; the journal is only added to, so it stays."""
    with reading(home) as connection:
        return _printed(connection, begin, end)


def _printed(connection: Connection, begin: int, end: int | None) -> _Printed:
    """Labels handed to the printer by run, and tickets, between two rows of the journal."""
    text = func.nullif(cast(journal.c.canonical, Text), "")  # of a purged label nothing is left
    statement = (
        select(run.c.uid, func.count())
        .select_from(journal)
        .join(pack, pack.c.serial == func.json_extract(text, literal("$.body.serial")))
        .join(blend, OF_BLEND)
        .join(run, blend.c.run_id == run.c.id)
        .where(journal.c.id > begin, journal.c.kind == EntryKind.LABEL)
        .where(func.json_extract(text, literal("$.body.label")) == str(LabelState.SPOOLED))
        .group_by(run.c.uid)
    )
    if end is not None:
        statement = statement.where(journal.c.id < end)
    rows = connection.execute(statement).all()
    return (*((row[0], row[1]) for row in rows), ("", _tickets(connection, begin, end)))


def _tickets(connection: Connection, begin: int, end: int | None) -> int:
    """Tickets of rejects printed between two rows of the journal; each took a label."""
    printed = (
        select(func.count())
        .select_from(fact)
        .where(fact.c.kind == EntryKind.TICKET, fact.c.result == PRINTED)
        .where(fact.c.entry_id > begin)
    )
    if end is not None:
        printed = printed.where(fact.c.entry_id < end)
    return int(connection.execute(printed).scalar_one())


def _places(connection: Connection, oldest: FactRecord) -> dict[str, int]:
    """Row of the journal of each step of a roll from one on, by uid."""
    begin = select(fact.c.id).where(fact.c.uid == oldest.fact.uid).scalar_subquery()
    steps = select(fact.c.uid, fact.c.entry_id).where(fact.c.kind == EntryKind.ROLL)
    steps = steps.where(fact.c.id >= begin)
    return {row.uid: row.entry_id for row in connection.execute(steps)}
