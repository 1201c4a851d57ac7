"""Recordings played as a scale: at their times, through the whole link, and what cannot be."""

from pathlib import Path

import pytest

from drivers.errors import PortError
from drivers.link import LinkUp
from drivers.port import PortSettings
from drivers.recording import HEAD, Chunk, Recorder
from drivers.replay import ReplayPort, open_replay
from drivers.steady import Reading
from tests.drivers.listening import GRAMS, frame, linked


def test_chunks_come_at_their_times_as_much_faster_as_asked() -> None:
    now = [7.0]
    waits: list[float] = []

    def sleep(seconds: float) -> None:
        waits.append(seconds)
        now[0] += seconds

    chunks = [Chunk(0, b"a"), Chunk(400_000, b"b"), Chunk(800_000, b"c")]
    port = ReplayPort("x", chunks, 2.0, lambda: round(now[0] * 1e9), sleep)
    heard = []

    def play() -> None:
        while True:
            if chunk := port.read():
                heard.append((chunk, round(now[0] - 7.0, 3)))

    with pytest.raises(PortError, match="the recording is over"):
        play()
    assert heard == [(b"a", 0.0), (b"b", 0.2), (b"c", 0.4)]
    assert max(waits) <= ReplayPort.READ_WAIT_S


def record(path: Path, *chunks: bytes) -> None:
    now = [0]
    recorder = Recorder(path, lambda: now[0])
    for chunk in chunks:
        now[0] += 50_000_000
        recorder.add(chunk)
    recorder.close()


def test_recording_is_a_scale(tmp_path: Path) -> None:
    path = tmp_path / "a bag.rec"
    record(path, frame("0"), frame("0"), frame("254"), frame("254")[:7], frame("254")[7:])
    url = f"replay://{path}?speed=50".replace(" ", "%20")
    with linked(PortSettings(url), GRAMS) as (heard, _):
        assert heard.next(LinkUp).port == url
        heard.steady("0")
        heard.steady("254")
        assert "the recording is over" in heard.down().why
        assert heard.next(LinkUp).epoch == 2
        heard.steady("0")
    assert {item.digits for item in heard.items if isinstance(item, Reading)} == {"0", "254"}


@pytest.mark.parametrize(
    ("text", "query", "words"),
    [
        (None, "", "no such file"),
        ("x", "", "does not begin with"),
        (HEAD, "", "must hold something"),
        (HEAD + "0 00\n", "?speed=0", "the speed be 0.01 to 1000"),
        (HEAD + "0 00\n", "?speed=fast", "could not convert"),
    ],
)
def test_what_cannot_be_played(tmp_path: Path, text: str | None, query: str, words: str) -> None:
    path = tmp_path / "x.rec"
    if text is not None:
        path.write_text(text, encoding="ascii")
    with pytest.raises(PortError, match=words) as refused:
        open_replay(f"replay://{path}{query}")
    assert "cannot be opened" in str(refused.value)
