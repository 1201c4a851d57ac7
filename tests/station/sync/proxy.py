"""A TCP proxy that can do to a connection what networks do: cut, stall, slow down, lose a reply."""

import selectors
import socket
import threading
import time
from dataclasses import dataclass

_PIECE = 65536


@dataclass(eq=False)
class _Pair:
    client: socket.socket
    server: socket.socket
    asked: bool = False


class Proxy:
    """Forwards a port of the loopback to another; one thread, any number of connections.

    Attributes to set while it runs:
        stalled: nothing is forwarded in either direction, and nothing is closed.
        refuse: new connections are closed at once.
        rate: bytes a second in each direction, or None.
        delay_s: how long each piece waits.
        deaf: replies are read and thrown away.
        lose_reply_to: the first reply after a piece with these bytes went up is thrown away and
            the connection reset, so the server has done it and the client cannot know.
    """

    def __init__(self, port: int) -> None:
        self._to = port
        self._listener = socket.create_server(("127.0.0.1", 0))
        self.port = self._listener.getsockname()[1]
        self.stalled = self.refuse = self.deaf = False
        self.rate: int | None = None
        self.delay_s = 0.0
        self.lose_reply_to = b""
        self.accepted = self.lost = 0
        self._pairs: list[_Pair] = []
        self._lock = threading.Lock()
        self._ended = False
        self._thread = threading.Thread(target=self._work, name="proxy")
        self._thread.start()

    def cut(self) -> None:
        """Reset every connection, as a cable pulled and a router that answers RST."""
        with self._lock:
            pairs, self._pairs = self._pairs, []
        for pair in pairs:
            _drop(pair)

    def close(self) -> None:
        """End all connections and the thread."""
        self._ended = True
        self._thread.join(10)
        self.cut()
        self._listener.close()

    def __enter__(self) -> "Proxy":
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def _work(self) -> None:
        self._listener.setblocking(False)
        while not self._ended:
            with self._lock:
                pairs = list(self._pairs)
            selector = selectors.DefaultSelector()
            selector.register(self._listener, selectors.EVENT_READ)
            if not self.stalled:
                for pair in pairs:
                    try:
                        selector.register(pair.client, selectors.EVENT_READ, (pair, True))
                        selector.register(pair.server, selectors.EVENT_READ, (pair, False))
                    except (ValueError, KeyError, OSError):
                        self._forget(pair)
            for key, _ in selector.select(0.01):
                if key.data is None:
                    self._accept()
                elif not self.stalled:
                    pair, up = key.data
                    self._forward(pair, up)
            selector.close()

    def _accept(self) -> None:
        try:
            client, _ = self._listener.accept()
        except OSError:
            return
        self.accepted += 1
        if self.refuse:
            _reset(client)
            return
        try:
            server = socket.create_connection(("127.0.0.1", self._to), timeout=5)
        except OSError:
            _reset(client)
            return
        for end in (client, server):
            end.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
            end.settimeout(5)
        with self._lock:
            self._pairs.append(_Pair(client, server))

    def _forward(self, pair: _Pair, up: bool) -> None:
        source, target = (pair.client, pair.server) if up else (pair.server, pair.client)
        try:
            piece = source.recv(_PIECE if self.rate is None else max(1, self.rate // 20))
            if self._loses(pair, piece, up):
                self.lost += 1
                self._forget(pair)
                return
            if not piece:
                self._forget(pair)
                return
            if self.rate is not None:
                time.sleep(len(piece) / self.rate)
            if self.delay_s:
                time.sleep(self.delay_s)
            if up or not self.deaf:
                target.sendall(piece)
        except (OSError, ValueError):
            self._forget(pair)

    def _loses(self, pair: _Pair, piece: bytes, up: bool) -> bool:
        if up:
            pair.asked = pair.asked or bool(self.lose_reply_to and self.lose_reply_to in piece)
            return False
        return pair.asked and bool(piece)

    def _forget(self, pair: _Pair) -> None:
        with self._lock:
            if pair in self._pairs:
                self._pairs.remove(pair)
        _drop(pair)


def _drop(pair: _Pair) -> None:
    for end in (pair.client, pair.server):
        _reset(end)


def _reset(end: socket.socket) -> None:
    try:
        end.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, b"\1\0\0\0\0\0\0\0")
        end.shutdown(socket.SHUT_RDWR)
    except OSError:
        pass
    end.close()
