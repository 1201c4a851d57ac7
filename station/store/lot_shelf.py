"""The input lots a station starts with: those that may still be used."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date, timedelta
from pathlib import Path

from sqlalchemy import or_, select

from station.core.lots import InputLot
from station.store.engine import reading
from station.store.tables import lot

SHELF = timedelta(days=400)
"""Lots received longer ago are not gone through: nothing fresh-cut is older. A code finds them."""


def lots_on_the_shelf(home: Path, day: date, named: Collection[str]) -> tuple[InputLot, ...]:
    """Return the lots received within :data:`SHELF` before a day, and those named, by code.

    Args:
        home: the station's folder.
        day: today.
        named: codes of lots the settings name.
    """
    near = or_(lot.c.received >= day - SHELF, lot.c.code.in_(tuple(named)))
    with reading(home) as connection:
        rows = connection.execute(select(lot).where(near)).mappings()
        found = [InputLot(**row) for row in rows]
    return tuple(sorted(found, key=lambda one: one.code))  # in SQL, all lots would be gone through


def lot_on_record(home: Path, code: str) -> InputLot | None:
    """Return the lot of a code, or None."""
    with reading(home) as connection:
        row = connection.execute(select(lot).where(lot.c.code == code)).mappings().one_or_none()
        return None if row is None else InputLot(**row)
