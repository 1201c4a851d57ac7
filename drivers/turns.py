"""Patience counted in turns: a machine that lets nobody work makes nobody late."""

from __future__ import annotations

from collections.abc import Iterator

_TURN_S = 1.0


def turns(seconds: float) -> Iterator[float]:
    """Give lengths of waits, in seconds, a second at most each, that together make a patience.

    Whoever waits so has waited in as many turns of its own. On a machine that leaves a process
    without a turn for minutes one deadline on the clock is over before those waited for could do
    anything; here such a pause counts as one wait.

    Args:
        seconds: the patience; above 0.
    """
    left = seconds
    while left > 0:
        yield min(left, _TURN_S)
        left -= _TURN_S
