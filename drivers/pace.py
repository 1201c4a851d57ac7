"""Says in words that weights come too seldom to be used. Pure.

A scale may send once a second by its menu, and a converter may keep bytes back and hand them over
in lots. Each weight is then old before the next comes, and the line seems silent now and again.
"""

from __future__ import annotations

_ENOUGH = 4
"""So many long waits in a row are the scale's way, and no accident."""
_WELL = 3
"""A stretch without one that lasts so many times what a weight counts ends the row."""


class Pace:
    """Watches the times of the weights of one connection.

    Args:
        stale_after_ns: so long a weight counts.
    """

    def __init__(self, stale_after_ns: int) -> None:
        self._stale_ns = stale_after_ns
        self._last_ns: int | None = None
        self._well_since_ns = 0
        self._waits = 0
        self._apart_ns = 0

    def see(self, now_ns: int) -> str:
        """Take in a weight received now; return what is wrong with their pace, or nothing."""
        last_ns, self._last_ns = self._last_ns, now_ns
        if last_ns is not None and now_ns - last_ns > self._stale_ns:
            self._waits += 1
            self._apart_ns, self._well_since_ns = now_ns - last_ns, now_ns
        elif now_ns - self._well_since_ns > self._stale_ns * _WELL:
            self._waits = 0
        if self._waits < _ENOUGH:
            return ""
        return (
            f"weights come {self._apart_ns / 1e9:.1f} s apart, and one counts for"
            f" {self._stale_ns / 1e9:g} s: set the scale, or the converter on its line, to send"
            " more often and at once"
        )
