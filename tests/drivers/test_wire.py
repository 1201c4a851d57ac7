"""What passes over a line is kept for a while, shown in words, and recorded on wish."""

from pathlib import Path

import pytest

from drivers.errors import RecordingError
from drivers.frames.hid_scale import HidScaleParser
from drivers.frames.scp0499 import Scp0499Parser
from drivers.recording import read_recording
from drivers.wire import Passed, WatchedPort, WireLog
from drivers.wire_view import count_of, rows_of, text_of
from tests.drivers.listening import frame

MS = 1_000_000
BAG = frame("254")


class Plain:
    name, identity = "p", "i"

    def __init__(self, *chunks: bytes) -> None:
        self.chunks = list(chunks)
        self.calls: list[object] = []

    def read(self) -> bytes:
        return self.chunks.pop(0) if self.chunks else b""

    def write(self, data: bytes) -> None:
        self.calls.append(data)

    def discard_input(self) -> None:
        self.calls.append("discard")

    def close(self) -> None:
        self.calls.append("close")


def test_watched_port_passes_everything_on_and_keeps_what_passed() -> None:
    now = [0]
    plain, log = Plain(BAG, b""), WireLog(lambda: now[0])
    port = WatchedPort(plain, log)
    port.write(b"W")
    now[0] = 5
    assert (port.name, port.identity, port.read(), port.read()) == ("p", "i", BAG, b"")
    port.discard_input()
    port.close()
    assert plain.calls == [b"W", "discard", "close"]
    assert log.newest() == (Passed(0, b"W", sent=True), Passed(5, BAG))


def test_oldest_bytes_are_forgotten() -> None:
    log = WireLog(lambda: 0, most_bytes=60)
    for n in range(50):
        log.received(frame(str(n)))
    assert [one.data for one in log.newest()] == [frame(str(n)) for n in (47, 48, 49)]


def test_recording_starts_and_stops_while_the_line_runs(tmp_path: Path) -> None:
    log = WireLog()
    log.received(b"before")
    log.record(tmp_path / "a")
    assert log.recording == tmp_path / "a"
    log.received(b"one")
    log.record(tmp_path / "b")
    log.received(b"two")
    log.end_recording()
    log.received(b"after")
    read = [read_recording(tmp_path / name)[0].data for name in "ab"]
    assert (read, log.recording) == ([b"one", b"two"], None)
    with pytest.raises(RecordingError, match="no such file"):
        log.record(tmp_path / "none" / "c")


def test_each_thing_that_passed_is_a_row_with_its_time_and_its_word() -> None:
    passed = (
        Passed(0, BAG[7:]),  # the rest of a frame from before
        Passed(100 * MS, b"\nR\r", sent=True),
        Passed(200 * MS, BAG[:9]),
        Passed(260 * MS, BAG[9:] + frame("1.2", motion=True)[:-4] + b"4\r"),
        Passed(300 * MS, b"\n?\r"),
    )
    rows = rows_of(passed, Scp0499Parser)
    assert [(row.gap_ms, row.good, row.sent) for row in rows] == [
        (None, False, True),
        (60, True, False),
        (0, False, False),
        (40, True, False),
    ]
    assert rows[1].what == "254 g, gross, at rest"
    assert rows[1].hex == BAG.hex(" ")
    assert rows[1].text == "‹LF› 1G         254g  ‹CR›"
    assert "frame of" in rows[2].what
    assert rows[3].what == "unknown command: the scale does not know the command"


def test_count_looks_back_ten_seconds() -> None:
    good = [Passed(n * 100 * MS, BAG) for n in range(200)]
    passed = (*good, Passed(20_000 * MS, b"\nxx\r"), Passed(20_001 * MS, b"\nR\r", sent=True))
    count = count_of(passed, rows_of(passed, Scp0499Parser), 20_000 * MS)
    assert (count.frames, count.garbage, count.gap_ms) == (100, 1, 100)
    assert (count.bytes, count.bad_percent) == (100 * 20 + 4, 1)
    nothing = count_of((), (), 0)
    assert (nothing.frames, nothing.gap_ms, nothing.bad_percent) == (0, None, 0)


def test_reports_of_a_usb_device_are_rows_too() -> None:
    report = b"\x06\x03\x04\x02\0\x02\x01"
    rows = rows_of((Passed(0, report), Passed(1, report)), HidScaleParser)
    assert [row.what for row in rows] == ["258 g, gross, at rest"]


def test_text_names_what_cannot_be_printed() -> None:
    assert text_of(b"\x02a\x80\x03\x0d\x0a") == "‹STX›a‹80›‹ETX›‹CR›‹LF›"
