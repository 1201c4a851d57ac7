"""What bags on record took of lots: one sum for each run and set that could hold one of them."""

from __future__ import annotations

from collections.abc import Collection
from pathlib import Path

from sqlalchemy import case, func, select

from station.core.balance import PackedSum
from station.core.lot_set import LotSet, LotUse
from station.core.pack import Quality
from station.store.bodies import run_of
from station.store.engine import reading
from station.store.journal import read_entry
from station.store.tables import OF_BLEND, blend, journal, lot_use, pack, run


def packed_with(home: Path, lots: Collection[str]) -> tuple[PackedSum, ...]:
    """Return the bags whose set has one of ``lots``, summed by run and set."""
    holding = select(lot_use.c.lot_set_id).where(lot_use.c.lot.in_(tuple(lots)))
    rejected = pack.c.quality.in_((Quality.REJECT, Quality.REWORKED))
    sums = (
        select(
            blend.c.run_id,
            blend.c.lot_set_id,
            func.sum(case((rejected, 0), else_=pack.c.net_ug)).label("kept"),
            func.sum(case((rejected, pack.c.net_ug), else_=0)).label("rejected"),
        )
        .select_from(pack)
        .join(blend, OF_BLEND)
        .where(blend.c.lot_set_id.in_(holding))
        .group_by(blend.c.run_id, blend.c.lot_set_id)
        .order_by(blend.c.run_id, blend.c.lot_set_id)
    )
    with reading(home) as connection:
        rows = connection.execute(sums).all()
        bodies = connection.execute(
            select(run.c.id, journal.c.canonical)
            .join(journal, run.c.entry_id == journal.c.id)
            .where(run.c.id.in_({row.run_id for row in rows}))
        )
        products = {row.id: run_of(read_entry(row.canonical).body).product for row in bodies}
        members = connection.execute(
            select(lot_use).where(lot_use.c.lot_set_id.in_({row.lot_set_id for row in rows}))
        ).all()
    return tuple(
        PackedSum(
            products[row.run_id],
            LotSet.of(
                LotUse(use.component, use.lot)
                for use in members
                if use.lot_set_id == row.lot_set_id
            ),
            row.kept,
            row.rejected,
        )
        for row in rows
    )
