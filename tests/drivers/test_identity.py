"""Which port is the scale's, by what its converter says; another device at its name is refused."""

import pytest

from drivers.errors import PortError
from drivers.frames.scp0499 import Scp0499Parser
from drivers.identity import PortFacts, check_same, find, wanted
from drivers.link import LinkUp, ScaleLink
from drivers.port import PortSettings, open_port
from drivers.steady import Reading
from tests.drivers.listening import GRAMS, Listener, bare_line, frame

ONE = PortFacts("/dev/ttyUSB0", 0x12AB, 0x34, "A1")
TWIN = PortFacts("/dev/ttyUSB1", 0x12AB, 0x34, "A2")
OTHER = PortFacts("/dev/ttyUSB2", 0x12AB, 0x35, "")
BUILT_IN = PortFacts("/dev/ttyS0")
ALL = (BUILT_IN, OTHER, TWIN, ONE)


@pytest.mark.parametrize(
    ("url", "device"),
    [
        ("usb://12ab:0034/A1", "/dev/ttyUSB0"),
        ("usb://12AB:0034/A2", "/dev/ttyUSB1"),
        ("usb://12ab:0035", "/dev/ttyUSB2"),
    ],
)
def test_found_whatever_its_name_is(url: str, device: str) -> None:
    assert find(url, ALL) == device
    renamed = (PortFacts("/dev/ttyUSB7", 0x12AB, 0x34, "A1"), TWIN, PortFacts("x", 0x12AB, 0x35))
    assert find(url, renamed) in ("/dev/ttyUSB7", "/dev/ttyUSB1", "x")


@pytest.mark.parametrize(
    ("url", "words"),
    [
        ("usb://12ab:0036", "it is not there: check the plug"),
        ("usb://12ab:0034/A3", "it is not there"),
        ("usb://12ab:0034", "2 of them are there: name the serial number.*12ab:0034/A2, 12ab:0034"),
    ],
)
def test_not_found_in_words(url: str, words: str) -> None:
    with pytest.raises(PortError, match=words):
        find(url, ALL)


@pytest.mark.parametrize(
    "url", ["usb://", "usb://12ab", "usb://12ab:zz34", "hid://12ab:0034/", "usb://0x12:34"]
)
def test_address_refused(url: str) -> None:
    assert wanted(url) is None
    with pytest.raises(PortError, match="allowed is usb://VVVV:PPPP"):
        PortSettings(url)


def test_line_by_its_identity_is_a_line_of_this_machine() -> None:
    settings = PortSettings("usb://12ab:0034/A1", bytesize=7, parity="E")
    assert settings.is_tty
    with pytest.raises(PortError, match="it is not there"):
        open_port(settings)


def test_identities() -> None:
    assert [port.identity for port in (ONE, OTHER, BUILT_IN)] == ["12ab:0034/A1", "12ab:0035", ""]
    check_same("x", "", "12ab:0034")
    check_same("x", "12ab:0034", "12ab:0034")
    with pytest.raises(PortError, match="it is no USB device, the scale's is 12ab:0034"):
        check_same("x", "12ab:0034", "")


def test_pseudo_terminal_has_no_identity() -> None:
    with bare_line() as line:
        port = open_port(PortSettings(line.name))
        assert port.identity == ""
        port.close()


class Device:
    """A device that sends 254 g and is lost after ``reads`` reads."""

    name = "/dev/ttyUSB0"

    def __init__(self, identity: str, reads: int) -> None:
        self.identity = identity
        self._left = reads

    def read(self) -> bytes:
        self._left -= 1
        if self._left < 0:
            raise PortError("scale lost", "pulled")
        return frame("254")

    def write(self, data: bytes) -> None:
        return

    def discard_input(self) -> None:
        return

    def close(self) -> None:
        return


def test_another_device_at_the_scales_name_is_never_read() -> None:
    devices = [
        Device("12ab:0034/A1", 5),
        Device("99ff:0001", 5),
        Device("", 5),
        Device("12ab:0034/A1", 10**6),
    ]
    heard = Listener()
    link = ScaleLink(lambda: devices.pop(0), Scp0499Parser, GRAMS, heard)
    link._backoff._first_s = link._backoff._wait_s = 0.01
    link.start()
    try:
        heard.steady("254")
        assert "pulled" in heard.down().why
        assert "it is 99ff:0001, the scale's is 12ab:0034/A1" in heard.down().why
        assert "it is no USB device" in heard.down().why
        back = heard.next(LinkUp)
        heard.steady("254")
    finally:
        link.stop()
    epochs = {item.epoch for item in heard.items if isinstance(item, Reading)}
    assert epochs == {1, back.epoch}


def test_scanner_that_is_not_there_is_called_a_scanner() -> None:
    with pytest.raises(PortError, match=r"scanner's port usb://12ab:0034 cannot be opened"):
        find("usb://12ab:0034", [], "scanner")
