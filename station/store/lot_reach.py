"""How far a lot reaches: every bag that could hold some of it, as ranges of bag numbers."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import select

from station.core.pack import PackId
from station.line.suspect_hold import number_ranges
from station.store.engine import reading
from station.store.tables import OF_BLEND, blend, lot_use, pack


def bags_with(home: Path, lot: str) -> tuple[tuple[str, int, int], ...]:
    """Return the bags of all runs and epochs whose set has a lot.

    Returns:
        Ranges of epoch (as text), first and last number, in order.
    """
    holding = select(lot_use.c.lot_set_id).where(lot_use.c.lot == lot)
    statement = (
        select(pack.c.epoch, pack.c.number)
        .select_from(pack)
        .join(blend, OF_BLEND)
        .where(blend.c.lot_set_id.in_(holding))
        .order_by(pack.c.epoch, pack.c.number)
    )
    with reading(home) as connection:
        rows = connection.execute(statement)
        return number_ranges(PackId("", "", row.epoch, row.number) for row in rows)
