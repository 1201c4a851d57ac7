"""Files that leave the station: whole or not at all, and never over one that is there."""

from __future__ import annotations

import os
import tempfile
from pathlib import Path

from station.errors import BadInput, EnvironmentFault


def check_free(path: Path, *, force: bool) -> None:
    """See that a file may be written.

    Raises:
        BadInput: it is there already and ``force`` is not given, or its folder is missing.
    """
    if path.is_dir():
        raise BadInput(f"{path}", "is a folder: name a file in it")
    if path.exists() and not force:
        raise BadInput(f"{path} is there already", "name another file, or add --force")
    if not path.absolute().parent.is_dir():
        raise BadInput(f"{path}", "its folder is not there: make it first")


def write_whole(path: Path, content: bytes) -> None:
    """Write a file so that a fault or a power cut leaves either all of it or what was there.

    Raises:
        EnvironmentFault: the disk does not serve.
    """
    try:
        handle, name = tempfile.mkstemp(prefix=f".{path.name}.", dir=path.absolute().parent)
        try:
            with os.fdopen(handle, "wb") as unfinished:
                unfinished.write(content)
                unfinished.flush()
                os.fsync(unfinished.fileno())
            Path(name).chmod(0o644)
            Path(name).replace(path)
        except BaseException:
            Path(name).unlink(missing_ok=True)
            raise
    except OSError as fault:
        raise EnvironmentFault(f"cannot write {path}", fault.strerror or str(fault)) from fault
