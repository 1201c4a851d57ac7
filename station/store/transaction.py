"""One transaction of the store after the other: all of it is durable, or nothing happened."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from types import TracebackType

from sqlalchemy import Connection
from sqlalchemy.exc import DBAPIError

from station.core.journal import JournalError
from station.line.ports import StoreFault
from station.store.engine import BEGIN, commit, roll_back
from station.store.faults import explain
from station.store.hold_ranges import UnknownFact
from station.store.journal import ChainFault
from station.store.prepared import driver_of


class Transaction:
    """A ``with`` block that is committed at its end, or undone; used again for each one.

    A class and no generator: a bag waits for it.

    Args:
        connection: the writer's.
        begun: what to do when one begins.
        undone: what to forget when nothing of it is recorded.
        committed: what to do once it is durable.
    """

    def __init__(
        self,
        connection: Connection,
        begun: Callable[[], None],
        undone: Callable[[], None],
        committed: Callable[[], None],
    ) -> None:
        self._connection = connection
        self._driver = driver_of(connection)
        self._execute = self._driver.cursor().execute
        self._begun, self._undone, self._committed = begun, undone, committed
        self.refusal = ""
        """Why nothing more is recorded, with what to do; empty while the store serves."""

    def __enter__(self) -> None:
        """Begin one.

        Raises:
            StoreFault: with what to do; nothing is recorded.
        """
        if self.refusal:
            raise StoreFault(self.refusal)
        try:
            self._execute(BEGIN)
            self._begun()
        except BaseException as fault:
            self._undo(fault)
            raise

    def __exit__(
        self,
        kind: type[BaseException] | None,
        fault: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        """Commit it; where anything failed, undo it.

        Raises:
            StoreFault: with what to do; nothing is recorded.
        """
        if fault is not None:
            self._undo(fault)
            return
        try:
            commit(self._connection, self._execute)
        except BaseException as failed:
            self._undo(failed)
            raise
        self._committed()

    def _undo(self, fault: BaseException) -> None:
        """Forget what was done, and say in words what a fault of the store means."""
        self._undone()
        roll_back(self._connection)
        if isinstance(fault, DBAPIError | sqlite3.Error):
            explained = explain(fault)
            if explained.final or self._driver.in_transaction:
                self.refusal = explained.words
            raise StoreFault(explained.words) from fault
        if isinstance(fault, ChainFault):
            self.refusal = f"{fault}: stop, keep the file and run `station journal verify`"
            raise StoreFault(self.refusal) from fault
        if isinstance(fault, UnknownFact | JournalError):
            raise StoreFault(str(fault)) from fault
