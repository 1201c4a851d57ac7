"""A scanner on a real tty: scans arrive, a pulled plug is said once and comes back."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from drivers.backoff import Backoff
from drivers.connection import PortLike
from drivers.errors import PortError
from drivers.port import PortSettings, open_port
from drivers.scanner import Refused, Scan, ScanRules
from drivers.scanner_link import ScannerDown, ScannerLink, ScannerUp
from tests.drivers.listening import Listener, bare_line


@contextmanager
def scanning(port: object, rules: ScanRules | None = None) -> Iterator[Listener]:
    heard = Listener()
    link = ScannerLink(port, heard, rules, backoff=Backoff(0.01, 0.02))
    link.start()
    try:
        yield heard
    finally:
        link.stop()


def test_scans_and_refusals_arrive_and_old_bytes_do_not() -> None:
    with bare_line() as line:
        line.write(b"OLD\r")
        with scanning(PortSettings(line.name)) as heard:
            assert heard.next(ScannerUp).port == line.name
            line.write(b"]C110ROM-1\r")
            assert heard.next(Scan).symbols[0].data == "10ROM-1"
            line.write(b"\x00\r")
            assert "no code of ours" in heard.next(Refused).why
            line.write(b"half")
            assert "cut off" in heard.next(Refused).why
    assert len([item for item in heard.items if isinstance(item, Scan)]) == 1


def test_lone_symbol_goes_without_another_byte() -> None:
    with (
        bare_line() as line,
        scanning(PortSettings(line.name), ScanRules(pair_ns=20_000_000)) as heard,
    ):
        heard.next(ScannerUp)
        line.write(b"ONE\rTWO\r")
        assert len(heard.next(Scan).symbols) == 2
        line.write(b"THREE\r")
        assert len(heard.next(Scan).symbols) == 1


def test_pulled_plug_is_said_once_for_each_cause_and_comes_back(tmp_path: Path) -> None:
    name = tmp_path / "tty-scanner"
    with scanning(PortSettings(str(name), what="scanner")) as heard:
        assert "scanner's port" in heard.next(ScannerDown).why
        with bare_line() as line:
            name.symlink_to(line.name)
            heard.next(ScannerUp)
            name.unlink()
        assert "scanner lost on" in heard.next(ScannerDown).why
        with bare_line() as line:
            name.symlink_to(line.name)
            heard.next(ScannerUp)
            line.write(b"AGAIN\r")
            heard.next(Scan)
    down = [item.why for item in heard.items if isinstance(item, ScannerDown)]
    assert len(down) <= 4


def test_another_device_at_the_scanners_name_gives_no_scans() -> None:
    """A scale's line that took the name sends text with an end, ten times a second."""

    scanner, scale = "12ab:0034/A1", "99ff:0001/7"
    there = [scanner]

    class Plugged:
        def __init__(self, port: PortLike, identity: str) -> None:
            self._port, self.name, self.identity = port, port.name, identity

        def read(self) -> bytes:
            if there[0] != self.identity:
                raise PortError("scanner lost", "another plug")
            return self._port.read()

        def discard_input(self) -> None:
            self._port.discard_input()

        def close(self) -> None:
            self._port.close()

    with bare_line() as line:
        heard = Listener()
        link = ScannerLink(
            lambda: Plugged(open_port(PortSettings(line.name)), there[0]),
            heard,
            backoff=Backoff(0.01, 0.02),
        )
        link.start()
        try:
            heard.next(ScannerUp)
            line.write(b"LOT-7\r")
            heard.next(Scan)
            there[0] = scale
            words = ""
            while "the scanner's is 12ab:0034/A1: plug that one in again" not in words:
                words = heard.next(ScannerDown).why
            line.write(b"\n 1G         254g  \r" * 3)
            there[0] = scanner
            heard.next(ScannerUp)
            line.write(b"LOT-8\r")
            assert heard.next(Scan).symbols[0].data == "LOT-8"
        finally:
            link.stop()


@pytest.mark.expects_log("the listener failed on ScannerUp", "the link to the scanner failed")
def test_failing_listener_and_port_do_not_end_the_link() -> None:
    class Failing(Listener):
        def __call__(self, item: object) -> None:
            super().__call__(item)
            if isinstance(item, ScannerUp):
                raise RuntimeError("a bug of the listener")

    ports = ["broken"]
    with bare_line() as line:

        def opened() -> object:
            if ports:
                raise ValueError(ports.pop())
            return open_port(PortSettings(line.name))

        heard = Failing()
        link = ScannerLink(opened, heard, backoff=Backoff(0.01, 0.02))
        link.start()
        try:
            assert "broken" in heard.next(ScannerDown).why
            heard.next(ScannerUp)
            line.write(b"LOT-7\r")
            heard.next(Scan)
        finally:
            link.stop()


def test_link_that_was_never_started_stops_at_once() -> None:
    ScannerLink(PortSettings("/dev/ttyNONE"), Listener()).stop()
