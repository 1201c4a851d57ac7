"""Adds entries to a stopped station's journal, inside a transaction that does more than that."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import Connection

from station.core.facts import Fact
from station.core.pack import Moment
from station.core.rights import STATION
from station.store.day_heads import DayHeads
from station.store.heads import SeenHead, read_head, write_head
from station.store.journal import Head, Journal
from station.store.opening import establish
from station.store.projections import Projections


class JournalEnd:
    """Adds entries to the journal outside a running station.

    Args:
        connection: inside the transaction.
        home: folder of the record.
        names: site and station.
        key: file of the key that signs heads.
        at: now.
    """

    def __init__(
        self,
        connection: Connection,
        home: Path,
        names: tuple[str, str],
        key: Path | None,
        at: Moment,
    ) -> None:
        self._connection, self._home, self.at = connection, home, at
        opened = establish(connection, *names, at, read_head(home))
        self._journal = Journal(connection, *names, opened.epoch, opened.head)
        self._heads = DayHeads(*names, key)
        self._heads.opened(connection, opened.epoch, opened.head)
        self._heads.take_key(connection, at)
        self._journal.begin()
        self._epoch = opened.epoch

    @property
    def head(self) -> Head:
        """The last entry so far."""
        return self._journal.pending

    def append(self, fact: Fact, who: str) -> None:
        """Add the entry of a fact; the tables are built later."""
        due = self._heads.due(self._connection, self.head, self.at)
        if due is not None:
            self._journal.append(due.kind, self.at, STATION, due.body())
        self._journal.append(fact.kind, self.at, who, fact.body())

    def sign(self) -> None:
        """Put a head over everything, signed where there is a key; the tables are built."""
        made = self._heads.sign(self._connection, self.head, self.at)
        entry, head = self._journal.append(made.kind, self.at, STATION, made.body())
        Projections(self._connection).apply(entry, head.row)

    def committed(self) -> None:
        """It is durable: write down, outside the file, where the journal ends now."""
        self._heads.committed()
        write_head(self._home, SeenHead(self._epoch, self.head.seq, self.head.hash.hex()))
