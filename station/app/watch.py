"""Watches a line from another thread: the newest state, answers, timings."""

from __future__ import annotations

import queue
import threading
from collections.abc import Callable
from contextlib import suppress
from functools import partial
from typing import TypeVar

from drivers.packer import PackerCue
from drivers.turns import turns
from station.app.practice import cue_of
from station.errors import EnvironmentFault
from station.line.listeners import Timing
from station.line.state import EntryAnswer, LineState, RunAnswer

T = TypeVar("T")


class Watch:
    """Keeps what a line tells; its listeners return at once, its waits may be long.

    Waits are counted in turns of this process (:mod:`drivers.turns`).
    """

    def __init__(self) -> None:
        self._changed = threading.Condition()
        self._state: LineState | None = None
        self._answers: queue.SimpleQueue[RunAnswer] = queue.SimpleQueue()
        self._entries: queue.SimpleQueue[EntryAnswer] = queue.SimpleQueue()
        self.timings: list[Timing] = []
        """One for each labelled bag, in order."""

    def state(self, state: LineState) -> None:
        """Take in the newest state."""
        with self._changed:
            self._state = state
            self._changed.notify_all()

    def answer(self, answer: RunAnswer) -> None:
        """Take in what became of the start or the end of a run."""
        self._answers.put(answer)

    def entered(self, answer: EntryAnswer) -> None:
        """Take in what became of entered facts."""
        self._entries.put(answer)

    def timing(self, timing: Timing) -> None:
        """Take in how long a bag took."""
        self.timings.append(timing)

    @property
    def newest(self) -> LineState | None:
        """The newest state, or None before the first."""
        return self._state

    def cue(self) -> PackerCue | None:
        """What a packer sees of the line now, or None before the first state."""
        return None if self._state is None else cue_of(self._state)

    def next_answer(self, timeout_s: float) -> RunAnswer:
        """Wait for the next answer.

        Raises:
            EnvironmentFault: none came in time.
        """
        return _next(self._answers, timeout_s)

    def next_entry(self, timeout_s: float) -> EntryAnswer:
        """Wait until the next entered facts were answered.

        Raises:
            EnvironmentFault: none were in time.
        """
        return _next(self._entries, timeout_s)

    def until(self, holds: Callable[[LineState], bool], timeout_s: float) -> LineState:
        """Wait until a state holds; the time starts anew whenever a bag is counted.

        Raises:
            EnvironmentFault: nothing moved for ``timeout_s``; names what the line says.
        """
        with self._changed:
            while True:
                state = self._state
                if state is not None and holds(state):
                    return state
                moved = partial(self._moved, holds, _count(state))
                if not any(self._changed.wait_for(moved, turn) for turn in turns(timeout_s)):
                    state = self._state
                    said = "" if state is None else f"{state.verb}: {state.because}"
                    raise EnvironmentFault(f"the line stands still for {timeout_s:g} s", said)

    def _moved(self, holds: Callable[[LineState], bool], count: int) -> bool:
        state = self._state
        return state is not None and (holds(state) or _count(state) != count)


def _next(waiting: queue.SimpleQueue[T], timeout_s: float) -> T:
    for turn in turns(timeout_s):
        with suppress(queue.Empty):
            return waiting.get(timeout=turn)
    raise EnvironmentFault("the line does not answer", f"waited {timeout_s:g} s")


def _count(state: LineState | None) -> int:
    return 0 if state is None else state.tally.good + state.tally.rejects
