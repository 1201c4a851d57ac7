"""The account of each label roll: what was printed while it was in, by the record."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import Connection, Text, cast, func, literal, select

from station.core.checks.first_off import first_off_of
from station.core.checks.rolls import RollAccount, RollStep, accounts, is_step
from station.core.dispositions import PRINTED
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.pack import LabelState
from station.store.engine import reading
from station.store.facts import facts
from station.store.tables import blend, fact, journal, pack, run


def roll_accounts(home: Path, newest: int | None = None) -> tuple[RollAccount, ...]:
    """Return the accounts of rolls that were put in, oldest first.

    Every label handed to the printer while a roll was in counts, copies too, and every ticket of a
    reject; a label times the pieces of
    paper the first-off of its run says it takes.

    Args:
        home: the station's folder.
        newest: only so many of the rolls put in last.
    """
    rolls = facts(home, (EntryKind.ROLL,))
    put_in = [one for one in rolls if is_step(one, RollStep.PUT_IN)][-(newest or len(rolls)) :]
    if not put_in:
        return ()
    rolls = rolls[rolls.index(put_in[0]) :]
    pieces = {
        seen.run: seen.pieces for seen in map(first_off_of, facts(home, (EntryKind.FIRST_OFF,)))
    }
    with reading(home) as connection:
        used = [_used(connection, one, rolls, pieces) for one in put_in]
    return accounts(rolls, used)


def _used(
    connection: Connection,
    put_in: FactRecord,
    rolls: tuple[FactRecord, ...],
    pieces: dict[str, int],
) -> int:
    """Pieces of paper printed from a roll; one that was never taken out ends with the next."""
    uid = put_in.fact.uid
    begin = _row_of(connection, uid)
    ends = [
        _row_of(connection, one.fact.uid)
        for one in rolls
        if is_step(one, RollStep.PUT_IN) or one.fact.details.get("roll") == uid
    ]
    end = min((row for row in ends if row > begin), default=None)
    text = cast(journal.c.canonical, Text)
    statement = (
        select(run.c.uid, func.count())
        .select_from(journal)
        .join(pack, pack.c.serial == func.json_extract(text, literal("$.body.serial")))
        .join(blend, pack.c.blend_id == blend.c.id)
        .join(run, blend.c.run_id == run.c.id)
        .where(journal.c.id > begin, journal.c.kind == EntryKind.LABEL)
        .where(func.json_extract(text, literal("$.body.label")) == str(LabelState.SPOOLED))
        .group_by(run.c.uid)
    )
    if end is not None:
        statement = statement.where(journal.c.id < end)
    rows = connection.execute(statement).all()
    labels: int = sum(count * pieces.get(uid, 1) for uid, count in rows)
    return labels + _tickets(connection, begin, end)


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


def _row_of(connection: Connection, uid: str) -> int:
    return int(connection.execute(select(fact.c.entry_id).where(fact.c.uid == uid)).scalar_one())
