"""Work that takes long, on a thread of its own, one piece at a time, watched and stopped."""

from __future__ import annotations

import threading
from collections.abc import Callable
from typing import Protocol

from PySide6.QtCore import QObject, Qt, Signal, Slot

from station.core.facts import Fact
from station.errors import StationError
from station.line.fill_target import Advice
from station.line.numbers import RunFigures, Span

Tried = Callable[[int], None]


class NumbersSource(Protocol):
    """Whoever knows the bags of the run; each call may take long and is not made on Qt's thread."""

    def figures(self, span: Span | None) -> RunFigures | None:
        """Return the figures of the open or the last run, of the batch the rules judge or another.

        None before the first run.
        """
        ...

    def advice(self, tried: Tried) -> Advice | None:
        """Work out a target; ``tried`` is told of each one tried and may stop it by raising."""
        ...

    def proposal(self, figures: RunFigures, advice: Advice) -> Fact:
        """Return the fact that keeps a proposal; quick."""
        ...


class _Stopped(Exception):
    """Nobody wants the result any more."""


class Work(QObject):
    """Does one piece of work after another.

    Signals:
        done: object, what the work returned.
        failed: str, why there is no result.
        counted: int, how far it is.
        ended: nothing is done any more, however it came.
    """

    done = Signal(object)
    failed = Signal(str)
    counted = Signal(int)
    ended = Signal()
    _over = Signal()

    def __init__(self, name: str, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._name = name
        self._thread: threading.Thread | None = None
        self._stop = threading.Event()
        self._over.connect(self._clear, Qt.ConnectionType.QueuedConnection)

    @property
    def busy(self) -> bool:
        """Whether a piece of work is not over yet."""
        return self._thread is not None

    @property
    def stopping(self) -> bool:
        """Whether the present piece was given up."""
        return self._stop.is_set()

    def begin(self, task: Callable[[Tried], object]) -> bool:
        """Begin a piece of work, unless one is not over yet; says whether it did."""
        if self.busy:
            return False
        self._stop = threading.Event()
        self._thread = threading.Thread(
            target=self._work, args=(task, self._stop), name=self._name, daemon=True
        )
        self._thread.start()
        return True

    def stop(self) -> None:
        """Give the present piece up at its next step; its result is dropped."""
        self._stop.set()

    def wait(self, timeout_s: float = 5.0) -> None:
        """Wait until the thread has ended."""
        if self._thread is not None:
            self._thread.join(timeout_s)

    def _work(self, task: Callable[[Tried], object], stop: threading.Event) -> None:
        def tried(count: int) -> None:
            if stop.is_set():
                raise _Stopped
            self.counted.emit(count)

        try:
            self._tell(task, tried, stop)
        except RuntimeError:  # the window is gone
            return

    def _tell(self, task: Callable[[Tried], object], tried: Tried, stop: threading.Event) -> None:
        try:
            result = task(tried)
        except _Stopped:
            pass
        except (ValueError, StationError) as refused:
            self.failed.emit(str(refused))
        else:
            if not stop.is_set():
                self.done.emit(result)
        finally:
            self._over.emit()

    @Slot()
    def _clear(self) -> None:
        self._thread = None
        self.ended.emit()
