"""Which bags a hold reaches: by serials, time, run, blend lot, label roll; as ranges of numbers."""

from __future__ import annotations

from datetime import datetime, timedelta
from itertools import groupby
from pathlib import Path

from sqlalchemy import ColumnElement, and_, select

from station.core.checks.rolls import RollStep, is_step
from station.core.holds import HoldError, Ranges
from station.core.journal import EntryKind
from station.errors import BadInput
from station.store.engine import reading
from station.store.facts import facts
from station.store.purged import refusal_of
from station.store.queries import unknown, unknown_serial
from station.store.tables import OF_BLEND, blend, fact, pack, run
from station.store.weighed import unknown_run

_DAY = timedelta(days=1)


def between_serials(home: Path, first: str, last: str) -> Ranges:
    """Every bag from one serial to another, both included.

    Raises:
        BadInput: no such serial, or the two belong to different incarnations of the record.
        HoldError: they stand in the wrong order.
    """
    with reading(home) as connection:
        ends = []
        for serial in (first, last):
            row = connection.execute(
                select(pack.c.epoch, pack.c.number).where(pack.c.serial == serial)
            ).one_or_none()
            if row is None:
                raise unknown_serial(connection, serial)
            ends.append(row)
    begin, end = ends
    if begin.epoch != end.epoch:
        raise BadInput(
            f"serials {first} and {last}",
            "stand on both sides of a restored record: hold each side by itself",
        )
    if begin.number > end.number:
        raise HoldError(f"serial {first} comes after {last}: give the earlier one first")
    return ((str(begin.epoch), begin.number, end.number),)


def between_times(home: Path, since: datetime, until: datetime) -> Ranges:
    """Every bag weighed from one moment to another, both included; both aware.

    Raises:
        HoldError: the moments stand in the wrong order.
    """
    if since > until:
        raise HoldError(f"{since:%H:%M} comes after {until:%H:%M}: give the earlier time first")
    days = blend.c.production_day.between((since - _DAY).date(), (until + _DAY).date())
    return _ranges(home, and_(days, pack.c.judged_at.between(since, until)))


def of_run(home: Path, uid: str) -> Ranges:
    """Every bag of a run so far.

    Raises:
        BadInput: no such run.
    """
    with reading(home) as connection:
        if not connection.execute(select(run.c.id).where(run.c.uid == uid)).first():
            raise unknown_run(connection, uid)
    return _ranges(home, run.c.uid == uid)


def of_blend(home: Path, code: str) -> Ranges:
    """Every bag that carries a blend lot code.

    Raises:
        BadInput: no such blend lot.
    """
    found = _ranges(home, blend.c.code == code)
    if not found:
        with reading(home) as connection:
            codes = list(connection.execute(select(blend.c.code).distinct()).scalars())
            if code not in codes:
                raise refusal_of(connection, code) or unknown(
                    f"blend lot {code!r}", code.upper(), codes
                )
    return found


def of_roll(home: Path, roll: str) -> Ranges:
    """Every bag packed while a label roll was in, each time it was.

    Raises:
        BadInput: no such roll was ever put in.
    """
    rolls = facts(home, (EntryKind.ROLL,))
    put_in = [one for one in rolls if is_step(one, RollStep.PUT_IN)]
    mine = [one for one in put_in if one.fact.subject == roll]
    if not mine:
        known = [one.fact.subject for one in put_in]
        raise unknown(f"label roll {roll!r}", roll.upper(), known)
    found: list[tuple[str, int, int]] = []
    for one in mine:
        uid = one.fact.uid
        ends = [
            other
            for other in rolls
            if (other.at.utc, other.seq) > (one.at.utc, one.seq)
            and (is_step(other, RollStep.PUT_IN) or other.fact.details.get("roll") == uid)
        ]
        begin, end = _row_of(home, uid), (_row_of(home, ends[0].fact.uid) if ends else None)
        days = blend.c.production_day >= (one.at.utc - _DAY).date()
        rows = pack.c.entry_id > begin
        if end is not None:
            rows = and_(rows, pack.c.entry_id < end)
            days = and_(days, blend.c.production_day <= (ends[0].at.utc + _DAY).date())
        found += _ranges(home, and_(days, rows))
    return tuple(found)


def _row_of(home: Path, uid: str) -> int:
    with reading(home) as connection:
        return int(
            connection.execute(select(fact.c.entry_id).where(fact.c.uid == uid)).scalar_one()
        )


def _ranges(home: Path, condition: ColumnElement[bool]) -> Ranges:
    statement = (
        select(pack.c.epoch, pack.c.number)
        .select_from(pack)
        .join(blend, OF_BLEND)
        .join(run, blend.c.run_id == run.c.id)
        .where(condition)
    )
    with reading(home) as connection:
        named = sorted(tuple(row) for row in connection.execute(statement))
    found = []
    for _, together in groupby(
        enumerate(named), key=lambda item: (item[1][0], item[1][1] - item[0])
    ):
        numbers = [name for _, name in together]
        found.append((str(numbers[0][0]), numbers[0][1], numbers[-1][1]))
    return tuple(found)
