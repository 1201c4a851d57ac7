"""The plug of the simulated scale: a pseudo-terminal, or a TCP port of this machine.

A pseudo-terminal is a real tty for whoever opens it. Its name changes with every plug, as that of
a USB converter does; a link of one name in a private folder points to the present one.
"""

from __future__ import annotations

import os
import select
import shutil
import socket
import tempfile
from pathlib import Path
from typing import Protocol

if os.name == "posix":
    import tty


class Wire(Protocol):
    """One end of a line that can be plugged and unplugged; for one thread."""

    @property
    def url(self) -> str:
        """Where the other end is opened; the same after each plug."""
        ...

    def plug(self) -> None:
        """Let the other end be opened."""
        ...

    def unplug(self) -> None:
        """Take the other end away, open or not."""
        ...

    def read(self, wait_s: float) -> bytes:
        """Return what has arrived, waiting at most ``wait_s`` for it."""
        ...

    def write(self, data: bytes) -> None:
        """Send; what nobody takes is lost, as on a real line."""
        ...

    def remove(self) -> None:
        """Unplug for good and leave nothing behind."""
        ...


class PtyWire:
    """A pseudo-terminal behind a name that stays."""

    def __init__(self) -> None:
        self._folder = Path(tempfile.mkdtemp(prefix="bench-scale-"))
        self._name = self._folder / "tty-bench"
        self._ends: tuple[int, int] | None = None

    @property
    def url(self) -> str:
        """Path of the tty."""
        return str(self._name)

    def plug(self) -> None:
        """Make a new tty and let the name point to it."""
        ours, theirs = os.openpty()
        tty.setraw(theirs)
        os.set_blocking(ours, False)
        self._ends = (ours, theirs)  # theirs stays open here: no end-of-file between two users
        self._name.symlink_to(os.ttyname(theirs))

    def unplug(self) -> None:
        """Take the name away and hang the tty up."""
        if self._ends is None:
            return
        self._name.unlink()
        for end in self._ends:
            os.close(end)
        self._ends = None

    def read(self, wait_s: float) -> bytes:
        """Return what has arrived, waiting at most ``wait_s`` for it."""
        assert self._ends is not None
        ready, _, _ = select.select([self._ends[0]], [], [], max(0.0, wait_s))
        if not ready:
            return b""
        try:
            return os.read(self._ends[0], 4096)
        except OSError:
            return b""

    def write(self, data: bytes) -> None:
        """Send; what does not fit the system's buffer is lost."""
        assert self._ends is not None
        try:
            os.write(self._ends[0], data)
        except BlockingIOError:
            return

    def remove(self) -> None:
        """Unplug and remove the folder of the name."""
        self.unplug()
        shutil.rmtree(self._folder, ignore_errors=True)


class TcpWire:
    """A TCP port on this machine's loopback address, for one client at a time."""

    def __init__(self) -> None:
        self._listener: socket.socket | None = None
        self._client: socket.socket | None = None
        self._port = 0

    @property
    def url(self) -> str:
        """Address of the port."""
        return f"socket://127.0.0.1:{self._port}"

    def plug(self) -> None:
        """Listen; at the same port number each time."""
        self._listener = socket.create_server(("127.0.0.1", self._port), backlog=4)
        self._port = self._listener.getsockname()[1]

    def unplug(self) -> None:
        """Drop the client and stop listening."""
        self._drop()
        if self._listener is not None:
            self._listener.close()
            self._listener = None

    def read(self, wait_s: float) -> bytes:
        """Return what has arrived, waiting at most ``wait_s`` for it."""
        assert self._listener is not None
        watched = [self._listener] if self._client is None else [self._listener, self._client]
        ready, _, _ = select.select(watched, [], [], max(0.0, wait_s))
        if self._listener in ready:
            self._accept(self._listener)
        if self._client is None or self._client not in ready:
            return b""
        try:
            received = self._client.recv(4096)
        except OSError:
            received = b""
        if not received:
            self._drop()
        return received

    def write(self, data: bytes) -> None:
        """Send; what nobody takes is lost."""
        if self._client is None:
            return
        try:
            self._client.send(data)
        except BlockingIOError:
            return
        except OSError:
            self._drop()

    def remove(self) -> None:
        """Unplug."""
        self.unplug()

    def _accept(self, listener: socket.socket) -> None:
        client, _ = listener.accept()
        if self._client is not None:
            client.close()  # like a tty in use: one at a time
            return
        client.setblocking(False)
        client.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        self._client = client

    def _drop(self) -> None:
        if self._client is not None:
            self._client.close()
            self._client = None
