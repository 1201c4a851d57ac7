"""Where the journal of the present epoch stands in the file."""

from __future__ import annotations

from dataclasses import dataclass

from sqlalchemy import Connection, func, select

from station.errors import EnvironmentFault
from station.store.tables import identity, journal
from station.store.tree import EpochTree


@dataclass(frozen=True, slots=True)
class Standing:
    """Whose record it is and where its journal ends.

    Args:
        site: short code of the packhouse.
        station: short code of the station.
        epoch: the present one.
        seq: number of its last entry.
        row: row number of that entry.
        hash: its hash.
    """

    site: str
    station: str
    epoch: int
    seq: int
    row: int
    hash: bytes

    @property
    def first_row(self) -> int:
        """Row number of the first entry of the epoch; rows of an epoch stand close."""
        return self.row - self.seq + 1

    def tree(self, connection: Connection) -> EpochTree:
        """The tree of the present epoch."""
        return EpochTree(connection, self.epoch, self.first_row)


def standing(connection: Connection) -> Standing:
    """Return where the journal stands.

    Raises:
        EnvironmentFault: the record has no identity or no entry.
    """
    ours = connection.execute(select(identity)).one_or_none()
    last = connection.execute(
        select(journal).where(journal.c.id == select(func.max(journal.c.id)).scalar_subquery())
    ).one_or_none()
    if ours is None or last is None:
        raise EnvironmentFault("the record is empty or has lost its identity", "restore a backup")
    return Standing(ours.site, ours.station, last.epoch, last.seq, last.id, last.hash)


def epochs_of(connection: Connection) -> tuple[int, ...]:
    """Return the epochs of a journal, the newest first."""
    return tuple(first_rows(connection))


def first_rows(connection: Connection) -> dict[int, int]:
    """Return the row of the first entry of each epoch, the newest epoch first.

    Rows of an epoch stand close, so that the last entry of each tells where it began.
    """
    found: dict[int, int] = {}
    row = connection.exec_driver_sql("SELECT max(id) FROM journal").scalar_one() or 0
    while row > 0:
        entry = connection.execute(
            select(journal.c.epoch, journal.c.seq).where(journal.c.id == row)
        ).one_or_none()
        if entry is None or entry.seq < 1:
            break
        row -= entry.seq
        found[entry.epoch] = row + 1
    return found
