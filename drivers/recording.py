"""Byte streams on record: what a scale sent, and when; kept and read back.

A recording is ASCII text, one line a chunk: microseconds since the recording began, a space, the
bytes in hexadecimal. A line that begins with # is a comment, and the first line says what this is.
A last line cut off by a loss of power is left out when it is read.
"""

from __future__ import annotations

import errno
import os
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from threading import Thread
from typing import IO

from drivers.errors import RecordingError

HEAD = "# scale recording 1: microseconds and bytes\n"
MOST_BYTES = 16_000_000
"""Largest file; then it is put aside as FILE.1, in place of an older one."""
_SYNC_NS = 1_000_000_000
_MOST_CHUNK = 65_536
_MOST_READ = 4 * MOST_BYTES


@dataclass(frozen=True, slots=True)
class Chunk:
    """Bytes, and when they came, in microseconds since the recording began."""

    at_us: int
    data: bytes


class Recorder:
    """Writes a recording; for one thread, which never waits for the disk but to close.

    What was written is on its way to the disk a second later at most, and on it when it is closed.

    Args:
        path: of the file; one that is there is put aside.
        clock: gives the steady count, in nanoseconds.
        most_bytes: largest file.

    Raises:
        RecordingError: the file cannot be made.
    """

    def __init__(
        self,
        path: Path,
        clock: Callable[[], int] = time.monotonic_ns,
        most_bytes: int = MOST_BYTES,
    ) -> None:
        self._path = path
        self._clock = clock
        self._most = most_bytes
        self._began_ns = self._synced_ns = clock()
        self._syncing: Thread | None = None
        self._fault: OSError | None = None
        """What the disk said last to the thread that waits for it."""
        self._file = self._fresh()

    def add(self, data: bytes) -> None:
        """Take in a chunk.

        Raises:
            RecordingError: it cannot be written.
        """
        now_ns = self._clock()
        line = f"{(now_ns - self._began_ns) // 1000} {data.hex()}\n"
        try:
            if self._fault is not None:
                raise self._fault
            if self._file.tell() + len(line) > self._most:
                self.close()
                self._began_ns = now_ns
                self._file = self._fresh()
                line = f"0 {data.hex()}\n"
            self._file.write(line)
            if now_ns - self._synced_ns >= _SYNC_NS and not self._waits:
                self._file.flush()
                self._synced_ns = now_ns
                self._syncing = Thread(target=self._wait, name="recording", daemon=True)
                self._syncing.start()
        except OSError as fault:
            raise _refused(self._path, fault) from fault

    def close(self) -> None:
        """Put everything on the disk and end the recording."""
        if self._file.closed:
            return
        if self._syncing is not None:
            self._syncing.join()
        try:
            if self._fault is not None:  # a second try would find nothing left to write, and pass
                raise self._fault
            self._file.flush()
            self._sync()
        finally:
            self._file.close()

    @property
    def _waits(self) -> bool:
        return self._syncing is not None and self._syncing.is_alive()

    def _wait(self) -> None:
        try:
            self._sync()
        except OSError as fault:
            self._fault = fault

    def _sync(self) -> None:
        os.fsync(self._file.fileno())
        if not os.fstat(self._file.fileno()).st_nlink:  # what is written is in no folder any more
            raise FileNotFoundError(errno.ENOENT, os.strerror(errno.ENOENT))

    def _fresh(self) -> IO[str]:
        if self._path.exists() and not self._path.is_file():
            raise RecordingError(f"recording {self._path}", "something else than a file is there")
        try:
            if self._path.exists():
                self._path.replace(self._path.with_name(self._path.name + ".1"))
            file = self._path.open("w", encoding="ascii", newline="\n")
            file.write(HEAD)
        except OSError as fault:
            raise _refused(self._path, fault) from fault
        return file


def read_recording(path: Path) -> tuple[Chunk, ...]:
    """Return everything on a recording, in order.

    Raises:
        RecordingError: it cannot be read, or is none; names the line.
    """
    try:
        with path.open("rb") as file:
            raw = file.read(_MOST_READ + 1)
        text = raw.decode("ascii")
    except OSError as fault:
        raise _refused(path, fault) from fault
    except UnicodeDecodeError as fault:
        raise RecordingError(f"recording {path}", "is no ASCII text") from fault
    if len(raw) > _MOST_READ:
        raise RecordingError(f"recording {path}", f"is longer than {_MOST_READ} bytes")
    if not text.startswith(HEAD):
        raise RecordingError(f"recording {path}", f"does not begin with {HEAD.strip()!r}")
    return tuple(_chunks(path, text))


def _chunks(path: Path, text: str) -> Iterator[Chunk]:
    lines = text.split("\n")
    last_us = 0
    for number, line in enumerate(lines[:-1], start=1):  # after the last LF stands what is cut off
        if not line or line.startswith("#"):
            continue
        at, _, digits = line.partition(" ")
        try:
            chunk = Chunk(int(at), bytes.fromhex(digits))
        except ValueError:
            chunk = Chunk(-1, b"")
        if chunk.at_us < last_us or len(chunk.data) > _MOST_CHUNK:
            raise RecordingError(
                f"recording {path}, line {number}",
                f"is {line[:40]!r}; allowed is a number not below the one before, and bytes in hex",
            )
        last_us = chunk.at_us
        yield chunk


def _refused(path: Path, fault: OSError) -> RecordingError:
    return RecordingError(f"recording {path}", (fault.strerror or str(fault)).lower())
