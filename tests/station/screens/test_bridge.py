"""The doorway: newest state, no growth, alive under a flood."""

import statistics
import threading
import time
from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent, QObject, QThread

from station.line.state import LineState, Phase, RunAnswer, Tally, Verb
from station.screens.bridge import FOLLOW_MS, FRAME_NS, Bridge
from station.screens.packer import PackerScreen
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import every_state, state

FLOOD = 10_000
SCREEN_NS = 16_700_000
"""A frame of a screen at 60 Hz."""


SHORT = every_state()["short_t1"]


def numbered(count: int) -> LineState:
    return replace(SHORT, tally=Tally(good=count))


def test_newest_of_a_flood_is_painted_and_the_screen_lives(qtbot) -> None:
    bridge = Bridge()
    screen = PackerScreen(bridge, FakeIntents())
    qtbot.addWidget(screen)
    screen.resize(1280, 800)
    screen.show()
    told: list[tuple[LineState, int, bool]] = []
    bridge.state_changed.connect(
        lambda state: told.append(
            (state, time.monotonic_ns(), QThread.currentThread() is bridge.thread())
        )
    )
    states = [numbered(n) for n in range(FLOOD + 1)]

    def flood() -> None:
        for one in states:
            bridge.publish(one)

    began = time.monotonic_ns()
    thread = threading.Thread(target=flood)
    thread.start()
    qtbot.waitUntil(lambda: screen.counts.view.good == FLOOD)
    thread.join()
    lasted = time.monotonic_ns() - began
    assert all(in_gui for _, _, in_gui in told)
    counts = [state.tally.good for state, _, _ in told]
    assert counts == sorted(counts)
    assert len(told) <= lasted // FRAME_NS + 2  # one per frame, however many were published
    screen.aside_button.click()  # still answers a touch
    assert screen.aside_panel.isVisible()


def test_who_follows_is_told_thirty_times_a_second_while_only_the_reading_is_new(qtbot) -> None:
    bridge = Bridge()
    numbers: list[LineState] = []
    followed: list[LineState] = []
    bridge.state_changed.connect(numbers.append)
    bridge.followed.connect(followed.append)
    run, began = SHORT.run, time.monotonic_ns()
    for count in range(60):
        now = replace(state(Phase.LOADED, Verb.ADD, 100 + count), run=run)
        bridge.publish(now)
        qtbot.waitUntil(lambda now=now: numbers[-1:] == [now])
    qtbot.waitUntil(lambda: followed[-1] is numbers[-1])
    lasted_ms = (time.monotonic_ns() - began) // 1_000_000
    assert len(numbers) == 60
    assert len(followed) <= lasted_ms // FOLLOW_MS + 2


def test_who_follows_is_told_at_once_where_more_than_the_reading_is_new(qtbot) -> None:
    bridge = Bridge()
    told: list[tuple[str, LineState]] = []
    bridge.state_changed.connect(lambda state: told.append(("number", state)))
    bridge.followed.connect(lambda state: told.append(("all", state)))
    states = [numbered(1), replace(numbered(1), verb=Verb.WAIT), numbered(2), numbered(3)]
    for count, now in enumerate(states, 1):
        bridge.publish(now)
        qtbot.waitUntil(lambda count=count: len(told) == 2 * count)
    assert told == [(which, one) for one in states for which in ("number", "all")]


class _Painted(QObject):
    """Notes when a widget was painted."""

    def __init__(self) -> None:
        super().__init__()
        self.at: list[int] = []

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802  Qt's name
        if event.type() is QEvent.Type.Paint:
            self.at.append(time.monotonic_ns())
        return False


def test_a_number_is_painted_within_a_frame(qtbot) -> None:
    bridge = Bridge()
    screen = PackerScreen(bridge, FakeIntents())
    qtbot.addWidget(screen)
    screen.resize(1280, 800)
    screen.show()
    painted = _Painted()
    screen.counts.installEventFilter(painted)
    qtbot.waitUntil(lambda: bool(painted.at))
    waits = []
    for count in range(1, 40):
        painted.at.clear()
        published = time.monotonic_ns()
        thread = threading.Thread(target=bridge.publish, args=(numbered(count),))
        thread.start()
        qtbot.waitUntil(lambda: bool(painted.at))
        thread.join()
        waits.append(painted.at[-1] - published)
    # The wait and the painting; of the quickest quarter, as a busy machine only adds.
    assert statistics.quantiles(waits, n=4)[0] <= SCREEN_NS


def test_the_same_state_is_not_painted_twice(qtbot) -> None:
    bridge = Bridge()
    screen = PackerScreen(bridge, FakeIntents())
    qtbot.addWidget(screen)
    screen.resize(1280, 800)
    screen.show_state(numbered(1))
    screen.show()
    qtbot.waitExposed(screen)
    painted = _Painted()
    parts = (screen.header, screen.figure, screen.strip, screen.counts)
    qtbot.waitUntil(lambda: screen.counts.view.good == 1)
    for part in parts:
        part.repaint()
        part.installEventFilter(painted)
    screen.show_state(numbered(1))
    qtbot.waitUntil(lambda: True)
    assert painted.at == []


def test_every_answer_arrives_in_order(qtbot) -> None:
    bridge = Bridge()
    heard: list[RunAnswer] = []
    bridge.answered.connect(heard.append)
    answers = [RunAnswer(n % 2 == 0, f"answer {n}") for n in range(500)]
    thread = threading.Thread(target=lambda: [bridge.answer(one) for one in answers])
    thread.start()
    qtbot.waitUntil(lambda: len(heard) == len(answers))
    thread.join()
    assert heard == answers


@pytest.mark.parametrize(
    ("tell", "signal", "value"),
    [("show_label", "label_changed", b"%PDF-"), ("report", "fault", "the disk is full")],
)
def test_labels_and_faults_pass(qtbot, tell: str, signal: str, value: object) -> None:
    bridge = Bridge()
    heard: list[object] = []
    getattr(bridge, signal).connect(heard.append)
    thread = threading.Thread(target=getattr(bridge, tell), args=(value,))
    thread.start()
    qtbot.waitUntil(lambda: heard == [value])
    thread.join()
