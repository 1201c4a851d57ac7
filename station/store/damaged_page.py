"""A file that SQLite cannot read: that it is so, and which page, as SQLite's own check names it."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager

from sqlalchemy import Connection
from sqlalchemy.exc import DBAPIError

from station.store.damage import Damage
from station.store.faults import explain, means_damage, names_no_database

_PAGE = re.compile(r"[Pp]age (\d+)")
HEAD = 1
"""The page that says what the file is (SQLite, "Database File Format", 1.3)."""


@contextmanager
def readable(connection: Connection, what: str, seq: int | None = None) -> Iterator[None]:
    """Turn what SQLite says of a damaged file into :class:`Damage`, with the page.

    Args:
        connection: to the file, inside a transaction.
        what: is read, in words.
        seq: the entry that is read, or None.
    """
    try:
        yield
    except (DBAPIError, sqlite3.Error) as fault:
        raise unreadable(connection, fault, what, seq) from fault


def unreadable(
    connection: Connection, fault: DBAPIError | sqlite3.Error, what: str, seq: int | None
) -> Damage:
    """What a damaged file means.

    Raises:
        DBAPIError: it is something else than damage.
    """
    if not means_damage(fault):
        raise fault
    page = damaged_page(connection)
    where = "" if page is None else f"page {page} of the file is damaged, "
    return Damage(seq, f"{where}{what} cannot be read: {explain(fault).words}", page)


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
