"""Builds all projections again from the journal, in one transaction."""

from __future__ import annotations

import sqlite3
from pathlib import Path

from sqlalchemy import delete, select
from sqlalchemy.exc import DBAPIError

from station.errors import EnvironmentFault
from station.store.chain import Chain
from station.store.damage import Damage
from station.store.engine import database, reading, writer_engine
from station.store.faults import explain
from station.store.heads import read_head
from station.store.lock import HomeLock
from station.store.tables import PROJECTIONS, identity
from station.store.verify import replay


class JournalBroken(EnvironmentFault):
    """The journal does not hold, so nothing can be built from it."""


def rebuild(home: Path) -> int:
    """Build the tables of a stopped station again from its journal.

    Returns:
        The number of journal entries they were built from.

    Raises:
        BadInput: there is no record in ``home``, or it has another shape.
        JournalBroken: the journal does not hold; the file is as it was.
        EnvironmentFault: the station is running or the disk does not serve; the file is as it was.
    """
    path = database(home)
    with reading(home) as connection:  # what is no record of this shape is left without a lock
        connection.execute(select(identity)).first()
    lock = HomeLock(home)
    engine = writer_engine(path)
    try:
        with engine.connect() as connection, connection.begin():
            for table in reversed(PROJECTIONS):
                connection.execute(delete(table))
            chain = Chain(connection, read_head(home))
            replay(chain, connection)
        return chain.entries
    except Damage as damage:
        raise JournalBroken(
            "the journal does not hold, nothing was rebuilt", damage.why
        ) from damage
    except (DBAPIError, sqlite3.Error) as fault:
        raise EnvironmentFault(f"cannot rebuild {path}", explain(fault).words) from fault
    finally:
        engine.dispose()
        lock.release()
