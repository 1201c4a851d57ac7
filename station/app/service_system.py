"""What is known of the station beside its scale, in words for whoever services it."""

from __future__ import annotations

import platform
import shutil
import sqlite3
import sys
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path

from station.screens.service_source import Named
from station.store.engine_facts import reset_bug_words

_PARTS = ("PySide6-Essentials", "SQLAlchemy", "pyserial", "zxing-cpp", "hidapi")
_LOW_BYTES = 500_000_000


def system_rows(home: Path, software: str) -> tuple[Named, ...]:
    """Return versions, disk and record.

    Args:
        home: folder of the record.
        software: version of the station.
    """
    return (
        ("Station", f"{software}, Python {platform.python_version()} on {platform.system()}"),
        ("Parts", ", ".join(_versions())),
        ("SQLite", _sqlite()),
        ("Record", _record(home)),
        ("Disk", _disk(home)),
        ("Threads", f"change every {sys.getswitchinterval() * 1000:g} ms"),
    )


def _versions() -> tuple[str, ...]:
    found = []
    for name in _PARTS:
        try:
            found.append(f"{name} {version(name)}")
        except PackageNotFoundError:
            found.append(f"{name} not installed")
    return tuple(found)


def _sqlite() -> str:
    return f"{sqlite3.sqlite_version}: {reset_bug_words()}"


def _record(home: Path) -> str:
    sizes = []
    for name in ("station.sqlite", "station.sqlite-wal"):
        try:
            sizes.append(f"{name} {(home / name).stat().st_size / 1e6:.1f} MB")
        except OSError:
            continue
    return f"{', '.join(sizes) or 'none yet'} in {home}"


def _disk(home: Path) -> str:
    try:
        free = shutil.disk_usage(home).free
    except OSError as fault:
        return f"cannot be asked: {(fault.strerror or '').lower()}"
    low = ": nearly full, make room" if free < _LOW_BYTES else ""
    return f"{free / 1e9:.1f} GB free{low}"
