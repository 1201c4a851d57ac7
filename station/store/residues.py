"""What the empty pan showed after each bag of a run: a free sensor of the scale's drift."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

from sqlalchemy import select

from station.core.mass import Mass, Unit
from station.core.pack import Residue
from station.store.engine import reading
from station.store.tables import OF_BLEND, blend, pack, run


def residues_of(home: Path, uid: str) -> tuple[Residue, ...]:
    """Return the readings of the empty pan that a run's bags kept, in the order of its bags."""
    statement = (
        select(pack.c.residue_at, pack.c.residue_digits, pack.c.gross_unit)
        .select_from(pack)
        .join(blend, OF_BLEND)
        .join(run, blend.c.run_id == run.c.id)
        .where(run.c.uid == uid, pack.c.residue_digits.is_not(None))
        .order_by(pack.c.id)
    )
    with reading(home) as connection:
        rows = connection.execute(statement).all()
    return tuple(Residue(at, Mass(Decimal(digits), Unit(unit))) for at, digits, unit in rows)
