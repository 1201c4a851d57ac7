"""Weights and empty bags put on the scale one after another, taken from what the line shows.

A reading is taken by itself once it is steady for a while and can only belong to the load asked
for; any other steady reading is taken when a person says so.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal

from station.core.mass import Mass
from station.core.metrology.check_plan import PlannedLoad
from station.core.metrology.scale_check import (
    CheckedLoad,
    CheckReading,
    CheckStage,
    ScaleCheck,
    judge_check,
)
from station.core.metrology.scale_suitability import Scale
from station.line.state import LineState, Verb

DWELL_NS = 1_000_000_000
"""How long a reading must stand before it is taken by itself."""
_NEAR = 10
"""Intervals around a load within which a reading can belong to it."""
_HALF = Decimal("0.5")


def steady_indication(state: LineState) -> Mass | None:
    """What the scale shows, where it stands still and can be believed; else None."""
    shown = state.shown
    if shown is None or not shown.steady or state.verb is Verb.NO_READING:
        return None
    return Mass.of(shown.digits, shown.unit)


@dataclass(slots=True)
class Settled:
    """Tells for how long the same indication stands.

    Args:
        dwell_ns: this long is enough.
    """

    dwell_ns: int
    _stood: Mass | None = None
    _since_ns: int = 0

    def see(self, state: LineState) -> Mass | None:
        """The indication, once it has stood long enough; else None."""
        now = steady_indication(state)
        if now is None or state.shown is None:
            self._stood = None
            return None
        if self._stood is None or now != self._stood:
            self._stood, self._since_ns = now, state.shown.seen_at_ns
        return now if state.shown.seen_at_ns - self._since_ns >= self.dwell_ns else None


class GuidedCheck:
    """A check of the scale, load by load.

    Args:
        plate: what the plate of the scale says.
        planned: the loads, in the order they are put on.
        dwell_ns: how long a reading must stand.
    """

    def __init__(
        self, plate: Scale, planned: Sequence[PlannedLoad], dwell_ns: int = DWELL_NS
    ) -> None:
        self._plate, self.planned = plate, tuple(planned)
        self._settled = Settled(dwell_ns)
        self.readings: list[CheckReading] = []

    @property
    def wanted(self) -> PlannedLoad | None:
        """The load to put on now; None when all are taken."""
        at = len(self.readings)
        return self.planned[at] if at < len(self.planned) else None

    def see(self, state: LineState) -> bool:
        """Take the wanted load where the line shows it; says whether it did."""
        wanted, stood = self.wanted, self._settled.see(state)
        if wanted is None or stood is None or not self._belongs(stood, wanted):
            return False
        self._keep(wanted, stood)
        return True

    def take(self, state: LineState) -> str:
        """Take what the scale shows for the wanted load; returns why not, or nothing."""
        wanted, stood = self.wanted, steady_indication(state)
        if wanted is None:
            return "all loads are taken"
        if stood is None or stood.unit is not wanted.mass.unit:
            return "wait until the scale shows a steady weight"
        self._keep(wanted, stood)
        return ""

    def again(self) -> None:
        """Drop the last reading: its load is wanted once more."""
        if self.readings:
            self.readings.pop()

    def judged(self) -> tuple[CheckedLoad, ...]:
        """The loads taken so far, judged, in the order they were put on.

        Raises:
            RuleRefused: a test weight is too coarse for the scale.
        """
        at = datetime.min  # noqa: DTZ901  nobody reads the time of a part of a check
        return tuple(
            judge_check(self._plate, [one], at, CheckStage.AS_FOUND).loads[0]
            for one in self.readings
        )

    def check(self, at: datetime, stage: CheckStage) -> ScaleCheck:
        """The whole check.

        Raises:
            RuleRefused: no load is taken, or a test weight is too coarse for the scale.
        """
        return judge_check(self._plate, self.readings, at, stage)

    def _belongs(self, stood: Mass, wanted: PlannedLoad) -> bool:
        """Whether a reading is near the wanted load and nearer to it than to the one before."""
        if stood.unit is not wanted.mass.unit:
            return False
        off = abs(stood - wanted.mass)
        at = len(self.readings)
        if at and off >= abs(wanted.mass - self.planned[at - 1].mass) * _HALF:
            return False
        return off <= self._plate.interval * _NEAR

    def _keep(self, wanted: PlannedLoad, stood: Mass) -> None:
        self.readings.append(CheckReading(wanted.load, wanted.weights, stood))


class BagSeries:
    """Empty bags, one after another: zero, bag, zero.

    Args:
        wanted: how many.
        dwell_ns: how long a reading must stand.
    """

    def __init__(self, wanted: int, dwell_ns: int = DWELL_NS) -> None:
        self.wanted = wanted
        self._settled = Settled(dwell_ns)
        self._zero_seen = False
        self.tares: list[Mass] = []

    @property
    def done(self) -> bool:
        """Whether all bags were weighed."""
        return len(self.tares) >= self.wanted

    @property
    def waits_for_bag(self) -> bool:
        """Whether the pan showed zero and the next bag may go on."""
        return self._zero_seen and not self.done

    def see(self, state: LineState) -> bool:
        """Take a bag where the line shows one after zero; says whether it did."""
        stood = self._settled.see(state)
        if stood is None or self.done:
            return False
        if not stood.amount:
            self._zero_seen = True
        elif self._zero_seen and stood.amount > 0:
            self._zero_seen = False
            self.tares.append(stood)
            return True
        return False

    def again(self) -> None:
        """Drop the last bag; the pan must show zero before the next."""
        if self.tares:
            self.tares.pop()
        self._zero_seen = False
