"""A simulated packer for the bench: works the scale by hand, from what a person sees.

Puts a bag on, fills it roughly, then corrects by handfuls as the screen says, seals, lifts. The
packer knows nothing of the scale's true load: only the screen's verb and grams, and what the own
hands did. Times are seconds of the bench's time.
"""

from __future__ import annotations

import random
import threading
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal

from drivers.bench import BenchScale
from drivers.turns import turns

_HAND_G = 400.0
"""How hard a hand presses the pan."""
_LEAST_PATIENCE_S = 0.25
"""Real seconds a packer waits for the screen at any speed: a hasty bench shall not pour a second
handful because the machine was busy."""


@dataclass(frozen=True, slots=True)
class PackerCue:
    """What the packer sees on the screen.

    Args:
        verb: the one thing to do now, in the screen's words.
        grams: how much to add or take out; None with other verbs.
        cycle: number of the bag's cycle; a new one is a new bag.
    """

    verb: str
    grams: Decimal | None
    cycle: int


@dataclass(frozen=True, slots=True)
class Habits:
    """How this packer works; pairs are mean and standard deviation.

    Args:
        bag_g: mass of an empty bag.
        target_g: what the packer fills towards, net.
        rough_short_g: how far the rough fill stays below that.
        handful_share: a handful's error, as a share of what was wanted.
        handful_g: a handful's error that does not shrink with it.
        reach_s: time to reach, put a bag on or lift it.
        pour_s: time of the rough fill.
        look_s: time between looks at the screen.
        patience_s: longest wait for the screen to follow what the hands did.
    """

    bag_g: tuple[float, float] = (6.0, 0.1)
    target_g: float = 254.0
    rough_short_g: tuple[float, float] = (25.0, 18.0)
    handful_share: float = 0.08
    handful_g: float = 1.2
    reach_s: tuple[float, float] = (0.45, 0.08)
    pour_s: float = 1.0
    look_s: float = 0.15
    patience_s: float = 1.2


class SimulatedPacker:
    """Packs bags on a bench scale, on a thread of its own or step by step.

    Args:
        scale: worked by hand.
        see: returns what the screen shows now; None while it shows nothing.
        habits: how this packer works.
        seed: same seed, same hands.
    """

    def __init__(
        self,
        scale: BenchScale,
        see: Callable[[], PackerCue | None],
        habits: Habits | None = None,
        seed: int = 1,
    ) -> None:
        self._scale = scale
        self._see = see
        self._habits = habits or Habits()
        self._chance = random.Random(seed)
        self._stopping = threading.Event()
        self._thread = threading.Thread(target=self._work, name="simulated packer")
        self._acts: dict[str, Callable[[PackerCue], None]] = {  # with other verbs the hands rest
            "BAG ON": self._put_bag,
            "ADD": self._add,
            "TAKE OUT": self._take_out,
            "LIFT BAG": self._lift,
            "SET ASIDE": self._put_aside,
            "EMPTY PAN": self._put_aside,
            "WIPE PAN": self._wipe,
            "PRESS PAN": self._press,
            "RESTART SCALE": self._restart,
        }
        self._bag_on = False
        self._filled_cycle: int | None = None
        self.lifted = 0
        """Bags lifted when told LIFT BAG."""
        self.set_aside = 0
        """Bags lifted when told SET ASIDE or EMPTY PAN."""
        self.handfuls = 0
        """Times product was added or taken out after the rough fill."""

    def start(self) -> None:
        """Start packing."""
        self._thread.start()

    def stop(self, timeout_s: float = 10.0) -> None:
        """Stop packing; the hands finish what they are doing.

        Raises:
            TimeoutError: they did not in time.
        """
        self._stopping.set()
        if self._thread.ident is None:
            return
        for turn in turns(timeout_s):
            self._thread.join(turn)
            if not self._thread.is_alive():
                return
        if self._thread.is_alive():
            raise TimeoutError("the simulated packer did not stop in time")

    def step(self) -> None:
        """Look once, and do what the screen says once its figure stands."""
        cue = self._see()
        self._wait(self._habits.look_s)
        if cue is None or cue != self._see():
            return  # the figure still moves
        if act := self._acts.get(cue.verb):
            act(cue)

    def _work(self) -> None:
        while not self._stopping.is_set():
            self.step()

    def _wait(self, seconds: float) -> None:
        self._stopping.wait(max(0.0, seconds) / self._scale.speed)

    def _reach(self) -> None:
        self._wait(self._chance.gauss(*self._habits.reach_s))

    def _await_screen(self, before: PackerCue) -> None:
        """Wait until the screen follows what the hands did, for as long as patience lasts."""
        patience_s = max(self._habits.patience_s, _LEAST_PATIENCE_S * self._scale.speed)
        looks = max(1, round(patience_s / self._habits.look_s))
        for _ in range(looks):
            self._wait(self._habits.look_s)
            if self._see() != before or self._stopping.is_set():
                return

    # --- one act a verb -----------------------------------------------------------------------

    def _put_bag(self, cue: PackerCue) -> None:
        if self._bag_on or self._filled_cycle == cue.cycle:
            return  # the screen has not noticed yet
        self._reach()
        if self._stopping.is_set():
            return
        self._filled_cycle = cue.cycle
        self._bag_on = True
        habits = self._habits
        self._scale.put_bag(max(0.5, self._chance.gauss(*habits.bag_g)))
        self._wait(0.3)
        rough = habits.target_g - self._chance.gauss(*habits.rough_short_g)
        self._scale.pour(max(5.0, rough), habits.pour_s)
        self._wait(habits.pour_s)
        self._await_screen(cue)

    def _add(self, cue: PackerCue) -> None:
        if self._bag_on:
            self._handful(cue, self._scale_up)

    def _take_out(self, cue: PackerCue) -> None:
        if self._bag_on:
            self._handful(cue, self._scale_down)

    def _scale_up(self, grams: float) -> None:
        self._scale.pour(grams, 0.15)

    def _scale_down(self, grams: float) -> None:
        self._scale.take_out(grams)

    def _handful(self, cue: PackerCue, move: Callable[[float], None]) -> None:
        wanted = float(cue.grams or 0)
        habits = self._habits
        error = self._chance.gauss(0.0, habits.handful_g + habits.handful_share * wanted)
        self._reach()
        if self._stopping.is_set() or self._see() != cue:
            return  # eyes stay on the screen while the hand goes
        move(max(0.5, wanted + error))
        self.handfuls += 1
        self._await_screen(cue)

    def _lift(self, cue: PackerCue) -> None:
        if self._take_bag_off(cue):
            self.lifted += 1

    def _put_aside(self, cue: PackerCue) -> None:
        if self._take_bag_off(cue):
            self.set_aside += 1

    def _take_bag_off(self, cue: PackerCue) -> bool:
        if not self._bag_on:
            return False
        self._reach()
        if self._stopping.is_set():
            return False
        self._scale.lift()
        self._bag_on = False
        self._await_screen(cue)
        return True

    def _wipe(self, cue: PackerCue) -> None:
        """Wipe the pan; a bag that lies on it already is taken off first, as zero is pressed."""
        self._take_bag_off(cue)
        self._reach()
        self._scale.residue(0)
        self._wait(0.5)
        self._scale.press_zero()
        self._await_screen(cue)

    def _press(self, cue: PackerCue) -> None:
        """Take everything off and press the pan with a hand."""
        self._take_bag_off(cue)
        self._reach()
        self._scale.residue(_HAND_G)
        self._wait(0.5)
        self._scale.residue(0)
        self._await_screen(cue)

    def _restart(self, cue: PackerCue) -> None:
        """Switch the scale off and on with nothing on it."""
        self._take_bag_off(cue)
        self._reach()
        self._scale.power_cycle()
        self._await_screen(cue)
