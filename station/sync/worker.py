"""The thread that keeps the centre up to date, for as long as the station runs.

Tries come from a timer and not from the next bag, so a quiet line catches up too. Nothing that
happens on the way ends the thread: it says what is wrong and tries again, later and later.
"""

from __future__ import annotations

import logging
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime
from pathlib import Path
from typing import Protocol

from drivers.backoff import Backoff
from station.errors import StationError
from station.line.ports import Clock
from station.store.outlet import JournalOutlet
from station.sync.address import CentreAddress
from station.sync.batch import Pace
from station.sync.connection import CentreConnection, connect
from station.sync.delivery import Delivery, Heartbeat
from station.sync.errors import CentreGone, TakenElsewhere, TwoRecords
from station.sync.sender import Sender, backlog
from station.sync.status import Remembered, SyncState, SyncStatus, remember, remembered

_LOG = logging.getLogger(__name__)
_MOST_AHEAD_S = 300.0
"""A clock this far from the centre's is told."""
_RESTS, _MOST_REST_S = 3, 0.2
"""Rest between two pieces: so many times as long as the piece took, and the longest in seconds."""


@dataclass(frozen=True, slots=True)
class Timing:
    """How often, and how long; seconds.

    Args:
        look: how often the record is looked at for new entries.
        beat: how often the centre hears from the station.
        visit: how often the station asks the centre for what is new.
        connect: the longest a connection may take to be made.
        exchange: the longest one exchange may take.
        first, most: the first wait after a failure, and the longest.
        conflict: the wait after the centre was found to hold other entries.
    """

    look: float = 2.0
    beat: float = 60.0
    visit: float = 10.0
    connect: float = 5.0
    exchange: float = 25.0
    first: float = 0.5
    most: float = 60.0
    conflict: float = 60.0


class Visitor(Protocol):
    """Does something at the centre each time the station speaks to it."""

    def visit(self, connection: CentreConnection, wait_s: float) -> tuple[str, ...]:
        """Do it; returns what needs somebody."""
        ...

    def look(self) -> tuple[str, ...]:
        """Do what needs no centre, while there is none; returns what needs somebody."""
        ...


class NoVisitor:
    """Nothing more is to be done at the centre."""

    def visit(self, connection: CentreConnection, wait_s: float) -> tuple[str, ...]:
        """Nothing."""
        return ()

    def look(self) -> tuple[str, ...]:
        """Nothing."""
        return ()


class SyncWorker:
    """Sends what the record has to the centre; started and stopped once.

    Args:
        home: the station's folder, with a record in it.
        address: of the centre.
        software: version of the station's program.
        clock: tells the time.
        listener: hears each change of the status, on the worker's thread.
        visitor: what else is done with each heartbeat.
        timing: how often, and how long.
    """

    def __init__(
        self,
        home: Path,
        address: CentreAddress,
        software: str,
        clock: Clock,
        listener: Callable[[SyncStatus], None] = lambda _: None,
        visitor: Visitor | None = None,
        timing: Timing | None = None,
    ) -> None:
        self._home, self._address, self._software = home, address, software
        self._clock, self._listener = clock, listener
        self._visitor = visitor or NoVisitor()
        self._timing = timing or Timing()
        self._backoff = Backoff(self._timing.first, self._timing.most)
        self._pace = Pace()
        self._known = remembered(home)
        self._status = SyncStatus(contact=self._known.contact)
        self._beaten = False
        self._said: tuple[str, ...] = ()
        self._found: tuple[str, ...] = ()
        self._ended = threading.Event()
        self._nudge = threading.Event()
        self._thread = threading.Thread(target=self._work, name="sync", daemon=True)

    @property
    def status(self) -> SyncStatus:
        """How it stands now; any thread may ask."""
        return self._status

    def start(self) -> None:
        """Start the thread."""
        self._thread.start()

    def stop(self, timeout_s: float = 20.0) -> None:
        """End the thread; what is under way is broken off and sent again next time.

        Only the system's look-up of a host name cannot be broken off. It must not keep the station
        from closing its record, so the thread is then left to end with the process; it only reads.
        """
        self._ended.set()
        self._nudge.set()
        if self._thread.ident is None:
            return
        self._thread.join(timeout_s)
        if self._thread.is_alive():
            _LOG.warning("the way to the centre did not stop in %s s", timeout_s)

    def nudge(self) -> None:
        """Try now instead of at the next turn of the timer."""
        self._nudge.set()

    # --- on the thread ------------------------------------------------------------------------

    def _work(self) -> None:
        while not self._ended.is_set():
            wait = self._once()
            self._rest(wait)
        self._remember()

    def _once(self) -> float:
        """Speak to the centre for as long as it goes well; returns how long to wait then."""
        state, words, wait = SyncState.WAITING, "", 0.0
        try:
            with (
                JournalOutlet(self._home) as outlet,
                connect(self._address, "station", self._timing.connect, self._ended) as connection,
            ):
                self._speak(outlet, connection)
        except CentreGone as gone:
            words = str(gone)
        except TakenElsewhere as other:
            words = str(other)
        except TwoRecords as two:
            state, words, wait = SyncState.CONFLICT, str(two), self._timing.conflict
        except StationError as fault:
            words = str(fault)
        except Exception as bug:  # noqa: BLE001  the thread goes on and says what happened
            _LOG.exception("the way to the centre failed")
            words = f"the station has a fault ({type(bug).__name__}: {bug})"
        if not self._ended.is_set():
            self._show(replace(self._status, state=state, words=words))
            self._look_at_backlog()
        return wait or self._backoff.next_s()

    def _speak(self, outlet: JournalOutlet, connection: CentreConnection) -> None:
        owner = outlet.owner()
        delivery = Delivery(connection, owner.site, owner.station, self._timing.exchange)
        sender = Sender(outlet, delivery, self._pace)
        sender.shake_hands()
        beaten = visited = -1e9
        while not self._ended.is_set():
            if time.monotonic() - visited >= min(self._timing.visit, self._timing.beat):
                self._found = self._visitor.visit(connection, self._timing.exchange)
                self._tell()
                visited = time.monotonic()
            if time.monotonic() - beaten >= self._timing.beat:
                self._beat(sender, delivery)
                beaten = time.monotonic()
            self._send(sender)
            self._rest(self._timing.look)

    def _send(self, sender: Sender) -> None:
        left = sender.backlog()
        if not left.entries:
            self._show(replace(self._status, state=SyncState.LEVEL, words="", backlog=0,
                               oldest=None))  # fmt: skip
            return
        told = began = time.monotonic()
        try:
            for _ in sender.pieces():
                self._arrived(sender)
                # The machine and its disk belong to the line most of the time.
                if self._ended.wait(min(_MOST_REST_S, _RESTS * (time.monotonic() - began))):
                    return
                began = time.monotonic()
                if time.monotonic() - told > 1.0:
                    left, told = sender.backlog(), time.monotonic()
                    self._show(replace(self._status, state=SyncState.SENDING, words="",
                                       backlog=left.entries, oldest=left.oldest))  # fmt: skip
        except CentreGone:
            self._pace.slower()
            raise
        left = sender.backlog()
        self._remember()
        self._show(replace(self._status, state=SyncState.LEVEL, words="", backlog=left.entries,
                           oldest=left.oldest))  # fmt: skip

    def _arrived(self, sender: Sender) -> None:
        self._pace.faster()
        self._backoff.reset()
        self._heard(sender)

    def _beat(self, sender: Sender, delivery: Delivery) -> None:
        left, (epoch, head) = sender.backlog(), sender.head()
        now = self._clock.now().utc
        words = "; ".join(self._status.alarms)
        heard = delivery.beat(Heartbeat(epoch, head, left.oldest, now, self._software, words))
        self._backoff.reset()
        self._heard(sender)
        alarms = []
        if heard.other_epoch is not None and self._beaten:
            alarms.append(
                "another station speaks under this station's name: give one of them another code"
            )
        if abs(heard.ahead_s) > _MOST_AHEAD_S:
            where = "ahead of" if heard.ahead_s > 0 else "behind"
            alarms.append(
                f"this station's clock is {abs(heard.ahead_s):.0f} s {where} the centre's: set it"
            )
        if heard.quarantined:
            alarms.append(f"{heard.quarantined} entries of this station lie in quarantine: call QA")
        self._beaten = True
        self._said = tuple(alarms)
        self._tell()
        self._show(
            replace(
                self._status,
                quarantined=heard.quarantined,
                backlog=left.entries,
                oldest=left.oldest,
            )
        )

    def _tell(self) -> None:
        """Show what the heartbeat and the visit found."""
        self._show(replace(self._status, alarms=(*self._said, *self._found)))

    def _heard(self, sender: Sender) -> None:
        now: datetime = self._clock.now().utc
        marks = {epoch: mark.seq for epoch, mark in sender.marks.items()}
        self._known = Remembered(marks, now)
        self._status = replace(self._status, contact=now)

    def _look_at_backlog(self) -> None:
        """While the centre is out of reach, say how much waits for it."""
        try:
            self._found = self._visitor.look()
            self._tell()
            with JournalOutlet(self._home) as outlet:
                left = backlog(outlet, self._known.marks)
        except StationError:
            return
        self._show(replace(self._status, backlog=left.entries, oldest=left.oldest))

    def _remember(self) -> None:
        if self._known.contact is not None:
            remember(self._home, self._known)

    def _rest(self, seconds: float) -> None:
        self._nudge.wait(seconds)
        self._nudge.clear()

    def _show(self, status: SyncStatus) -> None:
        if status != self._status:
            self._status = status
            try:
                self._listener(status)
            except Exception:  # noqa: BLE001  a listener's fault must not end the thread
                _LOG.exception("nobody could be told how it stands with the centre")
