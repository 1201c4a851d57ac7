"""How much room the disk of the record has, and the file that keeps some of it in reserve."""

from __future__ import annotations

import os
import shutil
from contextlib import suppress
from pathlib import Path

from station.core.room import Space
from station.store.engine import database

_CHUNK = bytes(65536)


def space_of(home: Path) -> Space:
    """Room on the medium of a record's folder.

    Raises:
        OSError: the medium cannot be asked.
    """
    usage = shutil.disk_usage(home)
    log = 0
    with suppress(OSError):  # a record that is closed has none
        log = database(home).with_name("station.sqlite-wal").stat().st_size
    return Space(usage.used, usage.free, log)


class Reserve:
    """A file in the home that holds room and nothing else.

    Args:
        home: folder of the record.
    """

    def __init__(self, home: Path) -> None:
        self._path = home / "station.reserve"

    @property
    def size(self) -> int:
        """Bytes it holds; 0 where it is not there."""
        try:
            return self._path.stat().st_size
        except OSError:
            return 0

    def lay(self, size: int) -> bool:
        """Take so many bytes of the disk; whether they are held. A part of them is given back."""
        try:
            with self._path.open("wb") as file:
                if hasattr(os, "posix_fallocate"):
                    os.posix_fallocate(file.fileno(), 0, size)
                else:  # a hole would hold nothing
                    for start in range(0, size, len(_CHUNK)):
                        file.write(_CHUNK[: size - start])
        except OSError:
            self.let_go()
            return False
        return True

    def let_go(self) -> None:
        """Give the room back."""
        with suppress(OSError):
            self._path.unlink(missing_ok=True)
