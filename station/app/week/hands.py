"""The hands of a simulated week: how full a bag becomes, and what the empty pan shows after it.

Spreads are common practice, not plant data. Each packer has a habit of their own, so that figures
by position differ.
"""

from __future__ import annotations

import random
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from decimal import Decimal

from drivers.packer import Habits
from station.app.practice import habits_for
from station.core.mass import Mass
from station.core.pack import Residue, Weighing
from station.core.product import PackMode
from station.core.run import Run

_ASIDE_SHARE = 0.004
_ASIDE = ("foreign body", "wrong weight", "other")
_OFF_ZERO = (0.05, 0.01)
"""Share of empty pans that show one interval more, or one less."""
_HABIT_G = 0.6
"""How much more each packer gives than the one before, in grams."""
_SEALED_SPREAD = 5.5
"""The window of a sealed bag is so many spreads wide: about 6 of 1000 lie outside."""
_MOST_HANDFULS = 30
_FIRST_MS, _HANDFUL_MS = 800, 900


@dataclass(frozen=True, slots=True)
class Filled:
    """One bag.

    Args:
        weighing: what the scale shows.
        aside: why it is set aside before it has a label; empty for most.
    """

    weighing: Weighing
    aside: str


class Hands:
    """Fills bags.

    Args:
        interval: the scale's, in its unit.
        packers: ids of all who pack.
        seed: same seed, same bags.
    """

    def __init__(self, interval: Mass, packers: Sequence[str], seed: int) -> None:
        self._interval, self._packers = interval, tuple(packers)
        self._step_g = float(interval.grams)
        self._chance = random.Random(seed)

    def fill(self, run: Run) -> Filled:
        """Fill one bag of a run until it fits, or weigh a sealed one as it is."""
        chance, habits = self._chance, habits_for(run.product)
        floor, upper = (
            float(limit.grams) / self._step_g for limit in (run.window.floor, run.window.upper)
        )
        if run.product.mode is PackMode.CHECK:
            spread = (upper - floor) / _SEALED_SPREAD
            net, top_ups = round(chance.gauss((floor + upper) / 2, spread)), 0
        else:
            net, top_ups = self._topped_up(run, habits, floor, upper)
        aside = ""
        if chance.random() < _ASIDE_SHARE:
            aside = chance.choice(_ASIDE)
        return Filled(self._weighed(run, net, top_ups), aside)

    def residue(self, at: datetime) -> Residue:
        """What the empty pan showed just before a moment."""
        more, less = _OFF_ZERO
        drawn = self._chance.random()
        steps = 1 if drawn < more else -1 if drawn > 1 - less else 0
        return Residue(at - timedelta(seconds=2), self._interval * steps)

    def jitter(self) -> float:
        """A factor about 1, for the pace."""
        return self._chance.uniform(0.9, 1.1)

    def few(self, most: int) -> int:
        """A number from 0 to ``most``."""
        return self._chance.randint(0, most)

    def _topped_up(self, run: Run, habits: Habits, floor: float, upper: float) -> tuple[int, int]:
        """Net in intervals, and handfuls: toward the target until the window is reached."""
        chance, step = self._chance, self._step_g
        aim = habits.target_g + _HABIT_G * self._packers.index(run.operator)
        load = max(step, aim - chance.gauss(*habits.rough_short_g))
        for handfuls in range(_MOST_HANDFULS):
            net = round(load / step)
            if floor <= net <= upper:
                return net, handfuls
            wanted = abs(aim - load)
            error = chance.gauss(0.0, habits.handful_g + habits.handful_share * wanted)
            handful = max(step / 2, wanted + error)
            load += handful if net < floor else -handful
        return round(habits.target_g / step), _MOST_HANDFULS

    def _weighed(self, run: Run, steps: int, top_ups: int) -> Weighing:
        net = Mass(self._interval.amount * steps, self._interval.unit)
        tare = run.product.bag.tare.in_unit(net.unit)
        steady = self._chance.random() < 0.8
        return Weighing(
            gross=net + tare,
            tare=tare,
            net=net,
            spread=self._interval * (Decimal(0) if steady else Decimal(1)),
            dwell_ms=_FIRST_MS + _HANDFUL_MS * top_ups,
            top_ups=top_ups,
            frame="",
        )
