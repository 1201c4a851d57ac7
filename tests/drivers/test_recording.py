"""Recordings: written durably, rotated, read strictly; a failing disk never stops the weighing."""

import errno
import os
import threading
import time
from pathlib import Path

import pytest

from drivers.bench import BenchScale
from drivers.errors import RecordingError
from drivers.frames.base import WeightFrame
from drivers.frames.scp0499 import Scp0499Parser
from drivers.port import PortSettings
from drivers.recording import HEAD, Chunk, Recorder, read_recording
from drivers.wire import WireLog
from tests.drivers.listening import GRAMS, linked


def test_written_and_read_back(tmp_path: Path) -> None:
    now = [5_000_000_000]
    path = tmp_path / "scale.rec"
    recorder = Recorder(path, lambda: now[0])
    recorder.add(b"\n 1G")
    now[0] += 1_234_567
    recorder.add(b"\x00\xff\r")
    recorder.close()
    recorder.close()
    assert read_recording(path) == (Chunk(0, b"\n 1G"), Chunk(1234, b"\x00\xff\r"))
    assert path.read_text() == f"{HEAD}0 0a203147\n1234 00ff0d\n"


def test_is_on_the_disk_a_second_later(tmp_path: Path) -> None:
    now = [0]
    path = tmp_path / "scale.rec"
    recorder = Recorder(path, lambda: now[0])
    recorder.add(b"a")
    now[0] += 1_000_000_000
    recorder.add(b"b")
    assert [chunk.data for chunk in read_recording(path)] == [b"a", b"b"]
    recorder.close()


def test_size_is_bounded_and_each_file_stands_alone(tmp_path: Path) -> None:
    now = [0]
    path = tmp_path / "scale.rec"
    recorder = Recorder(path, lambda: now[0], most_bytes=300)
    for n in range(100):
        now[0] += 1_000_000
        recorder.add(bytes([n]) * 20)
    recorder.close()
    assert sorted(file.name for file in tmp_path.iterdir()) == ["scale.rec", "scale.rec.1"]
    older, newer = read_recording(tmp_path / "scale.rec.1"), read_recording(path)
    assert newer[-1].data == bytes([99]) * 20
    assert older[0].at_us == newer[0].at_us == 0
    assert all(file.stat().st_size <= 300 for file in tmp_path.iterdir())


def test_recording_that_is_there_is_put_aside(tmp_path: Path) -> None:
    path = tmp_path / "scale.rec"
    for data in (b"one", b"two"):
        recorder = Recorder(path)
        recorder.add(data)
        recorder.close()
    assert read_recording(tmp_path / "scale.rec.1")[0].data == b"one"
    assert read_recording(path)[0].data == b"two"


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "does not begin with"),
        ("0 00\n", "does not begin with"),
        (HEAD + "x 00\n", "line 2"),
        (HEAD + "0 0\n", "line 2"),
        (HEAD + "0 zz\n", "line 2"),
        (HEAD + "-1 00\n", "line 2"),
        (HEAD + "5 00\n# a remark\n4 00\n", "line 4"),
    ],
)
def test_what_is_no_recording_is_refused(tmp_path: Path, text: str, words: str) -> None:
    path = tmp_path / "x"
    path.write_text(text, encoding="ascii")
    with pytest.raises(RecordingError, match=words):
        read_recording(path)


def test_files_that_cannot_be_read_or_made(tmp_path: Path) -> None:
    with pytest.raises(RecordingError, match="no such file"):
        read_recording(tmp_path / "none")
    with pytest.raises(RecordingError, match="no such file"):
        Recorder(tmp_path / "none" / "scale.rec")
    with pytest.raises(RecordingError, match="something else than a file"):
        Recorder(tmp_path)
    (tmp_path / "raw").write_bytes(b"\xff")
    with pytest.raises(RecordingError, match="no ASCII"):
        read_recording(tmp_path / "raw")


def test_line_cut_off_by_a_loss_of_power_is_left_out(tmp_path: Path) -> None:
    path = tmp_path / "scale.rec"
    path.write_text(HEAD + "0 0a\n7 0a20", encoding="ascii")
    assert read_recording(path) == (Chunk(0, b"\n"),)


def test_link_records_everything_it_reads(tty_scale: BenchScale, tmp_path: Path) -> None:
    path = tmp_path / "scale.rec"
    log = WireLog()
    log.record(path)
    with linked(PortSettings(tty_scale.url), GRAMS, log=log) as (heard, _):
        heard.steady("0")
        tty_scale.put_bag(6)
        heard.steady("6")
    log.end_recording()
    stream = b"".join(chunk.data for chunk in read_recording(path))
    frames = [i for i in Scp0499Parser().feed(stream) if isinstance(i, WeightFrame)]
    assert (frames[0].digits, frames[-1].digits) == ("0", "6")


@pytest.mark.skipif(os.name != "posix", reason="an open file cannot be deleted")
def test_recording_that_was_deleted_is_told(tmp_path: Path) -> None:
    """What is written to it is in no folder any more."""
    now = iter(range(0, 10**15, 400_000_000))
    recorder = Recorder(tmp_path / "scale.rec", clock=now.__next__)
    recorder.add(b"one")
    (tmp_path / "scale.rec").unlink()
    with pytest.raises(RecordingError, match="no such file"):
        add_until_refused(recorder)
    with pytest.raises(FileNotFoundError):
        recorder.close()


def add_until_refused(recorder: Recorder) -> None:
    for _ in range(3_000):
        recorder.add(b"two")
        time.sleep(0.02)


def test_disk_that_failed_once_is_told_at_the_end(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """After a failed sync the pages count as clean, and the next one says nothing."""
    faults = [OSError(errno.EIO, os.strerror(errno.EIO))]
    asked = threading.Event()

    def fsync(handle: int) -> None:
        if faults:
            asked.set()
            raise faults.pop()

    monkeypatch.setattr("drivers.recording.os.fsync", fsync)
    now = iter(range(0, 10**12, 10**9))
    recorder = Recorder(tmp_path / "scale.rec", clock=now.__next__)
    recorder.add(b"one")
    assert asked.wait(60)
    with pytest.raises(OSError, match="Input/output"):
        recorder.close()


def test_slow_disk_does_not_hold_the_line_up(
    tty_scale: BenchScale, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A line that waits for a disk reads weights too late, and throws them away as too old."""
    done = threading.Event()
    slow: list[int] = []

    def fsync(handle: int) -> None:
        slow.append(handle)
        done.wait(60)

    monkeypatch.setattr("drivers.recording.os.fsync", fsync)
    log = WireLog()
    log.record(tmp_path / "scale.rec")
    try:
        with linked(PortSettings(tty_scale.url), GRAMS, log=log) as (heard, _):
            heard.steady("0")
            for _ in range(3_000):
                if slow:
                    break
                time.sleep(0.02)
            assert slow
            tty_scale.put_bag(6)
            heard.steady("6")
            assert log.recording is not None
    finally:
        done.set()
        log.end_recording()


def test_file_too_long_for_a_recording_is_not_read(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("drivers.recording._MOST_READ", 1_000)
    (tmp_path / "x").write_text(HEAD + "0 00\n" * 300, encoding="ascii")
    with pytest.raises(RecordingError, match="longer than 1000 bytes"):
        read_recording(tmp_path / "x")


@pytest.mark.expects_log("the recording stopped")
def test_full_disk_ends_the_recording_and_not_the_weighing(
    tty_scale: BenchScale, tmp_path: Path
) -> None:
    log = WireLog()
    log.record(tmp_path / "scale.rec")
    assert log._recorder is not None
    log._recorder._file.close()
    log._recorder._file = Path("/dev/full").open("w", encoding="ascii", buffering=1)  # noqa: SIM115
    with linked(PortSettings(tty_scale.url), GRAMS, log=log) as (heard, _):
        heard.steady("0")
        tty_scale.put_bag(6)
        heard.steady("6")
    assert (log.recording, "no space" in log.broken) == (None, True)
    log.end_recording()
