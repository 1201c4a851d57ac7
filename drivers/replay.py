"""Recordings played again as a scale: for benches, and to look at a fault twice."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterable
from pathlib import Path
from urllib.parse import parse_qs, unquote, urlsplit

from drivers.errors import PortError, RecordingError
from drivers.recording import Chunk, read_recording


class ReplayPort:
    """Plays a recording as a port; what is sent to it goes nowhere.

    Args:
        name: as the settings name it.
        chunks: what to play.
        speed: how much faster than it was recorded.
        clock: gives the steady count, in nanoseconds.
        sleep: waits for so many seconds.
    """

    READ_WAIT_S = 0.05

    def __init__(
        self,
        name: str,
        chunks: Iterable[Chunk],
        speed: float = 1.0,
        clock: Callable[[], int] = time.monotonic_ns,
        sleep: Callable[[float], None] = time.sleep,
    ) -> None:
        self._name = name
        self._chunks = list(reversed(tuple(chunks)))
        self._speed = speed
        self._clock = clock
        self._sleep = sleep
        self._began_ns: int | None = None

    @property
    def name(self) -> str:
        """The port as the settings name it."""
        return self._name

    @property
    def identity(self) -> str:
        """A recording has none."""
        return ""

    def read(self) -> bytes:
        """Return the next chunk once its time has come, after a short wait at most.

        Raises:
            PortError: the recording is over.
        """
        if not self._chunks:
            raise PortError(f"scale lost on {self._name}", "the recording is over; it starts again")
        if self._began_ns is None:
            self._began_ns = self._clock()
        due_ns = self._began_ns + round(self._chunks[-1].at_us * 1000 / self._speed)
        wait_s = (due_ns - self._clock()) / 1e9
        if wait_s > self.READ_WAIT_S:
            self._sleep(self.READ_WAIT_S)
            return b""
        if wait_s > 0:
            self._sleep(wait_s)
        return self._chunks.pop().data

    def write(self, data: bytes) -> None:
        """Nothing listens."""

    def discard_input(self) -> None:
        """Nothing waits: the recording starts with the first read."""

    def close(self) -> None:
        """End the playing."""
        self._chunks.clear()


def open_replay(url: str) -> ReplayPort:
    """Open ``replay:///path/of/recording``, or with ``?speed=10``.

    Raises:
        PortError: the recording cannot be played; names the cause.
    """
    parts = urlsplit(url)
    path = Path(unquote(parts.netloc + parts.path))
    try:
        speed = float(parse_qs(parts.query).get("speed", ["1"])[0])
        chunks = read_recording(path)
    except (ValueError, RecordingError) as fault:
        raise PortError(f"scale's port {url} cannot be opened", str(fault)) from fault
    if not 0.01 <= speed <= 1000 or not chunks:
        raise PortError(
            f"scale's port {url} cannot be opened",
            "the recording must hold something, and the speed be 0.01 to 1000",
        )
    return ReplayPort(url, chunks, speed)
