"""A scale in a process of its own, on a pseudo-terminal: bags come and go, each frame is timed.

It knows nothing of the station and answers nothing; it goes on repeating, as a scale does that
was told to. What it wrote, and when, it tells at the end.
"""

import multiprocessing
import os
import time
import tty
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from multiprocessing.connection import Connection
from typing import NamedTuple

from tests.drivers.listening import frame

EMPTY_S, FILL_S, REST_S = 0.25, 0.75, 0.7
"""A bag: the empty pan, its filling with a new number in each frame, and its rest."""


class Sent(NamedTuple):
    """A frame as it went onto the wire: steady count in nanoseconds, and its digits."""

    at_ns: int
    digits: str


class QuickScale:
    """The near end of the scale.

    Args:
        gross: what a full bag weighs, in grams.
        frames_per_s: how often it speaks.
    """

    def __init__(self, gross: int, frames_per_s: float) -> None:
        spawn = multiprocessing.get_context("spawn")
        self._ours, theirs = spawn.Pipe()
        self._process = spawn.Process(target=_weigh, args=(theirs, gross, frames_per_s))
        self._process.start()
        self.url: str = self._ours.recv()

    def stop(self) -> list[Sent]:
        """End it; returns every frame it sent."""
        self._ours.send("stop")
        sent = [Sent(*one) for one in self._ours.recv()]
        self._process.join(10)
        return sent

    def close(self) -> None:
        """End it, whatever it does."""
        self._process.kill()
        self._process.join(10)


@contextmanager
def quick_scale(gross: int, frames_per_s: float) -> Iterator[QuickScale]:
    """A scale that is surely gone afterwards."""
    scale = QuickScale(gross, frames_per_s)
    try:
        yield scale
    finally:
        scale.close()


def _weigh(theirs: Connection, gross: int, frames_per_s: float) -> None:
    ours, theirs_end = os.openpty()
    tty.setraw(theirs_end)
    os.set_blocking(ours, False)
    theirs.send(os.ttyname(theirs_end))
    sent: list[tuple[int, str]] = []
    began = due = time.monotonic()
    while not theirs.poll(max(0.0, due - time.monotonic())):
        digits, moves = load_at(time.monotonic() - began, gross)
        data = frame(digits, motion=moves)
        with suppress(BlockingIOError):
            os.read(ours, 4096)
        at_ns = time.monotonic_ns()
        with suppress(BlockingIOError):  # nobody reads
            os.write(ours, data)
            sent.append((at_ns, digits))
        due = max(due + 1 / frames_per_s, time.monotonic() - 0.1)
    theirs.send(sent)


def load_at(at_s: float, gross: int) -> tuple[str, bool]:
    """What lies on the pan: its digits, and whether they move."""
    past = at_s % (EMPTY_S + FILL_S + REST_S)
    if past < EMPTY_S:
        return "0", False
    share = (past - EMPTY_S) / FILL_S
    return (str(gross), False) if share >= 1 else (str(round(gross * share)), True)
