"""The pan of the simulated scale: what lies on it, and how its load cell follows. Pure.

Masses are grams and times seconds of the bench's own time, both as floats: this is a model of
nature, not a weighing. What leaves the scale are digits.
"""

from __future__ import annotations

import math
import random
from collections import deque
from dataclasses import dataclass

STEP_S = 0.01


@dataclass(frozen=True, slots=True)
class Feel:
    """How the load cell behaves.

    Args:
        noise_g: standard deviation of the electrical noise, in grams.
        natural_hz: how fast the cell swings.
        damping: 1 just does not swing; below, it overshoots.
        splash: share of a pour's rate, in g/s, that shows as shaking, in grams.
        rest_s: how long the cell must stay within the rest band to be at rest.
    """

    noise_g: float = 0.05
    natural_hz: float = 5.0
    damping: float = 0.7
    splash: float = 0.02
    rest_s: float = 0.25


@dataclass(slots=True)
class _Pour:
    grams_left: float
    seconds_left: float


class Pan:
    """The load on the pan and the cell beneath it.

    Args:
        feel: how the cell behaves.
        chance: where noise comes from.
    """

    def __init__(self, feel: Feel, chance: random.Random) -> None:
        self._feel = feel
        self._chance = chance
        self._pours: list[_Pour] = []
        self._now_s = 0.0
        self._cell = 0.0
        self._speed = 0.0
        self._recent: deque[float] = deque([0.0], maxlen=max(2, round(feel.rest_s / STEP_S)))
        self.bag: float | None = None
        """Mass of the empty bag on the pan, or None."""
        self.content = 0.0
        """What is in the bag."""
        self.residue = 0.0
        """What lies on the pan itself."""
        self.drift_per_s = 0.0
        self._drifted = 0.0

    @property
    def load(self) -> float:
        """True load on the pan, without drift."""
        return (self.bag or 0.0) + self.content + self.residue

    @property
    def signal(self) -> float:
        """What the load cell gives at this moment, noise included."""
        return self._recent[-1]

    def swing(self) -> float:
        """Largest minus smallest signal within the rest time."""
        return max(self._recent) - min(self._recent)

    def pour(self, grams: float, over_s: float) -> None:
        """Let product run into the bag, or onto the pan where there is none."""
        self._pours.append(_Pour(grams, max(over_s, STEP_S)))

    def stop_pouring(self) -> None:
        """End all pours where they are."""
        self._pours.clear()

    def advance(self, to_s: float) -> None:
        """Let the time pass up to ``to_s``."""
        while self._now_s + STEP_S <= to_s:
            self._now_s += STEP_S
            self._step()

    def _step(self) -> None:
        feel = self._feel
        shaking = self._run_pours() * feel.splash
        self._drifted += self.drift_per_s * STEP_S
        target = self.load + self._drifted
        if shaking:
            target += self._chance.gauss(0.0, shaking)
        pull = math.tau * feel.natural_hz
        force = pull * (pull * (target - self._cell) - 2.0 * feel.damping * self._speed)
        self._speed += force * STEP_S
        self._cell += self._speed * STEP_S
        self._recent.append(self._cell + self._chance.gauss(0.0, feel.noise_g))

    def _run_pours(self) -> float:
        """Move product for one step; return the rate in g/s."""
        rate = 0.0
        for pour in self._pours:
            share = min(1.0, STEP_S / pour.seconds_left)
            moved = pour.grams_left * share
            pour.grams_left -= moved
            pour.seconds_left -= STEP_S
            rate += moved / STEP_S
            if self.bag is None:
                self.residue += moved
            else:
                self.content += moved
        if self._pours:
            self._pours = [pour for pour in self._pours if pour.seconds_left > STEP_S / 2]
        return rate
