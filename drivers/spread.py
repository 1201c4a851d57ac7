"""The range of the newest weights: largest minus smallest within a while. Pure: no clock.

A weight that is neither the largest nor the smallest from its own time on is forgotten at once, so
that a quick scale costs no more a frame than a slow one.
"""

from __future__ import annotations

from collections import deque
from decimal import Decimal

_MOST = 2_000
"""More frames than any line carries in a window: a flood must not fill memory."""


class Spread:
    """Takes weights in the order received.

    Args:
        window_ns: how far back it looks, in nanoseconds.
    """

    def __init__(self, window_ns: int) -> None:
        self._window_ns = window_ns
        self._falling: deque[tuple[int, Decimal]] = deque(maxlen=_MOST)
        """Each larger than all after it; the first is the largest."""
        self._rising: deque[tuple[int, Decimal]] = deque(maxlen=_MOST)
        """Each smaller than all after it; the first is the smallest."""

    def clear(self) -> None:
        """Forget all weights."""
        self._falling.clear()
        self._rising.clear()

    def add(self, at_ns: int, value: Decimal) -> Decimal:
        """Take the next weight; return the range of those within the window, this one included.

        Args:
            at_ns: steady count when it was received; never below the one before.
            value: in the unit of those before.
        """
        falling, rising = self._falling, self._rising
        while falling and falling[-1][1] <= value:
            falling.pop()
        while rising and rising[-1][1] >= value:
            rising.pop()
        falling.append((at_ns, value))
        rising.append((at_ns, value))
        oldest = at_ns - self._window_ns
        while falling[0][0] < oldest:
            falling.popleft()
        while rising[0][0] < oldest:
            rising.popleft()
        return falling[0][1] - rising[0][1]
