"""What the panels of QA share: who signs, the way to the record, and questions asked in turn."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from typing import Protocol, TypeVar

from PySide6.QtCore import QObject, Signal, Slot

from station.core.facts import Fact
from station.screens.work import Work

T = TypeVar("T")


class Host(Protocol):
    """The page, as its panels see it."""

    @property
    def who(self) -> str:
        """Id of who signs; empty while nobody is chosen."""
        ...

    @property
    def second(self) -> str:
        """Id of the second person; empty while nobody is chosen."""
        ...

    def ask(self, question: Callable[[], T], then: Callable[[T], None]) -> None:
        """Ask the record off Qt's thread; ``then`` is called on it with the answer."""
        ...

    def enter(self, make: Callable[[], tuple[Fact, ...]], told: str) -> None:
        """Make facts and enter them in one commit; refusals are said in words.

        Args:
            make: makes them; what it refuses with a ValueError or BadInput is said.
            told: what is said once they are durable.
        """
        ...

    def say(self, words: str, *, refused: bool = False) -> None:
        """Say something to whoever stands here."""
        ...


class Asked(QObject):
    """Questions to the record, one after another on a thread of its own.

    Signals:
        failed: str, why there is no answer.
    """

    failed = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.work = Work("quality", self)
        self._waiting: deque[tuple[Callable[[], object], Callable[[object], None]]] = deque()
        self._then: Callable[[object], None] | None = None
        self.work.done.connect(self._done)
        self.work.failed.connect(self.failed)
        self.work.ended.connect(self._next)

    @property
    def busy(self) -> bool:
        """Whether an answer is still to come."""
        return self.work.busy or bool(self._waiting)

    def ask(self, question: Callable[[], object], then: Callable[[object], None]) -> None:
        """Ask, after what was asked before."""
        self._waiting.append((question, then))
        self._next()

    def give_up(self) -> None:
        """Ask nothing more; what is asked just now is not answered."""
        self._waiting.clear()
        self.work.stop()

    def stop(self) -> None:
        """Ask nothing more and wait for the thread."""
        self.give_up()
        self.work.wait()

    @Slot()
    def _next(self) -> None:
        if self.work.busy or not self._waiting:
            return
        question, self._then = self._waiting.popleft()
        self.work.begin(lambda _: question())

    @Slot(object)
    def _done(self, answer: object) -> None:
        if self._then is not None:
            self._then(answer)
