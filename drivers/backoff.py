"""How long to wait before the next try. Pure but for the chance it is given."""

from __future__ import annotations

import random


class Backoff:
    """Waits that grow from ``first_s`` to ``most_s`` seconds, each with some chance in it.

    Args:
        first_s: first wait.
        most_s: longest wait.
        factor: how much longer each wait is than the one before.
        chance: gives numbers from 0 to 1; a wait is shortened by up to a fifth of itself.
    """

    def __init__(
        self,
        first_s: float = 0.2,
        most_s: float = 5.0,
        factor: float = 2.0,
        chance: random.Random | None = None,
    ) -> None:
        if not 0 < first_s <= most_s or factor < 1:
            raise ValueError("allowed is 0 < first_s <= most_s and factor >= 1")
        self._first_s = first_s
        self._most_s = most_s
        self._factor = factor
        self._chance = chance or random.Random()
        self._wait_s = first_s

    def next_s(self) -> float:
        """Return the wait before the next try, in seconds."""
        wait_s = self._wait_s
        self._wait_s = min(self._most_s, wait_s * self._factor)
        return wait_s * (1 - 0.2 * self._chance.random())

    def reset(self) -> None:
        """Start again with the shortest wait: the last try went well."""
        self._wait_s = self._first_s
