"""The floor of the benchmark: one row into one bare table, with the record's own pragmas."""

from __future__ import annotations

import sqlite3
from pathlib import Path


class BareTable:
    """A table of twelve columns with a primary key, a unique column and an index.

    Args:
        path: a file that does not exist yet, on the disk of the record.
    """

    def __init__(self, path: Path) -> None:
        self._connection = sqlite3.connect(path, isolation_level=None)
        self._connection.execute("PRAGMA journal_mode=WAL")
        self._connection.execute("PRAGMA synchronous=FULL")
        columns = ", ".join(f"c{number} TEXT" for number in range(9))
        self._connection.execute(
            f"CREATE TABLE bag (id INTEGER PRIMARY KEY, serial TEXT UNIQUE, at INTEGER, {columns})"
        )
        self._connection.execute("CREATE INDEX bag_at ON bag (at)")
        self._count = 0

    def insert(self) -> None:
        """Insert one row durably."""
        self._count += 1
        values = (self._count, f"A1-00-{self._count:06d}", self._count, *["twelve letters"] * 9)
        marks = ", ".join("?" * len(values))
        self._connection.execute(f"INSERT INTO bag VALUES ({marks})", values)

    def close(self) -> None:
        """Close the file."""
        self._connection.close()
