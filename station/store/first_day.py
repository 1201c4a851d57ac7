"""The first day a record has bags of."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from sqlalchemy import func, select

from station.store.engine import reading
from station.store.tables import blend


def first_day(home: Path) -> date | None:
    """The first production day with a blend on record; None before there is one.

    Raises:
        BadInput: there is no record.
        EnvironmentFault: it cannot be read.
    """
    with reading(home) as connection:
        return connection.execute(select(func.min(blend.c.production_day))).scalar()
