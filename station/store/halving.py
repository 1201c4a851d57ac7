"""The first row past something, in rows that stand in its order: halved, not read through."""

from __future__ import annotations

from collections.abc import Callable


def first_past(low: int, high: int, look: Callable[[int], tuple[int, bool] | None]) -> int:
    """Return the first row that is past, or ``high`` where none before it is.

    Args:
        low: no row up to this one is past.
        high: rows from this one on do not count.
        look: gives of the first row from a number on that number and whether it is past; None
            where there is none.
    """
    while high - low > 1:
        middle = (low + high) // 2
        found = look(middle)
        if found is None or found[0] >= high or found[1]:
            high = middle
        else:
            low = found[0]
    return high
