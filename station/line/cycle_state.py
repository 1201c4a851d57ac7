"""The whole state of a line between two events, and what follows from it alone."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from functools import lru_cache

from drivers.steady import Reading
from station.core.mass import Mass, Unit
from station.core.pack import PackRecord
from station.core.run import Run
from station.line.state import Notice, Phase, Seal, Tally

_HALF = Decimal("0.5")
NO_FRAME_YET = "waiting for the scale's first reading"


@dataclass(frozen=True, slots=True)
class LineRules:
    """The line's own timing and thresholds.

    Args:
        interval: the scale interval, in the scale's unit.
        dwell_ns: how long a reading must be steady before a bag is judged.
        stale_ns: a reading older than this does not exist.
    """

    interval: Mass
    dwell_ns: int = 300_000_000
    stale_ns: int = 500_000_000


@dataclass(frozen=True, slots=True)
class Load:
    """The bag on the pan, from the first load to its judgement."""

    since_ns: int
    steady_since_ns: int | None = None
    plateau: Mass | None = None
    """Newest steady net."""
    top_ups: int = 0
    aside: str = ""
    """Why the packer wants it set aside; it is recorded at the next steady reading."""


@dataclass(frozen=True, slots=True)
class Kept:
    """The recorded bag, from its record until it leaves the pan."""

    net: Mass
    """Newest steady net."""
    since_ns: int | None
    found: Mass | None = None
    """The net it stood at long enough to be weighed, where that is not what was recorded."""


@dataclass(frozen=True, slots=True)
class Cycle:
    """The whole state of a line."""

    rules: LineRules
    phase: Phase = Phase.CLOSED
    run: Run | None = None
    following: Run | None = None
    """The run with other lots, from the moment the bag on the pan was lifted."""
    number: int = 0
    reading: Reading | None = None
    trouble: str = NO_FRAME_YET
    """Why no reading can be believed; empty when the newest can."""
    port: str = ""
    load: Load | None = None
    kept: Kept | None = None
    unloading: bool = False
    """A bag was taken in; the first steady reading of the pan after it is still to come."""
    residue: Reading | None = None
    """That reading, until the next bag is judged."""
    last: PackRecord | None = None
    last_is_good: bool = False
    tally: Tally = field(default_factory=Tally)
    issued: str = ""
    """Serial of the last bag while its first label is at the printer."""
    coming: str = ""
    """Serial of the last bag while the printer has its first label and has not said it is out."""
    unlabelled: str = ""
    """The same serial once its bag was lifted: applied as soon as the label is out."""
    reissued: tuple[str, ...] = ()
    """Serials of labels a copy of which is at the printer."""
    stop: str = ""
    """What a person must look at, in phase STOPPED."""
    bars: tuple[tuple[str, str], ...] = ()
    """Sources that take acceptance away, with their words, in the order they came."""
    closing: tuple[str, ...] = ()
    """Why the duties close acceptance."""
    due: tuple[Notice, ...] = ()
    seals: tuple[Seal, ...] = ()

    @property
    def closed(self) -> tuple[str, ...]:
        """Every reason why no bag is taken although a run is open."""
        return (*(words for _, words in self.bars), *self.closing)


def indication(reading: Reading) -> Mass:
    """The reading as a mass in the scale's unit, digits kept."""
    return _shown_mass(reading.digits, reading.unit)


@lru_cache(maxsize=256)
def _shown_mass(digits: str, unit: str) -> Mass:
    """Asked several times of each reading, and a scale shows the same ones again and again."""
    return Mass.of(digits, unit)


def net_of(reading: Reading, run: Run) -> Mass:
    """The indication minus the preset tare of the run's bag, in the scale's unit."""
    gross = indication(reading)
    return gross - run.product.bag.tare.in_unit(gross.unit)


def load_threshold(run: Run, rules: LineRules) -> Mass:
    """From this indication on something is on the pan: half a bag, at least two intervals."""
    tare, least = run.product.bag.tare, rules.interval
    return _threshold(tare.amount, tare.unit, least.amount, least.unit)


@lru_cache(maxsize=16)
def _threshold(tare: Decimal, tare_unit: Unit, interval: Decimal, unit: Unit) -> Mass:
    """Asked of each reading; it changes with the bag only."""
    half = Mass(tare, tare_unit).in_unit(unit) * _HALF
    return max(half, Mass(interval, unit) * 2)


def on_pan(cycle: Cycle) -> bool:
    """Whether a bag that is not recorded yet lies on the pan, also one that waits to be taken in.

    While no bag is taken, because acceptance is closed or the order is done, it lies there in
    phase READY.
    """
    if cycle.phase is not Phase.READY:
        return cycle.phase is Phase.LOADED
    if cycle.reading is None or cycle.run is None:
        return False
    return indication(cycle.reading) >= load_threshold(cycle.run, cycle.rules)


def may_end(cycle: Cycle) -> bool:
    """Whether the run may end: no bag is on the pan, or no reading tells whether the last one is.

    A scale that is silent must not keep a run open for ever.
    """
    if cycle.phase is Phase.LIFT:
        return bool(cycle.trouble)
    return cycle.phase in (Phase.CLEAR_PAN, Phase.READY, Phase.STOPPED)


def order_done(cycle: Cycle) -> bool:
    """Whether the run has all the good bags that were ordered; no more are taken then."""
    run = cycle.run
    return run is not None and run.order_size is not None and cycle.tally.good >= run.order_size
