"""A scanner on a real serial line, as far as the station's listeners."""

import os
import pty
import threading
import tty

import pytest

from station.app.scanner_line import scanner_link
from station.config.packhouse import ScalePort, ScannerSettings

WAIT_S = 10


class Heard:
    """Keeps what was scanned and said."""

    def __init__(self):
        self.scans, self.words = [], []
        self.changed = threading.Condition()

    def scan(self, identifier, data):
        self._keep(self.scans, (identifier, data))

    def say(self, words):
        self._keep(self.words, words)

    def _keep(self, kept, value):
        with self.changed:
            kept.append(value)
            self.changed.notify_all()

    def nag(self, do, holds):
        """Do something until it had its effect: what comes before the port is open is dropped."""
        with self.changed:
            while not holds():
                do()
                self.changed.wait(0.2)

    def wait(self, holds):
        with self.changed:
            assert self.changed.wait_for(holds, WAIT_S)


@pytest.fixture
def line():
    """Both ends of a serial line."""
    ours, theirs = pty.openpty()
    tty.setraw(ours)
    tty.setraw(theirs)
    yield ours, os.ttyname(theirs)
    os.close(theirs)
    os.close(ours)


def settings(url):
    return ScannerSettings(ScalePort(url, 9600, 8, "none", 1))


def test_scans_and_refusals_reach_the_station(line):
    wire, name = line
    heard = Heard()
    link = scanner_link(settings(name), heard.scan, heard.say)
    link.start()
    try:
        heard.nag(lambda: os.write(wire, b"LF-101\r"), lambda: heard.scans)
        os.write(wire, b"]C10109521234543213\x1d10TR26-118\r\n")
        heard.wait(lambda: heard.scans[-1][0] == "]C1")
        os.write(wire, b"bad\x01code\r")
        heard.wait(lambda: heard.words)
    finally:
        link.stop()
    assert heard.scans[0] == ("", "LF-101")
    assert heard.scans[-1] == ("]C1", "0109521234543213\x1d10TR26-118")
    assert "Scan again" in heard.words[0]


def test_a_scanner_that_is_not_there_is_said_in_words(tmp_path):
    heard = Heard()
    link = scanner_link(settings(str(tmp_path / "nothing")), heard.scan, heard.say)
    link.start()
    try:
        heard.wait(lambda: heard.words)
    finally:
        link.stop()
    assert heard.words[0].startswith("No scanner: ")


def test_a_usb_scanner_is_opened_as_one():
    heard = Heard()
    link = scanner_link(settings("hid://"), heard.scan, heard.say)
    link.start()
    try:
        heard.wait(lambda: heard.words)
    finally:
        link.stop()
    assert "USB bar-code scanners" in heard.words[0]
