"""What is known of the station beside its scale, in words for whoever services it."""

from __future__ import annotations

import platform
import sqlite3
import sys
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path

from station.screens.service_source import Named
from station.store.engine_facts import reset_bug_words

_PARTS = ("PySide6-Essentials", "SQLAlchemy", "pyserial", "zxing-cpp", "hidapi")


def system_rows(home: Path, software: str, disk: str) -> tuple[Named, ...]:
    """Return versions, disk and record.

    Args:
        home: folder of the record.
        software: version of the station.
        disk: how full its disk is.
    """
    from station.screens.unreviewed import review_words  # reads the languages' files

    return (
        ("Station", f"{software}, Python {platform.python_version()}, {platform.system()}"),
        ("Parts", ", ".join(_versions())),
        ("SQLite", _sqlite()),
        ("Record", _record(home)),
        ("Disk", disk),
        ("Languages", review_words()),
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
    return f"{', '.join(sizes) or 'none yet'}, {home}"
