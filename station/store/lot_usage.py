"""What bags on record took of lots, from the sums of their blends."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from datetime import date
from pathlib import Path

from sqlalchemy import ColumnElement, Connection, func, or_, select

from station.core.balance import PackedSum, together
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.line_lots import Move
from station.core.lot_set import LotSet, LotUse
from station.core.product import Product
from station.store.blend_sums import sums_of_blend
from station.store.bodies import run_of
from station.store.engine import reading
from station.store.facts import chosen, read_facts
from station.store.journal import read_entry
from station.store.tables import blend, fact, journal, lot_use, run


def packed_with(home: Path, lots: Collection[str]) -> tuple[PackedSum, ...]:
    """Return the bags whose set has one of ``lots``, summed by run and set."""
    with reading(home) as connection:
        return _by_set(connection, lot_use.c.lot.in_(tuple(lots)))


def packed_at(home: Path, uses: Collection[LotUse], since: date) -> tuple[PackedSum, ...]:
    """Return the bags that could hold a lot of a line, as its balances need them.

    A balance asks of a set of lots how many there are of one component. So bags of the days before
    are told by that alone, and are as few sums after a year as after a day.

    Args:
        home: folder of the record.
        uses: the lots on the line with their components.
        since: first production day of those told with all their lots, as rework asks for.
    """
    lots = tuple(use.lot for use in uses)
    with reading(home) as connection:
        newer = _by_set(connection, lot_use.c.lot.in_(lots), blend.c.production_day >= since)
        older = [_of_component(connection, use, since) for use in sorted(uses)]
    # two lots of one component that were in bags together give the same sum twice
    distinct = dict.fromkeys(one for some in older for one in some)
    return tuple(together((*distinct, *newer)).values())


def moves_of(home: Path, runs: Collection[str], lots: Collection[str]) -> tuple[FactRecord, ...]:
    """Return all moves of lots and of those moved in runs, and all rework, oldest first."""
    moved = select(fact.c.subject).where(
        fact.c.kind == EntryKind.LOT_MOVE, fact.c.run.in_(tuple(runs))
    )
    wanted = or_(
        fact.c.subject.in_(tuple(lots)), fact.c.subject.in_(moved), fact.c.result == Move.REWORK
    )
    with reading(home) as connection:
        return read_facts(connection, chosen((EntryKind.LOT_MOVE,)).where(wanted))


def _by_set(connection: Connection, *which: ColumnElement[bool]) -> tuple[PackedSum, ...]:
    holding = select(lot_use.c.lot_set_id).where(which[0])
    kept, aside = sums_of_blend()
    sums = (
        select(
            blend.c.run_id,
            blend.c.lot_set_id,
            func.sum(kept).label("kept"),
            func.sum(aside).label("aside"),
        )
        .where(blend.c.lot_set_id.in_(holding), *which[1:])
        .group_by(blend.c.run_id, blend.c.lot_set_id)
        .order_by(blend.c.run_id, blend.c.lot_set_id)
    )
    rows = [row for row in connection.execute(sums).all() if row.kept or row.aside]
    products = _products(connection, {row.run_id for row in rows})
    members: dict[int, list[LotUse]] = {}
    for use in connection.execute(
        select(lot_use).where(lot_use.c.lot_set_id.in_({row.lot_set_id for row in rows}))
    ):
        members.setdefault(use.lot_set_id, []).append(LotUse(use.component, use.lot))
    return tuple(
        PackedSum(products[row.run_id], LotSet.of(members[row.lot_set_id]), row.kept, row.aside)
        for row in rows
    )


def _of_component(connection: Connection, use: LotUse, until: date) -> tuple[PackedSum, ...]:
    """Bags of days before one that could hold a lot, by product and lots of its component."""
    other = lot_use.alias()
    rivals = (
        select(func.group_concat(other.c.lot, "\t"))
        .where(other.c.lot_set_id == blend.c.lot_set_id, other.c.component == use.component)
        .correlate(blend)
        .scalar_subquery()
    )
    kept, aside = sums_of_blend()
    sums = (
        select(
            func.max(run.c.id).label("run_id"),
            rivals.label("rivals"),
            func.sum(kept).label("kept"),
            func.sum(aside).label("aside"),
        )
        .select_from(lot_use)
        .join(blend, blend.c.lot_set_id == lot_use.c.lot_set_id)
        .join(run, run.c.id == blend.c.run_id)
        .where(lot_use.c.lot == use.lot, blend.c.production_day < until)
        .group_by(run.c.product, run.c.version, rivals)
    )
    rows = [row for row in connection.execute(sums).all() if row.kept or row.aside]
    products = _products(connection, {row.run_id for row in rows})
    return tuple(
        PackedSum(
            products[row.run_id],
            LotSet.of(LotUse(use.component, lot) for lot in row.rivals.split("\t")),
            row.kept,
            row.aside,
        )
        for row in rows
    )


def _products(connection: Connection, runs: Iterable[int]) -> dict[int, Product]:
    bodies = connection.execute(
        select(run.c.id, journal.c.canonical)
        .join(journal, run.c.entry_id == journal.c.id)
        .where(run.c.id.in_(tuple(runs)))
    )
    return {row.id: run_of(read_entry(row.canonical).body).product for row in bodies}
