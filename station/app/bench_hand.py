"""A person's hand at the simulated scale, as the bench window moves it."""

from __future__ import annotations

import random

from drivers.bench import BenchScale
from drivers.errors import BenchError
from station.app.watch import Watch
from station.core.mass import Unit

_BAG_G = 6.0
_BAG_SPREAD = 0.02


class DemoHand:
    """Implements station.screens.bench.BenchHand.

    Args:
        bench: the simulated scale.
        watch: tells which run is open, so that the right bag is taken.
        seed: same seed, same bags.
    """

    def __init__(self, bench: BenchScale, watch: Watch, seed: int) -> None:
        self._bench = bench
        self._watch = watch
        self._chance = random.Random(seed)

    @property
    def is_plugged(self) -> bool:
        """Whether the scale's cable is in."""
        return self._bench.is_plugged

    def put_bag(self) -> bool:
        """Put an empty bag of the open run on the pan; bags differ a little.

        False while somebody else's load lies there, such as a test weight of the simulated lead.
        """
        state = self._watch.newest
        mean = _BAG_G
        if state is not None and state.run is not None:
            mean = float(state.run.product.bag.tare.in_unit(Unit.GRAM).amount)
        grams = max(1.0, self._chance.gauss(mean, mean * _BAG_SPREAD))
        try:
            self._bench.put_bag(grams)
        except BenchError:
            return False
        return True

    def pour(self, grams: float) -> None:
        """Put product into the bag."""
        self._bench.pour(grams, 0.1)

    def take_out(self, grams: float) -> None:
        """Take product out of the bag."""
        self._bench.take_out(grams)

    def lift(self) -> None:
        """Take the bag off the pan."""
        self._bench.lift()

    def press_zero(self) -> None:
        """Press the scale's zero key."""
        self._bench.press_zero()

    def unplug(self) -> None:
        """Pull the scale's cable."""
        self._bench.unplug()

    def plug_in(self) -> None:
        """Put the scale's cable in."""
        self._bench.plug_in()
