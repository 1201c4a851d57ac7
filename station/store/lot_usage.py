"""What bags on record took of lots, from the sums of their blends."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterable
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Select, and_, func, join, literal_column, or_, select

from station.core.balance import OUT_OF_BAGS, PackedSum, put_back, together
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.line_lots import move_of
from station.core.lot_set import LotSet, LotUse
from station.core.product import Product
from station.store.blend_sums import sums_of_blend
from station.store.bodies import run_of
from station.store.engine import reading
from station.store.facts import chosen, fact_record, read_facts
from station.store.journal import read_entry
from station.store.tables import blend, fact, journal, lot_use, run

_IS_MOVE = func.likelihood(fact.c.kind == EntryKind.LOT_MOVE, literal_column("0.9"))
"""Blends are few and moves of other lots many; else SQLite would begin with all moves on record."""


def packed_with(home: Path, lots: Collection[str]) -> tuple[PackedSum, ...]:
    """Return the bags whose set has one of ``lots``, summed by run and set."""
    with reading(home) as connection:
        return _by_set(connection, lots)


def packed_at(home: Path, uses: Collection[LotUse]) -> tuple[PackedSum, ...]:
    """Return the bags that could hold a lot of a line, as its balances need them.

    A balance asks of a set of lots how many there are of one component. So bags are told by that
    alone, and are as few sums after a year as after a day.

    Args:
        home: folder of the record.
        uses: the lots on the line with their components.
    """
    with reading(home) as connection:
        found = [_of_component(connection, use) for use in sorted(uses)]
    # two lots of one component that were in bags together give the same sum twice
    distinct = dict.fromkeys(one for some in found for one in some)
    return tuple(together(distinct).values())


def taken_by(home: Path, blends: Collection[int]) -> dict[int, tuple[int, int, int]]:
    """Return what the bags of some blends weigh: micrograms kept, set aside, and put back.

    Args:
        home: folder of the record.
        blends: row numbers.
    """
    its = blend.c.id.in_(blends)
    sums = select(blend.c.id, *sums_of_blend()).where(its)
    with reading(home) as connection:
        moved = select(blend.c.id, journal.c.canonical).select_from(blend)
        again = _put_back(connection, moved.where(its))
        return {
            which: (kept, aside, again[(which,)]) for which, kept, aside in connection.execute(sums)
        }


def moves_of(home: Path, runs: Collection[str], lots: Collection[str]) -> tuple[FactRecord, ...]:
    """Return all moves of lots and of those moved in runs, oldest first."""
    moved = select(fact.c.subject).where(
        fact.c.kind == EntryKind.LOT_MOVE, fact.c.run.in_(tuple(runs))
    )
    wanted = or_(fact.c.subject.in_(tuple(lots)), fact.c.subject.in_(moved))
    with reading(home) as connection:
        return read_facts(connection, chosen((EntryKind.LOT_MOVE,)).where(wanted))


def _by_set(connection: Connection, lots: Collection[str]) -> tuple[PackedSum, ...]:
    holding = select(lot_use.c.lot_set_id).where(lot_use.c.lot.in_(tuple(lots)))
    its_lots = blend.c.lot_set_id.in_(holding)
    kept, aside = sums_of_blend()
    sums = (
        select(
            blend.c.run_id,
            blend.c.lot_set_id,
            func.sum(kept).label("kept"),
            func.sum(aside).label("aside"),
        )
        .where(its_lots)
        .group_by(blend.c.run_id, blend.c.lot_set_id)
        .order_by(blend.c.run_id, blend.c.lot_set_id)
    )
    rows = [row for row in connection.execute(sums).all() if row.kept or row.aside]
    moved = select(blend.c.run_id, blend.c.lot_set_id, journal.c.canonical).select_from(blend)
    again = _put_back(connection, moved.where(its_lots))
    products = _products(connection, {row.run_id for row in rows})
    members: dict[int, list[LotUse]] = {}
    for use in connection.execute(
        select(lot_use).where(lot_use.c.lot_set_id.in_({row.lot_set_id for row in rows}))
    ):
        members.setdefault(use.lot_set_id, []).append(LotUse(use.component, use.lot))
    return tuple(
        PackedSum(
            products[row.run_id],
            LotSet.of(members[row.lot_set_id]),
            row.kept,
            row.aside,
            again[row.run_id, row.lot_set_id],
        )
        for row in rows
    )


def _of_component(connection: Connection, use: LotUse) -> tuple[PackedSum, ...]:
    """Bags that could hold a lot, by product and lots of its component."""
    other = lot_use.alias()
    rivals = (
        select(func.group_concat(other.c.lot, "\t"))
        .where(other.c.lot_set_id == blend.c.lot_set_id, other.c.component == use.component)
        .correlate(blend)
        .scalar_subquery()
    ).label("rivals")
    its_blends = (join(lot_use, blend, blend.c.lot_set_id == lot_use.c.lot_set_id)).join(
        run, run.c.id == blend.c.run_id
    )
    kept, aside = sums_of_blend()
    sums = (
        select(
            func.max(run.c.id).label("run_id"),
            run.c.product,
            run.c.version,
            rivals,
            func.sum(kept).label("kept"),
            func.sum(aside).label("aside"),
        )
        .select_from(its_blends)
        .where(lot_use.c.lot == use.lot)
        .group_by(run.c.product, run.c.version, rivals)
    )
    rows = [row for row in connection.execute(sums).all() if row.kept or row.aside]
    moved = select(run.c.product, run.c.version, rivals, journal.c.canonical)
    again = _put_back(connection, moved.select_from(its_blends).where(lot_use.c.lot == use.lot))
    products = _products(connection, {row.run_id for row in rows})
    return tuple(
        PackedSum(
            products[row.run_id],
            LotSet.of(LotUse(use.component, lot) for lot in row.rivals.split("\t")),
            row.kept,
            row.aside,
            again[row.product, row.version, row.rivals],
        )
        for row in rows
    )


def _put_back(connection: Connection, asked: Select[Any]) -> Counter[tuple[Any, ...]]:
    """Micrograms out of bags put back on the line, by what is asked of their blends.

    Args:
        connection: to the record.
        asked: a question to ``blend``, whose last column is the move's entry.
    """
    moves = asked.join(fact, and_(fact.c.subject == blend.c.code, _IS_MOVE))
    its_entry = journal.c.id == fact.c.entry_id
    out_of_bags = moves.join(journal, its_entry).where(fact.c.result.in_(tuple(OUT_OF_BAGS)))
    found: Counter[tuple[Any, ...]] = Counter()
    for *key, canonical in connection.execute(out_of_bags):
        found[tuple(key)] += put_back(move_of(fact_record(read_entry(canonical)).fact))
    return found


def _products(connection: Connection, runs: Iterable[int]) -> dict[int, Product]:
    bodies = connection.execute(
        select(run.c.id, journal.c.canonical)
        .join(journal, run.c.entry_id == journal.c.id)
        .where(run.c.id.in_(tuple(runs)))
    )
    return {row.id: run_of(read_entry(row.canonical).body).product for row in bodies}
