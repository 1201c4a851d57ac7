"""The whole bench: simulated scale on a real line, link, readings, and a packer who sees a screen.

A small judge inside the test plays the station: it asks for zero, guides the filling and accepts
a bag on a steady reading.
"""

import threading
import time
from dataclasses import dataclass
from decimal import Decimal

import pytest

from drivers.bench import BenchScale
from drivers.connection import LinkRules
from drivers.frames.scp0499 import Scp0499Parser
from drivers.link import LinkItem, ScaleLink
from drivers.packer import Habits, PackerCue, SimulatedPacker
from drivers.port import PortSettings
from drivers.steady import Reading, SteadyRules

TARE, LOW, TARGET, HIGH = Decimal(6), Decimal(250), Decimal(254), Decimal(262)


class KnownScale(BenchScale):
    """Knows what was in the bag before each move of the hand."""

    levels: tuple[float, ...] = ()

    def put_bag(self, grams: float) -> None:
        self.levels = ()
        super().put_bag(grams)

    def pour(self, grams: float, over_s: float = 0.0) -> None:
        self.levels = (*self.levels, self.content_grams)
        super().pour(grams, over_s)

    def take_out(self, grams: float) -> float:
        self.levels = (*self.levels, self.content_grams)
        return super().take_out(grams)


@dataclass
class Judge:
    """Plays the station, on the link's thread."""

    bags: int

    def __post_init__(self) -> None:
        self.cue = PackerCue("EMPTY PAN", None, 0)
        self.accepted: list[Decimal] = []
        self.true_grams: list[tuple[float, ...]] = []
        """What was in each accepted bag; more than one where the hand moved on meanwhile."""
        self.done = threading.Event()
        self.scale: KnownScale

    def on_item(self, item: LinkItem) -> None:
        if isinstance(item, Reading):
            self.cue = self._next(item)

    def _next(self, reading: Reading) -> PackerCue:
        verb, cycle = self.cue.verb, self.cue.cycle
        if reading.fault:
            return PackerCue("NO READING", None, cycle)
        if verb in ("EMPTY PAN", "LIFT BAG", "NO READING"):
            if reading.steady and reading.at_zero:
                return PackerCue("BAG ON", None, cycle + 1)
            return self.cue
        net = reading.value - TARE
        if reading.value < 3:
            return PackerCue("BAG ON", None, cycle)
        if reading.steady and LOW <= net <= HIGH:
            self.accepted.append(net)
            self.true_grams.append((*self.scale.levels, self.scale.content_grams))
            if len(self.accepted) == self.bags:
                self.done.set()
            return PackerCue("LIFT BAG", None, cycle)
        if net < LOW:
            return PackerCue("ADD", TARGET - net, cycle)
        if net > HIGH:
            return PackerCue("TAKE OUT", net - TARGET, cycle)
        return PackerCue("WAIT", None, cycle)


def pack(bags: int, transport: str | None, speed: float, frames_per_s: float) -> tuple:
    scale = KnownScale(frames_per_s=frames_per_s, speed=speed, transport=transport, seed=7)
    judge = Judge(bags)
    judge.scale = scale
    link = ScaleLink(
        PortSettings(scale.start()),
        Scp0499Parser,
        SteadyRules(interval=Decimal(1), unit="g"),
        judge.on_item,
        rules=LinkRules(gulp_ns=round(LinkRules().gulp_ns / speed)),  # in the bench's own time
    )
    packer = SimulatedPacker(scale, lambda: judge.cue, Habits(target_g=float(TARGET)), seed=3)
    started = time.monotonic()
    link.start()
    packer.start()
    try:
        assert judge.done.wait(50), f"only {len(judge.accepted)} bags, screen: {judge.cue}"
    finally:
        packer.stop()
        link.stop()
        scale.stop()
    return judge, packer, time.monotonic() - started


@pytest.mark.parametrize("transport", [None, "tcp"])
def test_packer_packs_bags_by_the_screen(transport: str | None) -> None:
    judge, packer, _ = pack(12, transport, speed=40, frames_per_s=400)
    assert len(judge.accepted) == 12
    for net, true in zip(judge.accepted, judge.true_grams, strict=True):
        assert LOW <= net <= HIGH
        # the indication follows the true load within an interval; the bag's own spread is extra,
        # and a busy machine hears of a load when the hand has moved on already
        assert min(abs(float(net) - grams) for grams in true) < 1.6
    assert packer.lifted >= 11
    assert packer.handfuls > 0
    assert packer.set_aside == 0
