"""Who is told what a line does, and how long a bag took."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from station.line.effects import Sound
from station.line.state import EntryAnswer, LineState, RunAnswer


@dataclass(frozen=True, slots=True)
class Timing:
    """How long one labelled bag took, in nanoseconds of the steady count.

    Args:
        serial: the bag.
        stable: when the frame that judged it arrived.
        durable: when its record was on the disk.
        labelled: when the line heard that the printer had its whole label.
    """

    serial: str
    stable: int
    durable: int
    labelled: int


def _ignore(_: object) -> None:
    """Nobody listens."""


@dataclass(frozen=True, slots=True)
class Listeners:
    """Who is told what; each is called on the line's thread and must return at once."""

    state: Callable[[LineState], None]
    answer: Callable[[RunAnswer], None]
    sound: Callable[[Sound], None]
    timing: Callable[[Timing], None]
    entered: Callable[[EntryAnswer], None] = _ignore
