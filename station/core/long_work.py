"""How far a long work has come, and whether anybody still wants it; one way for screens and verbs.

Whoever works says :func:`step` between its parts and knows nobody. Whoever waits listens with
:func:`watched`, on the thread that works. What the record is asked is broken off by the database
itself once nobody wants it (:mod:`station.store.engine`); where nobody listens, nothing happens.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass, replace
from typing import TypeVar

T = TypeVar("T")


class GivenUp(Exception):
    """Nobody wants the result any more."""


@dataclass(frozen=True, slots=True)
class _Watch:
    """Whoever waits, and which part of the whole is worked on, in percent."""

    told: Callable[[int], None]
    wanted: Callable[[], bool]
    first: float = 0.0
    last: float = 100.0


_WATCH: ContextVar[_Watch | None] = ContextVar("long work", default=None)


@contextmanager
def watched(told: Callable[[int], None], wanted: Callable[[], bool]) -> Iterator[None]:
    """Listen to what this thread works meanwhile.

    Args:
        told: gets how much is done, in percent of the whole; called on this thread.
        wanted: whether anybody still wants the result; asked from any thread, quick.
    """
    with _watching(_Watch(told, wanted)):
        yield


@contextmanager
def share(first: float, last: float) -> Iterator[None]:
    """Let the steps inside count for a part of the whole, both bounds in percent of it."""
    watch = _WATCH.get()
    if watch is None:
        yield
        return
    wide = (watch.last - watch.first) / 100
    part = replace(watch, first=watch.first + first * wide, last=watch.first + last * wide)
    with _watching(part):
        yield


@contextmanager
def _watching(watch: _Watch) -> Iterator[None]:
    token = _WATCH.set(watch)
    try:
        yield
    finally:
        _WATCH.reset(token)


def step(done: float, of: float = 100) -> None:
    """Say how far the work has come.

    Raises:
        GivenUp: nobody wants the rest.
    """
    watch = _WATCH.get()
    if watch is None:
        return
    _go_on(watch)
    watch.told(round(watch.first + (watch.last - watch.first) * done / of))


def steps(parts: Iterable[T], count: int) -> Iterator[T]:
    """Give the parts one by one, each a step of ``count``.

    Raises:
        GivenUp: nobody wants the rest.
    """
    for done, part in enumerate(parts):
        step(done, count)
        yield part


def go_on() -> None:
    """Raise GivenUp where nobody wants the rest; for loops too quick to count."""
    watch = _WATCH.get()
    if watch is not None:
        _go_on(watch)


def still_wanted() -> Callable[[], bool] | None:
    """What says whether this thread's work is still wanted; None where nobody listens."""
    watch = _WATCH.get()
    return None if watch is None else watch.wanted


def _go_on(watch: _Watch) -> None:
    if not watch.wanted():
        raise GivenUp
