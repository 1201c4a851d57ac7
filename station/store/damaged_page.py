"""Which page of the file is damaged, as SQLite's own check names it."""

from __future__ import annotations

import re
import sqlite3

from sqlalchemy import Connection
from sqlalchemy.exc import DBAPIError

from station.store.faults import means_damage, names_no_database

_PAGE = re.compile(r"[Pp]age (\d+)")
HEAD = 1
"""The page that says what the file is (SQLite, "Database File Format", 1.3)."""


def damaged_page(connection: Connection) -> int | None:
    """Number of the first damaged page of a file, from 1; None where SQLite names none."""
    try:
        (found,) = connection.exec_driver_sql("PRAGMA integrity_check(1)").one()
    except (DBAPIError, sqlite3.Error) as fault:
        if not means_damage(fault):
            raise
        return HEAD if names_no_database(fault) else None
    return page_of(str(found))


def page_of(words: str) -> int | None:
    """The page that a line of SQLite's check names."""
    found = _PAGE.search(words)
    return None if found is None else int(found.group(1))
