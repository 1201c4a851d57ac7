"""Whether a file has the shape this program reads; told before the first question is asked of it.

Two numbers say what shape a file has: alembic's, and ``PRAGMA user_version`` for what the newest
shape gained since homes were first made with it (see ``bring_up``). A build between two releases
may have changed tables under the same numbers, so the columns are compared too. A file is looked at
once, and again when SQLite's own count says that its schema was changed since.
"""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Collection
from contextlib import suppress
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from station.errors import BadInput

HEAD = "0003"
"""The newest shape; equal to alembic's head. Shapes are numbered by four digits, in order."""

KEPT = 4
"""The ``user_version`` of a file that has all that ``bring_up`` adds."""

ADDED = frozenset(("blend", column) for column in ("first_bag", "last_bag", "kept_ug", "aside_ug"))
"""Columns that ``bring_up`` adds."""

_ASK = "SELECT version_num, user_version FROM alembic_version, pragma_user_version"
_TABLES = "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"
_COLUMNS = (
    "SELECT m.name, c.name FROM sqlite_schema AS m, pragma_table_info(m.name) AS c"
    " WHERE m.type = 'table'"
)
_LAST_START = "SELECT canonical FROM journal WHERE kind = 'start' ORDER BY id DESC LIMIT 1"
_RECORD = {"identity", "journal", "alembic_version"}
_NAMED = 3
"""Tables of another program that are named."""

_WHOLE: set[tuple[Path, int]] = set()
"""Files that were found to be of this shape, with SQLite's count of changes of their schema."""

Column = tuple[str, str]
"""Names of a table and of a column of it."""


@dataclass(frozen=True, slots=True)
class Shape:
    """What a record says of its own shape.

    Args:
        number: four digits.
        kept: how much of the newest shape it has.
    """

    number: str
    kept: int

    @property
    def older(self) -> bool:
        """This program can bring it up to date."""
        return (self.number, self.kept) < (HEAD, KEPT)

    @property
    def newer(self) -> bool:
        """This program cannot read it."""
        return self.number > HEAD or (self.number == HEAD and self.kept > KEPT)

    def __str__(self) -> str:
        return self.number if self.number != HEAD else f"{self.number}.{self.kept}"


THIS = Shape(HEAD, KEPT)
"""The shape this program reads."""


def shape_of(driver: sqlite3.Connection, path: Path) -> Shape | None:
    """Return the shape of a file, None for an empty one.

    Args:
        driver: reads the file.
        path: of the file, for words.

    Raises:
        BadInput: it is a database of something else.
        sqlite3.Error: it cannot be read.
    """
    row: tuple[str, int] | None = None
    with suppress(sqlite3.OperationalError):  # there may be no such table
        row = driver.execute(_ASK).fetchone()
    if row == (HEAD, KEPT):
        return THIS
    tables = [name for (name,) in driver.execute(_TABLES)]
    if not tables:
        return None
    if not set(tables) >= _RECORD:
        named = ", ".join(tables[:_NAMED])
        raise BadInput(
            f"{path} is no station record",
            f"it is a database with the tables {named}{' …' * (len(tables) > _NAMED)}: "
            "give the station's own folder",
        )
    if row is None:
        raise BadInput(f"{path} has lost the number of its shape", "restore the last backup")
    return Shape(*row)


def check_shape(driver: sqlite3.Connection, path: Path, *, older_too: bool = False) -> Shape | None:
    """See that this program can read a file.

    Args:
        driver: reads the file.
        path: of the file, for words.
        older_too: it is brought up to date first, so an older or empty one will do.

    Returns:
        Its shape; None for an empty file.

    Raises:
        BadInput: it cannot; says what the file is and what to do.
        sqlite3.Error: the file cannot be read at all.
    """
    (schema,) = driver.execute("PRAGMA schema_version").fetchone()
    if (path, schema) in _WHOLE:
        return THIS
    shape = shape_of(driver, path)
    if shape is None:
        if older_too:
            return None
        raise BadInput(
            f"{path} is empty, there is no record in it",
            "restore the last backup (`station restore`), or start the station once "
            "(`station run`), which makes a new record",
        )
    if shape.newer:
        raise BadInput(
            f"{path} is a record of the newer shape {shape}{_opened(driver)}",
            f"this program reads {THIS}: install the newer one; nothing was changed",
        )
    lacks = lacking(driver, ADDED if shape.older else ()) if shape.number == HEAD else ""
    if lacks:
        raise BadInput(
            f"{path} is a record of shape {shape} without {lacks}{_opened(driver)}",
            "a program between two releases made it: read it with that one, and begin a new home "
            "with this one; nothing was changed",
        )
    if shape.older and not older_too:
        raise BadInput(
            f"{path} is a record of the older shape {shape}{_opened(driver)}",
            f"this program reads {THIS}: start the station once (`station run`), which brings the "
            f"record up to date{' after a backup' * (shape.number != HEAD)}; nothing was changed",
        )
    if not shape.older:
        _WHOLE.add((path, schema))
    return shape


def lacking(driver: sqlite3.Connection, but: Collection[Column] = ()) -> str:
    """The first column or table, in words, that a file lacks of those declared; else empty.

    Args:
        driver: reads the file.
        but: what may be missing.
    """
    there: set[Column] = set(driver.execute(_COLUMNS))
    tables = {table for table, _ in there}
    for table, column in _declared():
        if table not in tables:
            return f"table {table}"
        if (table, column) not in there and (table, column) not in but:
            return f"column {column} of table {table}"
    return ""


@lru_cache(maxsize=1)
def _declared() -> tuple[Column, ...]:
    from station.store.tables import identity  # which knows all others; tables ask the engine

    return tuple(
        (table.name, column.name)
        for table in identity.metadata.sorted_tables
        for column in table.columns
    )


def _opened(driver: sqlite3.Connection) -> str:
    """Which version last opened a record for writing, in words; empty where nobody knows."""
    with suppress(sqlite3.Error, ValueError, KeyError, TypeError):
        (canonical,) = driver.execute(_LAST_START).fetchone()
        start = json.loads(canonical)
        return f", last opened by version {start['body']['software']} on {start['utc'][:10]}"
    return ""
