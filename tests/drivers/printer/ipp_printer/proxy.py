"""A TCP proxy that spoils a connection the way networks do: cut, stalled, or with no way back."""

from __future__ import annotations

import selectors
import socket
import threading
from dataclasses import dataclass
from types import TracebackType
from typing import Self


@dataclass(frozen=True, slots=True)
class Spoil:
    """What happens to one connection.

    Args:
        cut_after: the connection is reset once so many octets have gone to the printer.
        cut_reply_after: it is reset once more octets than these came back, all of them dropped.
        stall: everything goes to the printer, nothing comes back, and the connection stays.
        garble: octets sent back in place of the printer's.
        drip_s: octets of the reply go back one by one, this many seconds apart.
        about: only a connection that carried these octets to the printer is spoilt.
    """

    cut_after: int | None = None
    cut_reply_after: int | None = None
    stall: bool = False
    garble: bytes | None = None
    drip_s: float = 0.0
    about: bytes = b""


class Proxy:
    """Stands before a port; each connection is spoilt by the next of ``plan``, then none is."""

    def __init__(self, port: int, *plan: Spoil | None) -> None:
        self._target = port
        self._plan = list(plan)
        self._listener = socket.create_server(("127.0.0.1", 0))
        self.port = int(self._listener.getsockname()[1])
        self.address = f"ipp://localhost:{self.port}/ipp/print"
        self.sent: list[bytearray] = []
        """What came in for the printer, by connection."""
        self.standing: Spoil | None = None
        """Spoils every connection once the plan is through."""
        self._stop = threading.Event()
        self._wake, self._woken = socket.socketpair()
        self._threads = [threading.Thread(target=self._accept, name="proxy")]

    def __enter__(self) -> Self:
        self._threads[0].start()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self._stop.set()
        self._wake.close()
        for thread in self._threads:
            thread.join(10)
        self._listener.close()
        self._woken.close()

    def mend(self) -> None:
        """Spoil nothing from now on."""
        self._plan.clear()
        self.standing = None

    def _accept(self) -> None:
        with selectors.DefaultSelector() as ready:
            ready.register(self._listener, selectors.EVENT_READ)
            ready.register(self._woken, selectors.EVENT_READ)
            while not self._stop.is_set():
                if any(key.fileobj is self._listener for key, _ in ready.select()):
                    near, _ = self._listener.accept()
                    spoil = self._plan.pop(0) if self._plan else self.standing
                    self.sent.append(bytearray())
                    thread = threading.Thread(
                        target=self._carry,
                        args=(near, spoil or Spoil(), self.sent[-1]),
                        name="proxy carrier",
                    )
                    self._threads.append(thread)
                    thread.start()

    def _carry(self, near: socket.socket, spoil: Spoil, sent: bytearray) -> None:
        """Carry octets both ways until an end, or the spoil, closes."""
        came = 0
        try:
            far = socket.create_connection(("localhost", self._target), 5)
        except OSError:
            near.close()
            return
        with near, far, selectors.DefaultSelector() as ready:
            for one in (near, far, self._woken):
                ready.register(one, selectors.EVENT_READ)
            while not self._stop.is_set():
                for key, _ in ready.select():
                    if key.fileobj is self._woken:
                        return
                    source = near if key.fileobj is near else far
                    try:
                        octets = source.recv(65536)
                    except ConnectionError:
                        return
                    if source is near:
                        sent += octets
                        if spoil.cut_after is not None and len(sent) >= spoil.cut_after:
                            far.sendall(octets[: len(octets) - (len(sent) - spoil.cut_after)])
                            _reset(near)
                            return
                        if not octets:
                            return
                        far.sendall(octets)
                        continue
                    if spoil.about not in sent:
                        spoil = Spoil()
                    came += len(octets)
                    if spoil.cut_reply_after is not None and came > spoil.cut_reply_after:
                        _reset(near)
                        return
                    if spoil.garble is not None and octets:
                        near.sendall(spoil.garble)
                        return
                    if spoil.stall:
                        if not octets:
                            ready.unregister(far)  # it is done; the near end waits on
                        continue
                    if not octets or not self._back(near, octets, spoil.drip_s):
                        return

    def _back(self, near: socket.socket, octets: bytes, drip_s: float) -> bool:
        step = 1 if drip_s else len(octets)
        for first in range(0, len(octets), step):
            try:
                near.sendall(octets[first : first + step])
            except ConnectionError:
                return False
            if drip_s and self._stop.wait(drip_s):
                return False
        return True


def _reset(connection: socket.socket) -> None:
    """Close so that the other end gets a reset, not an end."""
    connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, b"\1\0\0\0\0\0\0\0")
