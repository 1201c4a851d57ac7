"""How many bags of a run stand on its pallet, and which run was packed last."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import case, func, select

from station.core.pack import IN_THE_BATCH
from station.store.engine import reading
from station.store.tables import OF_BLEND, blend, pack, run


@dataclass(frozen=True, slots=True)
class RunCount:
    """A run with its bags on the pallet.

    Args:
        uid: id of the run.
        name: its product.
        blend_lot: its newest blend lot.
        open: bags are still packed.
        bags: bags on the pallet.
        net_ug: what they hold together, in micrograms.
    """

    uid: str
    name: str
    blend_lot: str
    open: bool
    bags: int
    net_ug: int


def count_run(home: Path, uid: str) -> RunCount | None:
    """Return the count of a run; None where there is no such run."""
    on_pallet = case((pack.c.quality.in_(IN_THE_BATCH), 1), else_=0)
    statement = (
        select(
            run.c.name,
            run.c.ended_at,
            func.max(blend.c.id).label("newest"),
            func.coalesce(func.sum(on_pallet), 0).label("bags"),
            func.coalesce(func.sum(on_pallet * pack.c.net_ug), 0).label("net_ug"),
        )
        .select_from(run)
        .join(blend, blend.c.run_id == run.c.id)
        .outerjoin(pack, OF_BLEND)
        .where(run.c.uid == uid)
        .group_by(run.c.id)
    )
    with reading(home) as connection:
        row = connection.execute(statement).one_or_none()
        if row is None:
            return None
        code = connection.execute(select(blend.c.code).where(blend.c.id == row.newest)).scalar_one()
    return RunCount(uid, row.name, code, row.ended_at is None, row.bags, row.net_ug)


def last_packed_run(home: Path) -> str | None:
    """Return the id of the run of the newest bag; None in an empty record."""
    newest = select(func.max(pack.c.id)).scalar_subquery()
    statement = (
        select(run.c.uid)
        .select_from(run)
        .join(blend, blend.c.run_id == run.c.id)
        .join(pack, OF_BLEND)
        .where(pack.c.id == newest)
    )
    with reading(home) as connection:
        return connection.execute(statement).scalar_one_or_none()
