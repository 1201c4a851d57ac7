"""Work that takes long, on a thread of its own, one piece at a time, watched and given up."""

from __future__ import annotations

import threading
from collections.abc import Callable
from contextlib import suppress
from enum import Enum, auto

from PySide6.QtCore import QObject, Qt, Signal, Slot

from station.core.long_work import GivenUp, step, watched
from station.errors import StationError

Tried = Callable[[int], None]
"""Told how far a piece is; raises where nobody wants the rest."""


class _Came(Enum):
    """What comes from the thread."""

    COUNT, RESULT, REFUSAL, NOTHING = auto(), auto(), auto(), auto()


class Work(QObject):
    """Does one piece of work after another.

    A piece that is given up is over at once: its result is dropped, and the next may begin while
    its thread still comes to its end, at its next step or within a question to the record.

    Signals:
        began: a piece begins.
        done: object, what the work returned.
        failed: str, why there is no result.
        counted: int, how far it is.
        ended: nothing is done any more, however it came.
    """

    began = Signal()
    done = Signal(object)
    failed = Signal(str)
    counted = Signal(int)
    ended = Signal()
    _came = Signal(object, object, object)

    def __init__(self, name: str, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._name = name
        self._stop: threading.Event | None = None
        self._threads: list[threading.Thread] = []
        self._came.connect(self._take, Qt.ConnectionType.QueuedConnection)

    @property
    def busy(self) -> bool:
        """Whether a piece of work is not over yet."""
        return self._stop is not None

    def begin(self, task: Callable[[Tried], object]) -> bool:
        """Begin a piece of work, unless one is not over yet; says whether it did.

        Args:
            task: is given what to tell how far it is, in whatever it counts; the steps of
                :mod:`station.core.long_work` are counted too, in percent.
        """
        if self.busy:
            return False
        self._stop = threading.Event()
        thread = threading.Thread(
            target=self._work, args=(task, self._stop), name=self._name, daemon=True
        )
        self._threads = [one for one in self._threads if one.is_alive()]
        self._threads.append(thread)
        thread.start()
        self.began.emit()
        return True

    def stop(self) -> None:
        """Give the present piece up."""
        if self._stop is not None:
            self._stop.set()
            self._over()

    def wait(self, timeout_s: float = 5.0) -> None:
        """Wait until the threads have ended, those of pieces given up too."""
        for thread in self._threads:
            thread.join(timeout_s)

    def _work(self, task: Callable[[Tried], object], stop: threading.Event) -> None:
        def tell(what: _Came, value: object = None) -> None:
            if not stop.is_set():
                with suppress(RuntimeError):  # the window is gone
                    self._came.emit(stop, what, value)

        last = -1

        def count(now: int) -> None:
            nonlocal last
            if now != last:
                last = now
                tell(_Came.COUNT, now)

        with watched(count, lambda: not stop.is_set()):
            try:
                tell(_Came.RESULT, task(step))
            except (ValueError, StationError) as refused:
                tell(_Came.REFUSAL, str(refused))
            except GivenUp:
                tell(_Came.NOTHING)  # unheard, unless the task gave itself up
            except BaseException:
                tell(_Came.NOTHING)
                raise

    @Slot(object, object, object)
    def _take(self, stop: threading.Event, what: _Came, value: object) -> None:
        if stop is not self._stop:
            return  # of a piece that was given up meanwhile
        match what:
            case _Came.COUNT:
                self.counted.emit(value)
                return
            case _Came.RESULT:
                self.done.emit(value)
            case _Came.REFUSAL:
                self.failed.emit(value)
            case _Came.NOTHING:
                pass
        if stop is self._stop:  # whoever heard of it did not give up or begin anew
            self._over()

    def _over(self) -> None:
        self._stop = None
        self.ended.emit()
