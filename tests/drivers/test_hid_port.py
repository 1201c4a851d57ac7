"""A weighing device through the HID library: which one, old reports, loss; the library is played.

The machine that runs the tests offers no virtual HID device, so the line ends here at the library's
own calls: enumerate, open_path, read, write, close, as hidapi 0.15 documents them.
"""

from collections import deque
from queue import Queue

import pytest

from drivers.connection import LinkRules
from drivers.conversation import LISTEN
from drivers.errors import PortError
from drivers.frames.hid_scale import SET_ZERO, HidScaleParser
from drivers.hid_port import open_hid, open_hid_scanner
from drivers.link import LinkUp, ScaleLink
from drivers.scanner import Scan, Symbol
from drivers.scanner_link import ScannerDown, ScannerItem, ScannerLink, ScannerUp
from drivers.steady import Reading, SteadyRules
from tests.drivers.frames.test_hid_scanner import DESCRIPTOR, NO_COUNT, reports
from tests.drivers.listening import Listener

STABLE = bytes.fromhex("03 04 02 00 fe 00")
OLD = bytes.fromhex("03 04 02 00 0f 00")


class Library:
    """What hidapi offers, with devices in memory."""

    def __init__(self, *entries: dict, reports: tuple[bytes, ...] = ()) -> None:
        self.entries = entries
        self.waiting = deque(reports)
        self.written: list[bytes] = []
        self.opened: list[bytes] = []
        self.gone = False

    def enumerate(self) -> list[dict]:
        return list(self.entries)

    def device(self) -> "Library":
        return self

    def open_path(self, path: bytes) -> None:
        if self.gone:
            raise OSError("open failed")
        self.opened.append(path)

    def read(self, size: int, timeout_ms: int) -> list[int]:
        if self.gone:
            raise OSError("read error")
        return list(self.waiting.popleft()) if self.waiting else []

    def write(self, data: bytes) -> int:
        self.written.append(data)
        return -1 if self.gone else len(data)

    def close(self) -> None:
        self.gone = True


def entry(number: int, **changes: object) -> dict:
    given = {
        "path": f"/dev/hidraw{number}".encode(),
        "vendor_id": 0x12AB,
        "product_id": 0x0034,
        "serial_number": f"S{number}",
        "usage_page": 0x8D,
    }
    return given | changes


MOUSE = entry(9, usage_page=1, product_id=2)


def test_the_only_weighing_device_is_found() -> None:
    library = Library(MOUSE, entry(1), reports=(OLD, STABLE))
    port = open_hid("hid://", library)
    assert library.opened == [b"/dev/hidraw1"]
    assert (port.name, port.identity) == ("hid://", "12ab:0034/S1")
    port.discard_input()
    assert port.read() == b""
    library.waiting.append(STABLE)
    assert port.read() == b"\x06" + STABLE
    port.write(SET_ZERO)
    assert library.written == [SET_ZERO]


@pytest.mark.parametrize(
    ("url", "entries", "words"),
    [
        ("hid://", (MOUSE,), "0 USB weighing devices are there; present are: none"),
        ("hid://", (entry(1), entry(2)), "2 USB weighing devices are there; .*12ab:0034/S2"),
        ("hid://12ab:0034", (entry(1), entry(2)), "name the serial number too"),
        ("hid://12ab:0035", (entry(1),), "it is not there"),
        ("hid://12ab:0034/S3", (entry(1),), "it is not there"),
    ],
)
def test_not_found_in_words(url: str, entries: tuple[dict, ...], words: str) -> None:
    with pytest.raises(PortError, match=words):
        open_hid(url, Library(*entries))


def test_one_of_two_by_its_serial_number() -> None:
    library = Library(entry(1), entry(2, serial_number=None), entry(3))
    open_hid("hid://12ab:0034/S3", library)
    assert library.opened == [b"/dev/hidraw3"]


def test_pulled_plug_on_every_call() -> None:
    library = Library(entry(1))
    port = open_hid("hid://", library)
    library.gone = True
    for call in (port.read, lambda: port.write(SET_ZERO), port.discard_input):
        with pytest.raises(PortError, match=r"scale lost on hid://.*check the plug"):
            call()
    with pytest.raises(PortError, match="may not use it, or another program"):
        open_hid("hid://", library)


def test_real_library_finds_none_here_or_is_asked_for() -> None:
    with pytest.raises(PortError, match=r"0 USB weighing devices|needs the package hidapi"):
        open_hid("hid://")


def test_reports_become_steady_readings_and_the_old_one_none() -> None:
    class Playing(Library):
        def read(self, size: int, timeout_ms: int) -> list[int]:
            if timeout_ms == 0:
                return []
            self.waiting.append(STABLE)
            return super().read(size, timeout_ms)

    library = Playing(entry(1), reports=(OLD,))
    heard = Listener()
    link = ScaleLink(
        lambda: open_hid("hid://", library),
        HidScaleParser,
        SteadyRules(interval=None, unit="g"),
        heard,
        rules=LinkRules(ask=LISTEN, most_bytes_per_s=10**9),
    )
    link.start()
    try:
        heard.next(LinkUp)
        assert heard.steady("254").unit == "g"
    finally:
        link.stop()
    assert not [i for i in heard.items if isinstance(i, Reading) and i.digits == "15"]
    assert library.written == []


# --- scanners -------------------------------------------------------------------------------------


class Scanner(Library):
    """A scanner in memory, with its report descriptor."""

    descriptor = DESCRIPTOR

    def get_report_descriptor(self) -> list[int]:
        return list(self.descriptor)


def test_a_usb_scanner_gives_scans_as_a_serial_one_does_and_comes_back_after_its_plug() -> None:
    scanner = Scanner(MOUSE, entry(1), entry(2, usage_page=0x8C))
    heard: Queue[ScannerItem] = Queue()
    link = ScannerLink(lambda: open_hid_scanner("hid://", scanner), heard.put)
    link.start()
    try:
        assert heard.get(timeout=10) == ScannerUp("hid://")
        assert scanner.opened == [b"/dev/hidraw2"]
        scanner.waiting.extend(reports(b"]C1", b"0109521234543213" + b"10" + b"A" * 60))
        scan = heard.get(timeout=10)
        assert isinstance(scan, Scan)
        assert scan.symbols == (Symbol("]C1", "0109521234543213" + "10" + "A" * 60),)
        scanner.gone = True
        lost = heard.get(timeout=10)
        assert isinstance(lost, ScannerDown)
        assert "scanner lost on hid://" in lost.why
        scanner.gone = False
        while not isinstance(heard.get(timeout=20), ScannerUp):
            pass
    finally:
        link.stop()


@pytest.mark.parametrize("descriptor", [b"\x05", NO_COUNT.replace(b"\xfe", b"\x10")])
def test_a_scanner_that_does_not_say_where_its_data_are_is_refused(descriptor: bytes) -> None:
    scanner = Scanner(entry(1, usage_page=0x8C))
    scanner.descriptor = descriptor
    with pytest.raises(PortError, match="set the scanner to its mode for points of sale"):
        open_hid_scanner("hid://", scanner)
    assert scanner.gone


def test_no_usb_scanner_is_said_in_words() -> None:
    with pytest.raises(PortError, match=r"scanner's port hid:// .* 0 USB bar-code scanners"):
        open_hid_scanner("hid://", Scanner(entry(1)))
