"""The one doorway between the station's threads and the screens.

Only the newest state is kept: a flood of readings costs the screen one painting per frame and no
memory. Every reading still reaches the line; only the picture of it is thinned.
"""

from __future__ import annotations

import threading
import time
from collections import deque

from PySide6.QtCore import QObject, Qt, QTimer, Signal, Slot

from station.line.state import EntryAnswer, LineState, RunAnswer

FRAME_NS = 2_000_000
"""Two paintings are never closer than this, an eighth of a frame of a screen, so that a number
that comes right after another need not wait for a whole one."""
FOLLOW_MS = 33
"""While nothing but the reading is new, whoever does not show it large follows this often."""


class Bridge(QObject):
    """Carries frozen values from any thread to the GUI thread. Make it in the GUI thread.

    Signals:
        state_changed: LineState, the newest; at most 500 times a second: for the number itself.
        followed: LineState, the newest, after ``state_changed``: at once where more than its
            reading is new, else at most 30 times a second; for all that need not keep up with it.
        label_changed: bytes, the PDF of the last label.
        answered: RunAnswer; every one, in order.
        entered: EntryAnswer; every one, in order.
        scanned: str, str: symbology identifier and data of a scan; every one, in order.
        fault: str, what went wrong and what to do.
    """

    state_changed = Signal(object)
    followed = Signal(object)
    label_changed = Signal(object)
    answered = Signal(object)
    entered = Signal(object)
    scanned = Signal(str, str)
    fault = Signal(str)
    _woken = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._lock = threading.Lock()
        self._awake = False
        self._hushed = False
        self._state: LineState | None = None
        self._label: bytes | None = None
        self._words: str | None = None
        self._answers: deque[RunAnswer] = deque()
        self._entries: deque[EntryAnswer] = deque()
        self._scans: deque[tuple[str, str]] = deque()
        self._told_at_ns = 0
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self._tell)
        self._newest: LineState | None = None
        self._followed: LineState | None = None
        self._follow = QTimer(self)
        self._follow.setSingleShot(True)
        self._follow.setTimerType(Qt.TimerType.PreciseTimer)
        self._follow.timeout.connect(self._catch_up)
        self._woken.connect(self._wait_for_frame, Qt.ConnectionType.QueuedConnection)

    def publish(self, state: LineState) -> None:
        """Show a state; from any thread, at any rate. An older one not yet shown is dropped."""
        with self._lock:
            self._state = state
            wake = self._fall_awake()
        if wake:
            self._woken.emit()

    def show_label(self, pdf: bytes) -> None:
        """Show the PDF of the last label; from any thread."""
        with self._lock:
            self._label = pdf
            wake = self._fall_awake()
        if wake:
            self._woken.emit()

    def answer(self, answer: RunAnswer) -> None:
        """Tell a lead what became of a start or an end of a run; from any thread."""
        with self._lock:
            self._answers.append(answer)
            wake = self._fall_awake()
        if wake:
            self._woken.emit()

    def enter(self, answer: EntryAnswer) -> None:
        """Tell a person what became of facts they entered; from any thread."""
        with self._lock:
            self._entries.append(answer)
            wake = self._fall_awake()
        if wake:
            self._woken.emit()

    def scan(self, identifier: str, data: str) -> None:
        """Hand over a scan; from any thread."""
        with self._lock:
            self._scans.append((identifier, data))
            wake = self._fall_awake()
        if wake:
            self._woken.emit()

    def report(self, words: str) -> None:
        """Show a fault of the station in words; from any thread."""
        with self._lock:
            self._words = words
            wake = self._fall_awake()
        if wake:
            self._woken.emit()

    @Slot()
    def hush(self) -> None:
        """Tell nothing any more: the window that listened is gone, and its pages with it.

        The line may still speak, and what was heard last may wait for its turn.
        """
        self._hushed = True

    def _fall_awake(self) -> bool:
        """Say whether the GUI thread must be woken; call with the lock held."""
        wake, self._awake = not self._awake, True
        return wake

    @Slot()
    def _wait_for_frame(self) -> None:
        wait_ns = self._told_at_ns + FRAME_NS - time.monotonic_ns()
        if wait_ns > 0:
            self._timer.start(-(-wait_ns // 1_000_000))
        else:
            self._tell()

    @Slot()
    def _tell(self) -> None:
        if self._hushed:
            return
        with self._lock:
            self._awake = False
            state, self._state = self._state, None
            label, self._label = self._label, None
            words, self._words = self._words, None
            answers = tuple(self._answers)
            self._answers.clear()
            entries = tuple(self._entries)
            self._entries.clear()
            scans = tuple(self._scans)
            self._scans.clear()
        self._told_at_ns = time.monotonic_ns()
        if state is not None:
            self.state_changed.emit(state)
            self._newest, told = state, self._followed
            if told is None or not self._follow.isActive() or not state.only_moves(told):
                self._catch_up()
        if label is not None:
            self.label_changed.emit(label)
        for answer in answers:
            self.answered.emit(answer)
        for entry in entries:
            self.entered.emit(entry)
        for scan in scans:
            self.scanned.emit(*scan)
        if words is not None:
            self.fault.emit(words)

    @Slot()
    def _catch_up(self) -> None:
        """Tell the newest state to those who follow, unless they know it."""
        state = self._newest
        if state is not None and state is not self._followed and not self._hushed:
            self._followed = state
            self._follow.start(FOLLOW_MS)
            self.followed.emit(state)
