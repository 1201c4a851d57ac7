"""Puts TLS before a server that was built without: the first bytes of PostgreSQL's own handshake.

A client asks with eight bytes (length 8, code 80877103); the answer is one S, and TLS begins
(PostgreSQL documentation, "Frontend/Backend Protocol", section "SSL Session Encryption").
"""

import socket
import ssl
import threading
from contextlib import suppress
from pathlib import Path

from tests.station.sync.certificates import Pem

_ASKED = bytes.fromhex("0000000804d2162f")


class TlsFront:
    """Takes TLS on a port of its own and speaks plainly to the server behind.

    Args:
        port: of the server behind.
        folder: for its certificate.
        shown: certificate and key it shows.
        clients: certificate of the authority that clients must come from, or None for any client.
    """

    def __init__(self, port: int, folder: Path, shown: Pem, clients: bytes | None = None) -> None:
        certificate, key = folder / "front.pem", folder / "front.key"
        certificate.write_bytes(shown.certificate)
        key.write_bytes(shown.key)
        self._context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
        self._context.load_cert_chain(certificate, key)
        if clients is not None:
            self._context.verify_mode = ssl.CERT_REQUIRED
            self._context.load_verify_locations(cadata=clients.decode())
        self._to = port
        self._listener = socket.create_server(("127.0.0.1", 0))
        self._listener.settimeout(0.1)
        self.port = self._listener.getsockname()[1]
        self.spoken = 0
        """Pieces that came through."""
        self._ended = threading.Event()
        self._threads = [threading.Thread(target=self._work, name="tls front")]
        self._threads[0].start()

    def close(self) -> None:
        self._ended.set()
        for thread in self._threads:
            thread.join(10)
        self._listener.close()

    def __enter__(self) -> "TlsFront":
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def _work(self) -> None:
        while not self._ended.is_set():
            try:
                client, _ = self._listener.accept()
            except TimeoutError:
                continue
            thread = threading.Thread(target=self._serve, args=(client,), name="tls front")
            self._threads.append(thread)
            thread.start()

    def _serve(self, client: socket.socket) -> None:
        client.settimeout(5)
        with suppress(OSError), client:
            if client.recv(8) != _ASKED:
                return
            client.sendall(b"S")
            with (
                self._context.wrap_socket(client, server_side=True) as inside,
                socket.create_connection(("127.0.0.1", self._to), 5) as server,
            ):
                back = threading.Thread(
                    target=self._forward, args=(server, inside), name="tls front"
                )
                back.start()
                self._forward(inside, server)
                back.join(10)

    def _forward(self, source: socket.socket, target: socket.socket) -> None:
        source.settimeout(0.1)
        try:
            while not self._ended.is_set():
                try:
                    piece = source.recv(65536)
                except TimeoutError:
                    continue
                if not piece:
                    break
                self.spoken += 1
                target.sendall(piece)
            target.shutdown(socket.SHUT_WR)
        except OSError:
            for end in (source, target):
                with suppress(OSError):
                    end.shutdown(socket.SHUT_RDWR)
