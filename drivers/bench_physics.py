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
        damping: above 0 and below 1; the smaller, the longer it swings.
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
        self._swing = _one_step(math.tau * feel.natural_hz, feel.damping)
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
        away, speed = self._cell - target, self._speed
        kept, gained, pulled, kept_speed = self._swing
        self._cell = target + kept * away + gained * speed
        self._speed = pulled * away + kept_speed * speed
        self._recent.append(self._cell + self._chance.gauss(0.0, feel.noise_g))

    def _run_pours(self) -> float:
        """Move product for one step; return the rate in g/s."""
        rate = 0.0
        for pour in self._pours:
            share = 1.0 if pour.seconds_left <= STEP_S else STEP_S / pour.seconds_left
            moved = pour.grams_left * share
            pour.grams_left -= moved
            pour.seconds_left -= STEP_S
            rate += moved / STEP_S
            if self.bag is None:
                self.residue += moved
            else:
                self.content += moved
        if self._pours:
            self._pours = [pour for pour in self._pours if pour.grams_left]
        return rate


def _one_step(pull: float, damping: float) -> tuple[float, float, float, float]:
    """Return what one step makes of distance and speed: a damped oscillator, solved exactly.

    Args:
        pull: undamped angular frequency, in 1/s.
        damping: above 0 and below 1.

    Returns:
        distance from distance, distance from speed, speed from distance, speed from speed.
    """
    swing = pull * math.sqrt(1.0 - damping**2)
    fade = math.exp(-damping * pull * STEP_S)
    cos, sin = fade * math.cos(swing * STEP_S), fade * math.sin(swing * STEP_S)
    lag = damping * pull / swing
    return cos + lag * sin, sin / swing, -(pull**2) / swing * sin, cos - lag * sin
