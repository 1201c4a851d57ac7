"""The newest entry of a record, read without opening it for writing."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from sqlalchemy import select

from station.store.engine import database, reading
from station.store.journal import read_entry
from station.store.tables import journal


def newest_entry_at(home: Path) -> datetime | None:
    """When the newest entry was made, in UTC, by its place and not by its time.

    None where there is no record yet.

    Raises:
        EnvironmentFault: the record is there and cannot be read.
    """
    if not database(home).is_file():
        return None
    newest = select(journal.c.canonical).order_by(journal.c.id.desc()).limit(1)
    with reading(home) as connection:
        kept = connection.execute(newest).scalar()
    return None if kept is None else read_entry(kept).at.utc
