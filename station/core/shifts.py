"""Shifts of a plant's day: each begins at a wall-clock time and ends where the next begins."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, time


def shift_of(at: datetime, starts: Sequence[time]) -> str:
    """Name the shift of a moment by its bounds, such as ``04:00-12:00``.

    Args:
        at: in the plant's time.
        starts: when shifts begin, rising; empty for a plant without shifts.
    """
    if not starts:
        return ""
    clock = at.time().replace(tzinfo=None)
    place = sum(start <= clock for start in starts) - 1  # before the first one: the last, of -1
    end = starts[(place + 1) % len(starts)]
    return f"{starts[place]:%H:%M}-{end:%H:%M}"
