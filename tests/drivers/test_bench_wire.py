"""The plug of the bench scale: the same name after each plug, nothing left, never blocking."""

import os
import socket
import termios
from collections.abc import Iterator
from pathlib import Path

import pytest

from drivers.bench_wire import PtyWire, TcpWire

SOON_S = 5.0


@pytest.fixture
def pty_wire() -> Iterator[PtyWire]:
    wire = PtyWire()
    yield wire
    wire.remove()


@pytest.fixture
def tcp_wire() -> Iterator[TcpWire]:
    wire = TcpWire()
    yield wire
    wire.remove()


def connect(wire: TcpWire) -> socket.socket:
    """Connect and let the wire take notice."""
    number = int(wire.url.rpartition(":")[2])
    client = socket.create_connection(("127.0.0.1", number), SOON_S)
    assert wire.read(SOON_S) == b""
    return client


def test_pty_is_a_raw_tty_both_ways(pty_wire: PtyWire) -> None:
    pty_wire.plug()
    end = os.open(pty_wire.url, os.O_RDWR | os.O_NOCTTY)
    assert os.isatty(end)
    assert not termios.tcgetattr(end)[3] & (termios.ECHO | termios.ICANON)
    pty_wire.write(b"\n\r\x03\x1b\xff")
    assert os.read(end, 10) == b"\n\r\x03\x1b\xff"
    os.write(end, b"\nW\r")
    assert pty_wire.read(SOON_S) == b"\nW\r"
    assert pty_wire.read(0) == b""
    os.close(end)
    assert pty_wire.read(0) == b"", "a user who leaves does not hang the line up"


def test_pty_keeps_its_name_and_hangs_up_who_has_it_open(pty_wire: PtyWire) -> None:
    name = pty_wire.url
    for _ in range(3):
        pty_wire.plug()
        assert pty_wire.url == name
        end = os.open(name, os.O_RDWR | os.O_NOCTTY)
        pty_wire.unplug()
        assert not Path(name).is_symlink()
        assert os.read(end, 10) == b""  # hung up: tty_ioctl(4), an end of file
        with pytest.raises(OSError, match="Input/output error"):
            os.write(end, b"x")
        os.close(end)
    pty_wire.unplug()
    pty_wire.remove()
    assert not Path(name).parent.exists()


def test_pty_loses_what_nobody_takes_instead_of_waiting(pty_wire: PtyWire) -> None:
    pty_wire.plug()
    for _ in range(100):
        pty_wire.write(b"x" * 4096)
    end = os.open(pty_wire.url, os.O_RDWR | os.O_NOCTTY | os.O_NONBLOCK)
    assert 0 < len(os.read(end, 1_000_000)) < 409_600
    os.close(end)


def test_tcp_both_ways_and_at_the_same_port_after_each_plug(tcp_wire: TcpWire) -> None:
    tcp_wire.plug()
    url = tcp_wire.url
    for _ in range(3):
        with connect(tcp_wire) as client:
            tcp_wire.write(b"\nhere\r")
            assert client.recv(10) == b"\nhere\r"
            client.sendall(b"\nW\r")
            assert tcp_wire.read(SOON_S) == b"\nW\r"
            tcp_wire.unplug()
            assert client.recv(10) == b""
        tcp_wire.plug()
        assert tcp_wire.url == url


def test_tcp_serves_one_and_then_the_next(tcp_wire: TcpWire) -> None:
    tcp_wire.plug()
    tcp_wire.write(b"nobody is there")
    with connect(tcp_wire) as first:
        with connect(tcp_wire) as second:
            assert second.recv(10) == b"", "closed at once"
        tcp_wire.write(b"a")
        assert first.recv(10) == b"a"
    assert tcp_wire.read(SOON_S) == b""  # it has left
    with connect(tcp_wire) as third:
        tcp_wire.write(b"b")
        assert third.recv(10) == b"b"


def test_tcp_loses_what_nobody_takes_instead_of_waiting(tcp_wire: TcpWire) -> None:
    tcp_wire.plug()
    with connect(tcp_wire) as client:
        for _ in range(400):
            tcp_wire.write(b"x" * 65_536)
        tcp_wire.unplug()
        taken = 0
        while chunk := client.recv(1 << 20):
            taken += len(chunk)
        assert 0 < taken < 400 * 65_536


def test_tcp_client_that_resets_is_forgotten(tcp_wire: TcpWire) -> None:
    tcp_wire.plug()
    client = connect(tcp_wire)
    client.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, b"\x01\0\0\0\0\0\0\0")
    client.close()
    assert tcp_wire.read(SOON_S) == b""
    tcp_wire.write(b"x")
    connect(tcp_wire).close()
