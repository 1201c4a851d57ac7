"""How many damaged frames a line may carry before it is called disturbed. Pure."""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass

_KEPT = 10_000
"""More items than any line carries in a window."""


@dataclass(frozen=True, slots=True)
class BudgetRules:
    """The share of damaged frames that is still allowed.

    Args:
        window_ns: how far back items count.
        most_bad_percent: above this the line is disturbed.
        least_bad: fewer damaged frames than this never disturb a line.
    """

    window_ns: int = 10_000_000_000
    most_bad_percent: int = 5
    least_bad: int = 3


class ErrorBudget:
    """Counts good and damaged frames within a window.

    Args:
        rules: the share that is allowed.
    """

    def __init__(self, rules: BudgetRules) -> None:
        self._rules = rules
        self._items: deque[tuple[int, bool]] = deque()
        self._bad = 0

    @property
    def bad(self) -> int:
        """Damaged frames within the window."""
        return self._bad

    @property
    def total(self) -> int:
        """All frames within the window."""
        return len(self._items)

    @property
    def spent(self) -> bool:
        """Whether more frames are damaged than allowed."""
        if self._bad < self._rules.least_bad:
            return False
        return self._bad * 100 > self._rules.most_bad_percent * len(self._items)

    def count(self, good: bool, now_ns: int) -> None:
        """Take in one frame received at the steady count ``now_ns``."""
        self._items.append((now_ns, good))
        self._bad += not good
        oldest = now_ns - self._rules.window_ns
        while self._items[0][0] < oldest or len(self._items) > _KEPT:
            _, was_good = self._items.popleft()
            self._bad -= not was_good
