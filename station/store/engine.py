"""The only place that opens the station's database file.

One connection writes *and* checkpoints. SQLite's release notes for 3.51.3 describe the "WAL-reset
bug": in every earlier version since 3.7.0, two connections that write or checkpoint at the same
instant can, very rarely, corrupt a WAL database. It needs two of them, so the station has one: a
pool of a single writing connection, a lock on the home folder against a second station, and readers
that are opened ``mode=ro`` and so can neither write nor checkpoint, not even when they close. The
automatic checkpoint is off; the writer runs its own, because the automatic one hides I/O errors.

``synchronous=FULL`` syncs the log at each commit: under WAL, NORMAL may lose the last commits in a
power cut (SQLite documentation, "PRAGMA synchronous"). Pragmas can be refused without a word, so
each is read back.

The driver's own transaction handling is switched off (``isolation_level=None``) and BEGIN is sent
from an event: IMMEDIATE for the writer, because a deferred transaction that turns from reading to
writing fails at once with SQLITE_BUSY_SNAPSHOT, whatever the busy timeout.
"""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from functools import lru_cache
from pathlib import Path

from sqlalchemy import Connection, Engine, NullPool, QueuePool, StaticPool, create_engine, event
from sqlalchemy.exc import DBAPIError

from station.core.long_work import GivenUp, still_wanted
from station.errors import BadInput, EnvironmentFault
from station.store.faults import explain, means_damage
from station.store.prepared import driver_of
from station.store.shape import check_shape

_LOOK_OPS = 20_000
"""Steps of the database, about a millisecond, between two looks whether its answer is wanted."""
BUSY_MS = 5000
"""How long a statement waits for another process's lock."""

_COMMON = (
    ("busy_timeout", None, None),  # first, so that the others wait too; set from BUSY_MS
    ("foreign_keys", "ON", 1),
    ("cell_size_check", "ON", 1),
    ("trusted_schema", "OFF", 0),
    ("mmap_size", "0", 0),
)
WRITER = (
    *_COMMON,
    ("journal_mode", "WAL", "wal"),
    ("synchronous", "FULL", 2),
    ("wal_autocheckpoint", "0", 0),
)
_READER = (*_COMMON, ("query_only", "ON", 1))
_MIGRATION = tuple(("foreign_keys", "OFF", 0) if p[0] == "foreign_keys" else p for p in WRITER)

BEGIN = "BEGIN IMMEDIATE"
"""Begins the writer's transactions, on the driver's connection: SQLAlchemy's begin and commit cost
more than SQLite's."""

_Pragmas = tuple[tuple[str, str | None, str | int | None], ...]


def database(home: Path) -> Path:
    """The station's database file inside its home folder."""
    return home / "station.sqlite"


def writer_engine(path: Path) -> Engine:
    """Return the engine with the one connection that writes and checkpoints.

    Raises:
        EnvironmentFault: on connecting, when the file cannot be opened or a pragma does not hold.
    """
    engine = create_engine(
        "sqlite+pysqlite://",
        creator=_opener(path, _writing_uri, WRITER),
        poolclass=QueuePool,
        pool_size=1,
        max_overflow=0,
    )
    return _beginning(engine, BEGIN)


def commit(connection: Connection, execute: Callable[[str], object]) -> None:
    """Commit what :data:`BEGIN` began, with ``execute`` of a cursor on the driver's connection."""
    execute("COMMIT")
    if connection.in_transaction():  # a Core statement let SQLAlchemy count one too
        connection.commit()


def roll_back(connection: Connection) -> None:
    """Undo it; SQLite may have done so by itself, and then there is nothing to undo."""
    with suppress(DBAPIError, sqlite3.Error):
        connection.rollback()
        if driver_of(connection).in_transaction:
            driver_of(connection).execute("ROLLBACK")


def migration_engine(path: Path) -> Engine:
    """Return an engine like the writer's with foreign keys off, for rebuilding tables.

    The pragma does nothing inside a transaction, so it has to be set on connecting.
    """
    opener = _opener(path, _writing_uri, _MIGRATION)
    engine = create_engine("sqlite+pysqlite://", creator=opener, poolclass=NullPool)
    return _beginning(engine, BEGIN)


@lru_cache(maxsize=8)
def reader_engine(path: Path) -> Engine:
    """Return an engine that opens the file read-only for each use and closes it again."""
    opener = _opener(path, read_only_uri, _READER)
    engine = create_engine("sqlite+pysqlite://", creator=opener, poolclass=NullPool)
    return _beginning(engine, "BEGIN")


def scratch_engine() -> Engine:
    """Return an engine on a nameless database that disappears when it is disposed of."""

    def open_scratch() -> sqlite3.Connection:
        return sqlite3.connect("", isolation_level=None, check_same_thread=False)

    engine = create_engine("sqlite+pysqlite://", creator=open_scratch, poolclass=StaticPool)
    return _beginning(engine, "BEGIN")


@contextmanager
def reading(home: Path) -> Iterator[Connection]:
    """Give one consistent view of the station's database, read-only.

    Raises:
        BadInput: there is no database in ``home``, or it is none of the shape this program reads.
        EnvironmentFault: the file cannot be read.
    """
    path = record_in(home)
    with reading_file(path) as connection:
        shaped(connection, path)
        yield connection


def record_in(home: Path) -> Path:
    """Return the whole path of the station's database file.

    Raises:
        BadInput: there is none.
    """
    path = database(home).resolve()
    if not path.is_file():
        raise BadInput(f"no station record in {home}", "give the folder that holds station.sqlite")
    return path


def shaped(connection: Connection, path: Path, *, older_too: bool = False) -> None:
    """See that a file has the shape this program reads; damage is left to whoever reads it.

    Args:
        connection: to the file.
        path: of the file, for words.
        older_too: an older shape will do.

    Raises:
        BadInput: it has not; says what it is and what to do.
    """
    try:
        check_shape(driver_of(connection), path, older_too=older_too)
    except sqlite3.Error as fault:
        if not means_damage(fault):
            raise


@contextmanager
def reading_file(path: Path) -> Iterator[Connection]:
    """Give one consistent view of a database file, read-only.

    Raises:
        EnvironmentFault: the file cannot be read.
        GivenUp: nobody wants the answer any more.
    """
    wanted = still_wanted()
    try:
        with reader_engine(path).connect() as connection, connection.begin():
            if wanted is not None:
                driver_of(connection).set_progress_handler(lambda: not wanted(), _LOOK_OPS)
            yield connection
    except (DBAPIError, sqlite3.Error) as fault:
        if wanted is not None and not wanted():
            raise GivenUp from None
        raise EnvironmentFault(f"cannot read {path}", explain(fault).words) from fault


def read_only_uri(path: Path) -> str:
    """Return the address that opens a database file for reading, on a read-only medium too.

    SQLite reads a WAL database with the help of a file it makes beside it. Where none can be made
    and no log is left to be read, nothing can change either, and the file may be read as it is.
    """
    log = path.with_name(path.name + "-wal")
    frozen = not os.access(path.parent, os.W_OK) and not (log.exists() and log.stat().st_size)
    return f"{path.resolve().as_uri()}?mode=ro{'&immutable=1' if frozen else ''}"


def _writing_uri(path: Path) -> str:
    return f"{path.resolve().as_uri()}?mode=rwc"


def _opener(
    path: Path, uri_of: Callable[[Path], str], pragmas: _Pragmas
) -> Callable[[], sqlite3.Connection]:
    def open_file() -> sqlite3.Connection:
        connection = None
        try:
            connection = sqlite3.connect(
                uri_of(path),
                uri=True,
                isolation_level=None,
                check_same_thread=False,
                timeout=BUSY_MS / 1000,
                cached_statements=256,
            )
            _set_and_read_back(connection, pragmas)
        except BaseException as fault:
            if connection is not None:
                connection.close()
            if isinstance(fault, sqlite3.Error):
                raise EnvironmentFault(f"cannot open {path}", explain(fault).words) from fault
            raise
        return connection

    return open_file


def _set_and_read_back(connection: sqlite3.Connection, pragmas: _Pragmas) -> None:
    for name, value, expected in pragmas:
        if name == "busy_timeout":
            value, expected = str(BUSY_MS), BUSY_MS
        connection.execute(f"PRAGMA {name}={value}")
        row = connection.execute(f"PRAGMA {name}").fetchone()
        if row is None or row[0] != expected:
            raise EnvironmentFault(
                f"SQLite {sqlite3.sqlite_version} does not keep PRAGMA {name}={value}",
                f"it answers {row[0] if row else 'nothing'}; the file system may not allow it: "
                "keep the station's folder on a local disk",
            )


def _beginning(engine: Engine, statement: str) -> Engine:
    @event.listens_for(engine, "begin")
    def begin(connection: Connection) -> None:
        # A writer's transaction is begun on the driver's connection, where that is faster.
        if not driver_of(connection).in_transaction:
            connection.exec_driver_sql(statement)

    return engine
