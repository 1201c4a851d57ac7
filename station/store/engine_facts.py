"""What stands between the record and the disk: SQLite's version, its settings, a known fault."""

from __future__ import annotations

import sqlite3
from dataclasses import dataclass
from pathlib import Path

from station.store.engine import WRITER, database, reading
from station.store.prepared import driver_of

_FIRST_AFFECTED = (3, 7, 0)
_FIXED = ((3, 51, 3), (3, 53, 0))  # 3.52.0 was withdrawn
"""SQLite, release history: "Fix the WAL-reset database corruption bug" (3.53.0, and 3.51.3)."""


@dataclass(frozen=True, slots=True)
class EngineFacts:
    """What a service person wants to know of the database engine.

    Args:
        version: of SQLite, such as ``3.40.1``.
        affected: this version has the WAL-reset bug.
        words: what that means here.
        journal_mode: as the file has it.
        pragmas: what the writing connection sets and reads back before it writes.
        page_size: bytes.
        pages: of the file.
        log_bytes: size of the log beside the file; 0 without one.
    """

    version: str
    affected: bool
    words: str
    journal_mode: str
    pragmas: tuple[tuple[str, str], ...]
    page_size: int
    pages: int
    log_bytes: int


def has_reset_bug(version: tuple[int, int, int]) -> bool:
    """Whether a version of SQLite can corrupt a WAL file when two connections write at once."""
    if version < _FIRST_AFFECTED:
        return False
    return not any(version >= fixed and version[:2] == fixed[:2] for fixed in _FIXED) and (
        version < _FIXED[-1]
    )


def reset_bug_words() -> str:
    """What the version of SQLite in use means for the record."""
    if has_reset_bug(sqlite3.sqlite_version_info):
        return (
            "this version can damage a file that two connections write at once; the station "
            "writes and checkpoints through one, so it cannot happen here"
        )
    return "the known fault of older versions is mended in this one"


def engine_facts(home: Path) -> EngineFacts:
    """Return the facts of the record in ``home``.

    Raises:
        BadInput: there is no record in ``home``.
        EnvironmentFault: it cannot be read.
    """
    affected = has_reset_bug(sqlite3.sqlite_version_info)
    with reading(home) as connection:
        ask = driver_of(connection).execute
        (mode,), (size,), (pages,) = (
            ask(f"PRAGMA {name}").fetchone() for name in ("journal_mode", "page_size", "page_count")
        )
    log = database(home).with_name("station.sqlite-wal")
    return EngineFacts(
        version=sqlite3.sqlite_version,
        affected=affected,
        words=reset_bug_words(),
        journal_mode=str(mode),
        pragmas=tuple((name, str(kept)) for name, _, kept in WRITER if kept is not None),
        page_size=int(size),
        pages=int(pages),
        log_bytes=log.stat().st_size if log.exists() else 0,
    )
