"""Small files that only the station's own user reads, written whole or not at all."""

from __future__ import annotations

import json
import os
import tempfile
from contextlib import suppress
from pathlib import Path
from typing import Any

from station.errors import EnvironmentFault


def read_bytes(file: Path) -> bytes | None:
    """Return what a file holds, or None where there is none.

    Raises:
        EnvironmentFault: it is there and cannot be read.
    """
    try:
        return file.read_bytes()
    except FileNotFoundError:
        return None
    except OSError as fault:
        raise EnvironmentFault(f"{file} cannot be read", fault.strerror or "") from fault


def read_object(file: Path) -> dict[str, Any]:
    """Return the JSON object of a file, empty where there is no file.

    Raises:
        EnvironmentFault: it cannot be read, or is no such object.
    """
    kept = read_bytes(file)
    if kept is None:
        return {}
    try:
        found = json.loads(kept)
    except ValueError as fault:
        raise EnvironmentFault(f"{file} is damaged", "set PINs and badges again") from fault
    if not isinstance(found, dict):
        raise EnvironmentFault(f"{file} is damaged", "set PINs and badges again")
    return found


def write_object(file: Path, content: dict[str, Any]) -> None:
    """Write a JSON object; see :func:`write_bytes`."""
    write_bytes(file, json.dumps(content, indent=1, sort_keys=True).encode() + b"\n")


def write_bytes(file: Path, content: bytes) -> None:
    """Write a file whole, for its owner alone, durable before this returns.

    Raises:
        EnvironmentFault: the disk does not serve; the old file stands.
    """
    try:
        file.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
        handle, name = tempfile.mkstemp(prefix=f".{file.name}.", dir=file.parent)  # mode 0600
        try:
            with os.fdopen(handle, "wb") as out:
                out.write(content)
                out.flush()
                os.fsync(out.fileno())
            Path(name).replace(file)
        except BaseException:
            with suppress(OSError):
                Path(name).unlink()
            raise
        _sync_folder(file.parent)
    except OSError as fault:
        raise EnvironmentFault(f"{file} cannot be written", fault.strerror or "") from fault


def _sync_folder(folder: Path) -> None:
    """Make the new name durable, where a folder can be synced."""
    if os.name != "posix":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
