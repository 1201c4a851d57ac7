"""A connection to the centre on which every wait has an end.

A timeout kept by the server does not help when the server stands still, and the kernel goes on
acknowledging for a stopped process, so no timeout of TCP passes either. So each wait on the socket
is made here, in short steps, against a deadline that the caller sets for a whole exchange.
"""

from __future__ import annotations

import selectors
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any, TypeVar

import psycopg
from psycopg import waiting
from typing_extensions import override

from station.sync.address import CentreAddress
from station.sync.errors import REFUSALS, Abandoned, CentreGone, DeadlinePassed

if TYPE_CHECKING:
    from psycopg.abc import PQGen

_RV = TypeVar("_RV")
_STEP_S = 0.1
_SESSION = (
    "SET synchronous_commit = on",
    "SET idle_in_transaction_session_timeout = '30s'",  # a lost client must not hold its row
    "SET lock_timeout = '10s'",
    "SET statement_timeout = '120s'",
)


class CentreConnection(psycopg.Connection[Any]):
    """A connection whose waits end at :attr:`deadline`, or when :attr:`abandon` is set."""

    deadline: float = 0.0
    abandon: threading.Event | None = None

    @override
    def wait(self, gen: PQGen[_RV], interval: float = 0.0, timeout: float | None = None) -> _RV:
        """Drive one exchange; at the deadline the connection is closed, whatever it was doing."""
        with selectors.DefaultSelector() as watch:
            try:
                wants = next(gen)
                watch.register(self.pgconn.socket, wants)
                while True:
                    ready = watch.select(self._step())
                    asked = gen.send(waiting.Ready(ready[0][1] if ready else 0))
                    if asked != wants:
                        wants = asked
                        watch.modify(self.pgconn.socket, wants)
            except StopIteration as done:
                value: _RV = done.value
                return value
            except (OSError, ValueError) as fault:
                raise psycopg.OperationalError(f"the connection is gone: {fault}") from fault

    @contextmanager
    def within(self, seconds: float) -> Iterator[None]:
        """Everything inside must be over in so many seconds.

        Raises:
            CentreGone: it was not, the connection was lost, or the centre is not set up for it.
            psycopg.DataError, psycopg.IntegrityError: the centre refused a row.
        """
        self.deadline = time.monotonic() + seconds
        try:
            yield
        except REFUSALS:
            raise
        except psycopg.Error as lost:
            raise CentreGone(_first_line(lost)) from lost

    def _step(self) -> float:
        """How long to wait now; closes the connection where waiting has an end."""
        left = self.deadline - time.monotonic()
        if left <= 0:
            self.pgconn.finish()
            raise DeadlinePassed("the centre did not answer in time")
        if self.abandon is not None and self.abandon.is_set():
            self.pgconn.finish()
            raise Abandoned("the station stops")
        return min(_STEP_S, left)


def connect(
    address: CentreAddress,
    application: str,
    wait_s: float,
    abandon: threading.Event | None = None,
) -> CentreConnection:
    """Connect and set up the session.

    Raises:
        CentreGone: nobody answered in time, or whoever did was refused.
    """
    try:
        connection = CentreConnection.connect(
            address.conninfo(application, wait_s), autocommit=True, prepare_threshold=None
        )
    except psycopg.Error as lost:
        raise CentreGone(_first_line(lost)) from lost
    connection.abandon = abandon
    with connection.within(wait_s):
        for statement in _SESSION:
            connection.execute(statement.encode())
    return connection


def _first_line(fault: BaseException) -> str:
    return next(iter(str(fault).splitlines()), type(fault).__name__).strip()
