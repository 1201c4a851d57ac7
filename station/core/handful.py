"""What one handful of a product weighs, learnt from the steps in which its bags are topped up.

It helps the eye and judges nothing: a bag is good by its weight alone. Steps differ from hand to
hand and from product to product, so the middle one of the newest is taken, which one large step
does not move.
"""

from __future__ import annotations

from collections import deque
from decimal import Decimal

from station.core.mass import Mass, Unit

FEWEST, KEPT = 5, 25
"""Steps needed before they count, and those remembered; common practice."""
USUAL = Mass(Decimal(16), Unit.GRAM)
"""Taken until there are enough (from memory: a loose hand of cut leaves)."""


class Handful:
    """Learns from the steady weights of one product's bags; any other product begins anew."""

    def __init__(self) -> None:
        self._product = ""
        self._cycle = 0
        self._before: Mass | None = None
        self._steps: deque[Mass] = deque(maxlen=KEPT)

    def see(self, product: str, cycle: int, net: Mass) -> None:
        """Take in a steady net of the bag on the pan.

        Args:
            product: its code.
            cycle: counts the bags; the first weight of each is no step.
            net: what is in the bag.
        """
        if product != self._product:
            self._product, self._before = product, None
            self._steps.clear()
        step = None
        if cycle == self._cycle and self._before is not None:
            step = net - self._before
        self._cycle, self._before = cycle, net
        if step is not None and step.amount > 0:
            self._steps.append(step.in_unit(Unit.GRAM))

    @property
    def mass(self) -> Mass:
        """One handful, more than nothing."""
        if len(self._steps) < FEWEST:
            return USUAL
        steps = sorted(self._steps, key=lambda step: step.amount)
        return steps[len(steps) // 2]

    def halves(self, amount: Mass) -> int:
        """How many half handfuls an amount is, to the nearest, at least one."""
        share = amount.in_unit(Unit.GRAM).amount * 2 / self.mass.amount
        return max(1, int(share.to_integral_value()))
