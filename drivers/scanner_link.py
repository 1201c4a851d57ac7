"""The thread that keeps a scanner's line open: port → scans → listener."""

from __future__ import annotations

import logging
import threading
import time
from collections.abc import Callable
from contextlib import closing
from dataclasses import dataclass
from functools import partial

from drivers.backoff import Backoff
from drivers.connection import PortLike
from drivers.errors import PortError
from drivers.identity import check_same
from drivers.port import PortSettings, open_port
from drivers.scanner import Refused, Scan, ScanReader, ScanRules

_LOG = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class ScannerUp:
    """The scanner's port is open."""

    port: str


@dataclass(frozen=True, slots=True)
class ScannerDown:
    """The scanner's port is lost or cannot be opened; ``why`` says the cause and what to do."""

    why: str


ScannerItem = Scan | Refused | ScannerUp | ScannerDown


class ScannerLink:
    """Reads one scanner on a thread of its own; a lost port is opened again.

    Args:
        port: settings of the port, or a function that opens it and raises PortError.
        on_item: told everything, on the link's thread; must return at once.
        rules: what a scan may be.
        clock: gives the steady count, in nanoseconds.
        backoff: waits between tries to open the port.
    """

    def __init__(
        self,
        port: PortSettings | Callable[[], PortLike],
        on_item: Callable[[ScannerItem], None],
        rules: ScanRules | None = None,
        *,
        clock: Callable[[], int] = time.monotonic_ns,
        backoff: Backoff | None = None,
    ) -> None:
        self._open: Callable[[], PortLike] = (
            partial(open_port, port) if isinstance(port, PortSettings) else port
        )
        self._on_item = on_item
        self._rules = rules or ScanRules()
        self._identity = ""
        """Of the device that gave scans; empty where it has none."""
        self._clock = clock
        self._backoff = backoff or Backoff()
        self._stopping = threading.Event()
        self.state = "not open yet"
        """How the line is, in words; any thread may read it."""
        self._thread = threading.Thread(target=self._work, name="scanner link")

    def start(self) -> None:
        """Start the link's thread."""
        self._thread.start()

    def stop(self, timeout_s: float = 15.0) -> None:
        """Close the port and end the thread; a link that was never started stops at once.

        Raises:
            TimeoutError: the thread did not end in time.
        """
        self._stopping.set()
        if self._thread.ident is None:
            return
        self._thread.join(timeout_s)
        if self._thread.is_alive():
            raise TimeoutError("the link to the scanner did not stop in time")

    def _work(self) -> None:
        told = ""
        while not self._stopping.is_set():
            try:
                with closing(self._open()) as port:
                    identity = port.identity
                    check_same(port.name, self._identity, identity, "scanner")
                    told = ""
                    self._serve(port, identity)
            except PortError as fault:
                if str(fault) != told:  # a scanner that is not there is said once
                    told = str(fault)
                    self._say(ScannerDown(told))
            except Exception as fault:  # noqa: BLE001  the line must come back whatever happens
                _LOG.exception("the link to the scanner failed")
                self._say(ScannerDown(f"the program failed at the scanner's line: {fault!r}"))
            self._stopping.wait(0 if self._stopping.is_set() else self._backoff.next_s())

    def _serve(self, port: PortLike, identity: str) -> None:
        port.discard_input()
        self._say(ScannerUp(port.name))
        reader = ScanReader(self._rules)
        while not self._stopping.is_set():
            chunk = port.read()
            for item in reader.feed(chunk, self._clock()):
                self._backoff.reset()
                if isinstance(item, Scan):
                    self._identity = self._identity or identity
                self._say(item)

    def _say(self, item: ScannerItem) -> None:
        if isinstance(item, ScannerUp):
            self.state = f"{item.port} is open"
        elif isinstance(item, ScannerDown):
            self.state = item.why
        try:
            self._on_item(item)
        except Exception:  # noqa: BLE001  a listener may fail in any way
            _LOG.exception("the listener failed on %s", type(item).__name__)
