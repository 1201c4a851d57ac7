"""A server of RFC 2217 for one client: pyserial's own, in front of a tty."""

import select
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import serial
import serial.rfc2217


@contextmanager
def rfc2217_server(path: str) -> Iterator[tuple[str, threading.Event]]:
    leave = threading.Event()
    with (
        Tty(path, timeout=0, exclusive=True) as device,
        socket.create_server(("127.0.0.1", 0)) as listener,
    ):
        thread = threading.Thread(target=serve_rfc2217, args=(device, listener, leave))
        thread.start()
        try:
            yield f"rfc2217://127.0.0.1:{listener.getsockname()[1]}", leave
        finally:
            leave.set()
            thread.join()


class Tty(serial.Serial):
    """A pseudo-terminal has no modem lines; here they stand still."""

    cts = dsr = ri = cd = True

    def _update_rts_state(self) -> None:
        return

    def _update_dtr_state(self) -> None:
        return


class Out:
    """What the server answers by itself."""

    def __init__(self, client: socket.socket) -> None:
        self.write = client.sendall


def serve_rfc2217(device: Any, listener: socket.socket, leave: threading.Event) -> None:
    client, _ = listener.accept()
    with client:
        manager = serial.rfc2217.PortManager(device, Out(client))
        while not leave.is_set():
            ready, _, _ = select.select([client, device], [], [], 0.05)
            if client in ready:
                received = client.recv(1024)
                if not received:
                    return
                device.write(b"".join(manager.filter(received)))
            if device in ready:
                client.sendall(b"".join(manager.escape(device.read(1024))))
