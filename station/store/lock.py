"""Keeps a second station out of a home folder.

The lock is an exclusive transaction on an empty SQLite file, held as long as the store is open. The
system lets go of it when the process ends, however it ends, on every platform.
"""

from __future__ import annotations

import sqlite3
from pathlib import Path

from station.errors import EnvironmentFault

LOCK = "station.lock"
"""The file in the home; made by the first lock."""


class HomeLock:
    """Held from construction to :meth:`release`.

    Raises:
        EnvironmentFault: another process, or this one, has the folder's store open.
    """

    def __init__(self, home: Path) -> None:
        path = home / LOCK
        try:
            self._connection = sqlite3.connect(
                path, isolation_level=None, timeout=0, check_same_thread=False
            )
        except sqlite3.Error as fault:
            raise EnvironmentFault(f"cannot open {path}", str(fault)) from fault
        try:
            self._connection.execute("PRAGMA journal_mode=OFF")
            self._connection.execute("BEGIN EXCLUSIVE")
        except sqlite3.Error as fault:
            self._connection.close()
            if fault.sqlite_errorname == "SQLITE_BUSY":
                raise EnvironmentFault(
                    f"{home} is in use by another station",
                    "one station has one folder: stop the other one, or give another folder",
                ) from fault
            raise EnvironmentFault(f"cannot lock {path}", str(fault)) from fault

    def release(self) -> None:
        """Let another process in."""
        self._connection.close()
