"""The ledger of a day's rejects: each with its weight, limits, lots and what became of it."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from datetime import date, datetime
from pathlib import Path

from sqlalchemy import Connection, bindparam, func, select

from station.core.dispositions import (
    IN_THE_BIN,
    BinCount,
    DecisionMade,
    bin_count_of,
    decided_of,
)
from station.core.journal import EntryKind
from station.core.lot_set import LotUse
from station.core.metrology.verdict import Verdict
from station.core.pack import LabelState, Quality
from station.core.reject_ledger import BinState, LedgerRow
from station.core.run import Run
from station.store.bodies import run_of
from station.store.engine import reading
from station.store.facts import chosen, facts, read_facts
from station.store.journal import read_entry
from station.store.prepared import Prepared
from station.store.queries import local_time, shown_mass
from station.store.tables import (
    OF_BLEND,
    REJECTED,
    blend,
    disposition,
    fact,
    journal,
    lot_use,
    pack,
    run,
)

_ROWS = Prepared(
    select(
        *(pack.c[name] for name in ("serial", "judged_at", "offset_minutes", "verdict", "quality")),
        *(pack.c[name] for name in ("net_digits", "net_unit", "reason", "label", "operator")),
        *(blend.c[name] for name in ("code", "use_by", "lot_set_id", "run_id")),
    )
    .select_from(pack)
    .join(blend, OF_BLEND)
    .where(blend.c.production_day == bindparam("day"), REJECTED)
    .order_by(pack.c.id)
)


def ledger(home: Path, day: date) -> tuple[LedgerRow, ...]:
    """Return the rejects of a production day, in the order they were weighed."""
    with reading(home) as connection:
        return _ledger(connection, day)


def ledger_and_bin(home: Path, day: date) -> tuple[tuple[LedgerRow, ...], BinState]:
    """Return both of a production day, read with one opening of the record."""
    with reading(home) as connection:
        rows = _ledger(connection, day)
        expected = sum(row.quality in IN_THE_BIN for row in rows)
        return rows, BinState(expected, _last_count(connection, day))


def _ledger(connection: Connection, day: date) -> tuple[LedgerRow, ...]:
    rows = _ROWS.execute(connection, {"day": day}).fetchall()
    runs = _runs(connection, {row[-1] for row in rows})
    lots = _lots(connection, {row[-2] for row in rows})
    decisions = _decisions(connection, day)
    found = []
    for (
        serial, at, offset, verdict, quality, digits, unit, reason, label, operator,
        code, use_by, lot_set_id, run_id,
    ) in rows:  # fmt: skip
        its = runs[run_id]
        found.append(
            LedgerRow(
                serial=serial,
                at=local_time(datetime.fromisoformat(at), offset),
                run=its.id,
                product=its.product.code,
                version=its.product.version,
                name=its.product.name,
                window=its.window,
                net=shown_mass(digits, unit),
                verdict=Verdict(verdict),
                reason=reason,
                quality=Quality(quality),
                label=LabelState(label),
                operator=operator,
                blend_lot=code,
                use_by=date.fromisoformat(use_by),
                lots=lots[lot_set_id],
                decision=decisions.get(serial),
            )
        )
    return tuple(found)


def decision_of(home: Path, serial: str) -> DecisionMade | None:
    """Return the decision that holds for a bag, or None."""
    found = facts(home, (EntryKind.DISPOSITION,), subject=serial, newest=1)
    return DecisionMade(decided_of(found[0].fact), found[0]) if found else None


def bin_state(home: Path, day: date) -> BinState:
    """Return what lies in the bin of a production day by the record, and its last count."""
    return bin_states(home, (day,))[day]


def bin_states(home: Path, days: Collection[date]) -> dict[date, BinState]:
    """Return both for some production days, read with one opening of the record."""
    rejects = (
        select(blend.c.production_day, func.count())
        .select_from(blend)
        .join(pack, OF_BLEND)
        .where(blend.c.production_day.in_(days), REJECTED, pack.c.quality.in_(IN_THE_BIN))
        .group_by(blend.c.production_day)
    )
    with reading(home) as connection:
        expected: dict[date, int] = {row[0]: row[1] for row in connection.execute(rejects)}
        return {day: BinState(expected.get(day, 0), _last_count(connection, day)) for day in days}


def _last_count(connection: Connection, day: date) -> BinCount | None:
    newest = chosen((EntryKind.BIN_COUNT,), subject=day.isoformat(), newest=1)
    counts = read_facts(connection, newest)
    return bin_count_of(counts[0]) if counts else None


def _runs(connection: Connection, ids: Iterable[int]) -> dict[int, Run]:
    statement = (
        select(run.c.id, journal.c.canonical)
        .join(journal, run.c.entry_id == journal.c.id)
        .where(run.c.id.in_(tuple(ids)))
    )
    rows = connection.execute(statement).all()
    return {row.id: run_of(read_entry(row.canonical).body) for row in rows}


def _lots(connection: Connection, ids: Iterable[int]) -> dict[int, tuple[LotUse, ...]]:
    statement = (
        select(lot_use)
        .where(lot_use.c.lot_set_id.in_(tuple(ids)))
        .order_by(lot_use.c.component, lot_use.c.lot)
    )
    found: dict[int, tuple[LotUse, ...]] = {}
    for row in connection.execute(statement).all():
        found[row.lot_set_id] = (
            *found.get(row.lot_set_id, ()),
            LotUse(row.component, row.lot),
        )
    return found


def _decisions(connection: Connection, day: date) -> dict[str, DecisionMade]:
    aside = select(pack.c.serial).select_from(pack).join(blend, OF_BLEND)
    of_day = aside.where(blend.c.production_day == day, REJECTED)
    statement = (
        select(journal.c.canonical)
        .join(fact, fact.c.entry_id == journal.c.id)
        .join(disposition, disposition.c.uid == fact.c.uid)
        .where(disposition.c.serial.in_(of_day))
        .order_by(fact.c.id.desc())
    )
    records = read_facts(connection, statement)
    return {one.fact.subject: DecisionMade(decided_of(one.fact), one) for one in records}
