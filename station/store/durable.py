"""Files that are whole or not there, whatever happens in between."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path


def sync_folder(folder: Path) -> None:
    """Bring a folder's entries to the disk, where the system can: not on Windows."""
    with suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def write_whole(path: Path, content: bytes) -> None:
    """Write a file beside its place, bring it to the disk, and only then give it its name.

    Raises:
        OSError: it cannot be written; what was there is there still.
    """
    unfinished = path.with_name(f"{path.name}.unfinished")
    with unfinished.open("wb") as file:
        file.write(content)
        file.flush()
        os.fsync(file.fileno())
    unfinished.replace(path)
    sync_folder(path.parent)
