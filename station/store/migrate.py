"""Brings a database file to the shape this program knows.

An existing file is backed up first. The change runs on a connection of its own with foreign keys
off, in one transaction: rebuilding a table with them on either fails or, with ON DELETE CASCADE,
takes the children along. Before the commit every foreign key is checked.
"""

from __future__ import annotations

import logging
import os
import sqlite3
from contextlib import closing
from pathlib import Path

from sqlalchemy import Connection
from sqlalchemy.exc import DBAPIError

from station.errors import EnvironmentFault
from station.store.bring_up import bring_up
from station.store.engine import migration_engine, read_only_uri
from station.store.faults import explain
from station.store.shape import HEAD, Shape, check_shape

# Alembic tells its progress from its first import on; that belongs on no one's screen.
logging.getLogger("alembic").setLevel(logging.WARNING)

SCRIPTS = Path(__file__).with_name("migrations")

_VERSION_TABLE = (
    "CREATE TABLE IF NOT EXISTS alembic_version (version_num TEXT NOT NULL,"
    " CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)) STRICT"
)


def upgrade(path: Path, scripts: Path = SCRIPTS, head: str = HEAD) -> Path | None:
    """Create the file or bring it to the newest shape.

    Args:
        path: the database file; no other connection may have it open for writing.
        scripts: folder of migrations.
        head: the revision to reach.

    Returns:
        The backup made before the change, or None when nothing was there to back up or to do.

    Raises:
        BadInput: the file is no station record, or a newer program wrote it.
        EnvironmentFault: the disk does not serve; the file is as it was.
    """
    try:
        found = _found(path)
        if found is not None and found.number == head:
            if found.older:
                _run(path, scripts, head)  # no table changes: there is nothing to back up for
            return None
        backup = None if found is None else _back_up(path, found.number)
        _run(path, scripts, head)
        return backup
    except (DBAPIError, sqlite3.Error) as fault:
        raise EnvironmentFault(f"cannot bring {path} up to date", explain(fault).words) from fault
    except OSError as fault:
        raise EnvironmentFault(f"cannot back up {path}", str(fault)) from fault


def look(path: Path) -> None:
    """See that a file can be opened for writing, or made, without changing anything.

    Raises:
        BadInput: the file is no station record, or another program than this one wrote it.
        EnvironmentFault: it cannot be read.
    """
    try:
        _found(path)
    except sqlite3.Error as fault:
        raise EnvironmentFault(f"cannot read {path}", explain(fault).words) from fault


def _found(path: Path) -> Shape | None:
    """Return the shape of the file, None for a missing or empty one."""
    if not path.exists():
        return None
    with closing(sqlite3.connect(read_only_uri(path), uri=True)) as driver:
        return check_shape(driver, path.resolve(), older_too=True)


def _back_up(path: Path, revision: str) -> Path:
    """Copy the file, sync the copy, check it, and only then give it its name."""
    number = 1
    while (backup := path.with_name(f"{path.stem}.shape-{revision}.{number}.sqlite")).exists():
        number += 1
    unfinished = backup.with_suffix(".unfinished")
    with (
        closing(sqlite3.connect(path)) as source,
        closing(sqlite3.connect(unfinished)) as target,
    ):
        source.backup(target)
        target.execute("PRAGMA journal_mode=DELETE")
        (verdict,) = target.execute("PRAGMA quick_check").fetchone()
    if verdict != "ok":
        raise EnvironmentFault(f"the backup of {path} is damaged", str(verdict))
    with unfinished.open("rb+") as copy:
        os.fsync(copy.fileno())
    unfinished.replace(backup)
    return backup


def _run(path: Path, scripts: Path, head: str) -> None:
    from alembic import command
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(scripts).replace("%", "%%"))
    engine = migration_engine(path)
    try:
        with engine.connect() as connection, connection.begin():
            connection.exec_driver_sql(_VERSION_TABLE)
            config.attributes["connection"] = connection
            command.upgrade(config, head)
            bring_up(connection)
            _check_foreign_keys(connection, path)
    finally:
        engine.dispose()


def _check_foreign_keys(connection: Connection, path: Path) -> None:
    broken = connection.exec_driver_sql("PRAGMA foreign_key_check").first()
    if broken is not None:
        raise EnvironmentFault(
            f"cannot bring {path} up to date",
            f"row {broken[1]} of table {broken[0]} refers to nothing; the file is as it was",
        )
