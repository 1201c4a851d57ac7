"""Who hears of the line, and what others add to its commits."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from station.core.facts import Fact
from station.core.pack import Moment
from station.core.run import Run
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


def _with_facts(facts: Sequence[Fact], at: Moment, who: str) -> tuple[Fact, ...]:
    """The facts alone are recorded."""
    return ()


def _with_run(run: Run, at: Moment) -> tuple[Fact, ...]:
    """The run alone is recorded."""
    return ()


def _ready() -> str:
    """Nothing stands against a run."""
    return ""


def _by_itself(at: Moment) -> tuple[Fact, ...]:
    """Nothing is found out."""
    return ()


@dataclass(frozen=True, slots=True)
class Followers:
    """What others have recorded; each is called on the line's thread and must return at once.

    Args:
        facts: from entered facts, when and by whom, to those they bring with them.
        run: from a run that opens to what its lead signs with it.
        watch: asked ten times a second for what the station found out by itself.
        against_run: why no run is opened now; empty where nothing stands against it.
    """

    facts: Callable[[Sequence[Fact], Moment, str], tuple[Fact, ...]] = _with_facts
    run: Callable[[Run, Moment], tuple[Fact, ...]] = _with_run
    watch: Callable[[Moment], tuple[Fact, ...]] = _by_itself
    against_run: Callable[[], str] = _ready
