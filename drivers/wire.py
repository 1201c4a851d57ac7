"""What passes over a scale's line, kept for whoever looks: the newest bytes, each with its time.

A recording is started and stopped here while the line runs; one that fails never stops the
weighing.
"""

from __future__ import annotations

import logging
import threading
import time
from collections import deque
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from drivers.connection import PortLike
from drivers.errors import RecordingError
from drivers.recording import Recorder

_LOG = logging.getLogger(__name__)
MOST_BYTES = 16_000
"""More than ten seconds of a quick scale."""


@dataclass(frozen=True, slots=True)
class Passed:
    """Bytes that passed.

    Args:
        at_ns: steady count when they were read or written.
        data: the bytes.
        sent: they went to the scale.
    """

    at_ns: int
    data: bytes
    sent: bool = False


class WireLog:
    """Keeps the newest bytes of a line; any thread.

    Args:
        clock: gives the steady count, in nanoseconds.
        most_bytes: what is kept; older bytes are forgotten.
    """

    def __init__(
        self, clock: Callable[[], int] = time.monotonic_ns, most_bytes: int = MOST_BYTES
    ) -> None:
        self._clock, self._most = clock, most_bytes
        self._lock = threading.Lock()
        self._kept: deque[Passed] = deque()
        self._bytes = 0
        self._recorder: Recorder | None = None
        self._recording: Path | None = None
        self._broken = ""

    @property
    def recording(self) -> Path | None:
        """The file that takes in everything the scale sends; None where none does."""
        return self._recording

    @property
    def broken(self) -> str:
        """Why the last recording ended by itself; empty where it did not."""
        return self._broken

    def newest(self) -> tuple[Passed, ...]:
        """What is kept, the oldest first."""
        with self._lock:
            return tuple(self._kept)

    def received(self, data: bytes) -> None:
        """Take in what the scale sent."""
        with self._lock:
            self._keep(Passed(self._clock(), data))
            if self._recorder is not None:
                try:
                    self._recorder.add(data)
                except RecordingError as fault:
                    _LOG.exception("the recording stopped")
                    with suppress(OSError):
                        self._recorder.close()
                    self._broken, self._recorder, self._recording = str(fault), None, None

    def sent(self, data: bytes) -> None:
        """Take in what was sent to the scale."""
        with self._lock:
            self._keep(Passed(self._clock(), data, sent=True))

    def record(self, path: Path) -> None:
        """Record everything the scale sends from now on, in place of a recording that goes on.

        Raises:
            RecordingError: the file cannot be made.
        """
        self.end_recording()
        recorder = Recorder(path, self._clock)
        with self._lock:
            self._recorder, self._recording, self._broken = recorder, path, ""

    def end_recording(self) -> None:
        """End the recording, if there is one; all of it is on the disk after that.

        Raises:
            RecordingError: its end may be missing.
        """
        with self._lock:
            recorder, path = self._recorder, self._recording
            self._recorder = self._recording = None
        if recorder is None:
            return
        try:
            recorder.close()
        except OSError as fault:
            raise RecordingError(
                f"recording {path}", f"its end may be missing: {(fault.strerror or '').lower()}"
            ) from fault

    def _keep(self, passed: Passed) -> None:
        self._kept.append(passed)
        self._bytes += len(passed.data)
        while self._bytes > self._most and len(self._kept) > 1:
            self._bytes -= len(self._kept.popleft().data)


class WatchedPort:
    """A port whose bytes are logged.

    Args:
        port: open.
        log: takes in what is read and written.
    """

    def __init__(self, port: PortLike, log: WireLog) -> None:
        self._port = port
        self._log = log
        self.name = port.name
        self.identity = port.identity

    def read(self) -> bytes:
        """Return what has arrived, logged."""
        chunk = self._port.read()
        if chunk:
            self._log.received(chunk)
        return chunk

    def write(self, data: bytes) -> None:
        """Send, and log it."""
        self._port.write(data)
        self._log.sent(data)

    def discard_input(self) -> None:
        """Throw away what has arrived."""
        self._port.discard_input()

    def close(self) -> None:
        """Give the port back."""
        self._port.close()
