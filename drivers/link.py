"""The thread that keeps a scale's line open: port → parser → steady readings → listener.

It opens the port, throws away what is old, asks the scale to repeat, and tells the listener of
every reading. A lost port is opened again, with growing waits, for as long as the link runs. It
says so when the scale is silent and when more frames are damaged than the line's budget allows;
while that lasts every reading carries the reason as its fault.
"""

from __future__ import annotations

import logging
import queue
import threading
import time
from collections.abc import Callable
from contextlib import closing
from functools import partial

from drivers.backoff import Backoff
from drivers.connection import Connection, Line, LinkRules, PortLike
from drivers.errors import PortError
from drivers.frames.base import FrameParser
from drivers.identity import check_same
from drivers.link_items import LinkDegraded, LinkDown, LinkItem, LinkUp
from drivers.opening import open_scale
from drivers.port import PortSettings
from drivers.steady import SteadyReader, SteadyRules
from drivers.wire import WatchedPort, WireLog
from drivers.zero_gate import ZeroGate

__all__ = ["LinkDegraded", "LinkDown", "LinkItem", "LinkRules", "LinkUp", "ScaleLink"]

_LOG = logging.getLogger(__name__)


class ScaleLink:
    """Reads one scale on a thread of its own.

    Args:
        port: settings of the port, or a function that opens it and raises PortError.
        new_parser: makes the parser of this line; called once a connection.
        steady: what makes a reading usable.
        on_item: told everything, on the link's thread; must return at once.
        clock: gives the steady count, in nanoseconds.
        backoff: waits between tries to open the port.
        rules: how the line is asked and judged.
        log: takes in everything that passes.
    """

    def __init__(
        self,
        port: PortSettings | Callable[[], PortLike],
        new_parser: Callable[[], FrameParser],
        steady: SteadyRules,
        on_item: Callable[[LinkItem], None],
        *,
        clock: Callable[[], int] = time.monotonic_ns,
        backoff: Backoff | None = None,
        rules: LinkRules | None = None,
        log: WireLog | None = None,
    ) -> None:
        self._open: Callable[[], PortLike] = (
            partial(open_scale, port) if isinstance(port, PortSettings) else port
        )
        self._name = port.url if isinstance(port, PortSettings) else ""
        shown = port.line if isinstance(port, PortSettings) and port.sets_line else ""
        self._line = Line(
            shown,
            new_parser,
            SteadyReader(steady),
            rules or LinkRules(),
            clock,
            self._say,
            ZeroGate(steady),
        )
        self._on_item = on_item
        self._log = log
        self._identity = ""
        """Of the device that gave weights; empty where it has none."""
        self._backoff = backoff or Backoff()
        self._commands: queue.SimpleQueue[bytes] = queue.SimpleQueue()
        self._stopping = threading.Event()
        self._thread = threading.Thread(target=self._serve, name="scale link")

    def start(self) -> None:
        """Start the link's thread."""
        self._thread.start()

    def stop(self, timeout_s: float = 15.0) -> None:
        """Close the port and end the thread; a link that was never started stops at once.

        A network port that is being opened ends its try first, which takes up to 8 seconds.

        Raises:
            TimeoutError: the thread did not end in time.
        """
        self._stopping.set()
        if self._thread.ident is None:
            return
        self._thread.join(timeout_s)
        if self._thread.is_alive():
            raise TimeoutError(f"the link to the scale on {self._name} did not stop in time")

    def send(self, command: bytes) -> None:
        """Send a command to the scale, from any thread; one given while the port is closed is lost.

        The answer comes to the listener. Commands go out one by one, each with its time to be
        answered.
        """
        self._commands.put(command)

    def listen_only(self, quiet: bool) -> None:
        """Ask the scale nothing for a while, and go on after that; from any thread.

        Commands given meanwhile still go out.
        """
        if quiet:
            self._line.quiet.set()
        else:
            self._line.quiet.clear()

    def take_any_device(self) -> None:
        """Open the port again and read whatever device is there; from any thread."""
        self._identity = ""
        self._line.again.set()

    # --- on the link's thread ---------------------------------------------------------------

    def _serve(self) -> None:
        epoch = 0
        while not self._stopping.is_set():
            try:
                with closing(self._opened()) as port:
                    epoch += 1
                    self._name, identity = port.name, port.identity
                    check_same(port.name, self._identity, identity)
                    self._forget_commands()
                    connection = Connection(self._line, port, epoch)
                    try:
                        connection.serve(self._stopping, self._commands)
                    finally:
                        if connection.worked:
                            self._backoff.reset()
                            self._identity = self._identity or identity
            except PortError as fault:
                self._down(str(fault))
            except Exception as fault:  # noqa: BLE001  the line must come back whatever happens
                _LOG.exception("the link to the scale failed")
                self._down(f"the program failed at the scale's line: {fault!r}; it tries again")

    def _opened(self) -> PortLike:
        port = self._open()
        return port if self._log is None else WatchedPort(port, self._log)

    def _down(self, why: str) -> None:
        wait_s = self._backoff.next_s()
        self._say(LinkDown(self._name, why, wait_s))
        self._stopping.wait(wait_s)

    def _forget_commands(self) -> None:
        """A command meant for the time before the port was lost must not act now."""
        while not self._commands.empty():
            self._commands.get()

    def _say(self, item: LinkItem) -> None:
        try:
            self._on_item(item)
        except Exception:  # noqa: BLE001  a listener may fail in any way
            _LOG.exception("the listener failed on %s", type(item).__name__)
