"""How many bytes a second a line may bring before they are thrown away unread. Pure."""

from __future__ import annotations

_SECOND_NS = 1_000_000_000


class FloodLimit:
    """Counts bytes in each second.

    Args:
        most: bytes a second; a line of 115 200 baud brings 11 520.
    """

    def __init__(self, most: int) -> None:
        self._most = most
        self._since_ns = 0
        self._count = 0

    def is_over(self, count: int, now_ns: int) -> bool:
        """Take in so many bytes; return whether this second had too many."""
        if now_ns - self._since_ns >= _SECOND_NS:
            self._since_ns, self._count = now_ns, 0
        self._count += count
        return self._count > self._most
