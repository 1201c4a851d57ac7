"""What SQLite's errors mean for a person at the line, and whether the writer may go on.

After an I/O or sync error the state of the disk is unknown: the system marks pages clean after a
failed sync, so a second sync can succeed without the data being there (Rebello et al., "Can
Applications Recover from fsync Failures?", USENIX ATC 2020). The writer then refuses everything
until it is opened again and has read its own tail back. A full or locked disk leaves the file as it
was, so the same call may simply be tried again.
"""

from __future__ import annotations

import sqlite3
from dataclasses import dataclass

from sqlalchemy.exc import DBAPIError


@dataclass(frozen=True, slots=True)
class Explained:
    """One error of the store.

    Args:
        words: what happened and what to do.
        final: the writer must be opened again before anything else.
    """

    words: str
    final: bool


_RULES = (  # first fitting start of SQLite's error name
    ("SQLITE_FULL", "the disk is full, nothing was recorded: free some space, then go on", False),
    (
        "SQLITE_READONLY",
        "the disk or the file is read-only, nothing was recorded: make it writable, then go on",
        False,
    ),
    (
        "SQLITE_BUSY",
        "another program holds the record locked, nothing was recorded: close it, then go on",
        False,
    ),
    ("SQLITE_LOCKED", "the record is in use, nothing was recorded: try again", False),
    ("SQLITE_NOMEM", "the machine is out of memory, nothing was recorded: close programs", False),
    ("SQLITE_TOOBIG", "an entry is too long, nothing was recorded", False),
    ("SQLITE_CANTOPEN", "the file cannot be opened: check the folder and its rights", True),
    ("SQLITE_CORRUPT", "the file is damaged: keep it as it is and restore the last backup", True),
    (
        "SQLITE_NOTADB",
        "the file is no station record, or its head is damaged: give the right folder, or keep the "
        "file as it is and restore the last backup",
        True,
    ),
    (
        "SQLITE_IOERR",
        "the disk failed, and whether the last entry was recorded is not known: check the disk, "
        "then start the station again",
        True,
    ),
    (
        "SQLITE_CONSTRAINT",
        "the record does not agree with itself, nothing was recorded: run `station journal verify`",
        True,
    ),
)


def explain(fault: DBAPIError | sqlite3.Error) -> Explained:
    """Return what an error means; an unknown one is final."""
    name, origin = _name(fault)
    for start, words, final in _RULES:
        if name.startswith(start):
            return Explained(f"{words} ({name}: {origin})", final)
    return Explained(f"the store failed: start the station again ({name}: {origin})", True)


def means_damage(fault: DBAPIError | sqlite3.Error) -> bool:
    """Whether the error says that the file itself is damaged."""
    return _name(fault)[0].startswith(("SQLITE_CORRUPT", "SQLITE_NOTADB"))


def names_no_database(fault: DBAPIError | sqlite3.Error) -> bool:
    """Whether the error says that the head of the file is none of a database."""
    return _name(fault)[0].startswith("SQLITE_NOTADB")


def _name(fault: DBAPIError | sqlite3.Error) -> tuple[str, BaseException | None]:
    """Return SQLite's name of an error, or its Python one, and the error itself."""
    origin = fault.orig if isinstance(fault, DBAPIError) else fault
    return getattr(origin, "sqlite_errorname", None) or type(origin).__name__, origin
