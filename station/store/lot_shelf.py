"""The input lots a station starts with: those that may still be used."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from datetime import date, timedelta
from pathlib import Path

from sqlalchemy import and_, func, or_, select

from station.core.lots import InputLot
from station.core.product import Component
from station.store.engine import reading
from station.store.tables import lot

SHELF = timedelta(days=400)
"""Lots received longer ago are not gone through: nothing fresh-cut is older. A code finds them."""
PAST = timedelta(days=14)
"""Neither are lots whose last day, or latest day of packing, lies longer ago than this."""


def lots_on_the_shelf(
    home: Path, day: date, named: Collection[str], components: Iterable[Component] = ()
) -> tuple[InputLot, ...]:
    """Return the lots of the days before one that may still be used, and those named, by code.

    Args:
        home: the station's folder.
        day: today.
        named: codes of lots the settings name.
        components: some of them end so many days after harvest, or receipt.
    """
    last = day - PAST
    begun = func.coalesce(lot.c.harvested, lot.c.received, type_=lot.c.received.type)
    young = [
        or_(lot.c.component != one.code, begun >= last - timedelta(days=one.max_age_days))
        for one in components
        if one.max_age_days is not None
    ]
    usable = and_(or_(lot.c.use_by.is_(None), lot.c.use_by >= last), *young)
    asked = (
        select(lot).where(lot.c.received >= day - SHELF, usable),
        select(lot).where(lot.c.code.in_(tuple(named))),
    )
    with reading(home) as connection:
        rows = [row for one in asked for row in connection.execute(one).all()]
    found = {row.code: InputLot(*row) for row in rows}  # a row has the columns in this order
    return tuple(found[code] for code in sorted(found))  # in SQL, all lots would be gone through


def lot_on_record(home: Path, code: str) -> InputLot | None:
    """Return the lot of a code, or None."""
    with reading(home) as connection:
        row = connection.execute(select(lot).where(lot.c.code == code)).mappings().one_or_none()
        return None if row is None else InputLot(**row)
