"""Who watches a station."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from station.line.effects import Sound
from station.line.listeners import Timing
from station.line.state import EntryAnswer, LineState, RunAnswer


def _ignore(_: object) -> None:
    """Nobody listens."""


def _ignore_scan(_: str, __: str) -> None:
    """Nobody waits for a scan."""


@dataclass(frozen=True, slots=True)
class Audience:
    """Who watches a station; each is called on one of its threads and must return at once."""

    state: Callable[[LineState], None] = _ignore
    answer: Callable[[RunAnswer], None] = _ignore
    sound: Callable[[Sound], None] = _ignore
    timing: Callable[[Timing], None] = _ignore
    label: Callable[[bytes], None] = _ignore
    entered: Callable[[EntryAnswer], None] = _ignore
    scan: Callable[[str, str], None] = _ignore_scan
    words: Callable[[str], None] = _ignore
