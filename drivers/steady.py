"""From frames to readings that may or may not be used, each with the reason. Pure: no clock.

A reading is steady when the scale says it is at rest, when enough consecutive frames say the very
same, and when nothing speaks against the frame. The agreement of two frames is what catches a
digit damaged on the way: the frame of the common standards carries no checksum.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from drivers.frames.base import Condition, Kind, WeightFrame
from drivers.spread import Spread

ZERO_FAULT = "the scale reports a zero error: empty the pan and set it to zero"
_CONDITION_FAULTS = {
    Condition.OVER_CAPACITY: "over capacity: take the load off the pan",
    Condition.ZERO_ERROR: ZERO_FAULT,
    Condition.INITIAL_ZERO_ERROR: (
        "the scale found no zero when it was switched on: empty the pan and switch it on again"
    ),
    Condition.TARE_ERROR: "the scale reports a tare error: empty the pan and clear the tare",
    Condition.NOT_DISPLAYED: "the scale shows no weight",
}


@dataclass(frozen=True, slots=True)
class SteadyRules:
    """What makes a reading of this scale usable.

    Args:
        agree_frames: how many consecutive frames at rest must say the same.
        spread_window_ns: how far back the spread looks.
        stale_after_ns: a reading older than this does not exist.
        interval: the scale interval d, in ``unit``; a value that is no multiple is refused.
        zero_band: a gross of at most this much, either side, is an empty pan; None for one
            interval, and for exactly zero where the interval is not known either.
        unit: the unit the scale must show; None for any.
        capacity: the greatest load, in ``unit``; a value of more than nine intervals above it, as
            far as a scale shows a load (common practice), is refused. None where it is not known.
    """

    agree_frames: int = 2
    spread_window_ns: int = 500_000_000
    stale_after_ns: int = 500_000_000
    interval: Decimal | None = None
    zero_band: Decimal | None = None
    unit: str | None = None
    capacity: Decimal | None = None

    def __post_init__(self) -> None:
        if self.agree_frames < 2:
            raise ValueError(
                f"agree_frames is {self.agree_frames}, at least 2 are needed: the frame has no"
                " checksum and one damaged frame may look right"
            )
        if self.spread_window_ns <= 0 or self.stale_after_ns <= 0:
            raise ValueError("spread_window_ns and stale_after_ns must be above 0")
        if self.interval is not None and not self.interval > 0:
            raise ValueError(f"interval is {self.interval}, it must be above 0")
        if self.zero_band is not None and not self.zero_band >= 0:
            raise ValueError(f"zero_band is {self.zero_band}, it must be 0 or above")


@dataclass(frozen=True, slots=True)
class Reading:
    """One frame and what it is worth.

    Args:
        digits: as the scale sent them; empty where it sent dashes.
        value: the same, exact, in ``unit``; 0 where it sent dashes, then ``fault`` says so.
        unit: as sent.
        kind: gross, net or tare.
        steady: at rest, agreed and without fault.
        at_zero: the pan is empty as far as the scale can tell.
        over: over capacity.
        under: under capacity.
        fault: why the reading may not be used, in words; None when it may.
        spread: largest minus smallest value within the window, in ``unit``.
        agreeing: how many consecutive frames at rest said the same, this one included.
        seen_at_ns: steady count when the frame was received.
        epoch: number of the connection it came over.
        raw: the bytes of the frame.
        motion: the scale says the load is not at rest.
    """

    digits: str
    value: Decimal
    unit: str
    kind: Kind
    steady: bool
    at_zero: bool
    over: bool
    under: bool
    fault: str | None
    spread: Decimal
    agreeing: int
    seen_at_ns: int
    epoch: int
    raw: bytes
    motion: bool = False


class SteadyReader:
    """Turns frames, in the order received, into readings.

    Args:
        rules: what makes a reading of this scale usable.
    """

    def __init__(self, rules: SteadyRules) -> None:
        self._rules = rules
        self._last: WeightFrame | None = None
        self._last_ns = 0
        self._epoch: int | None = None
        self._agreeing = 0
        self._spread = Spread(rules.spread_window_ns)

    @property
    def stale_after_ns(self) -> int:
        """A weight older than this does not count."""
        return self._rules.stale_after_ns

    def reset(self) -> None:
        """Forget all frames."""
        self._last = None
        self._agreeing = 0
        self._spread.clear()

    def disturbed(self) -> None:
        """Something other than a weight came in between: agreement starts again."""
        self._agreeing = 0
        self._last = None

    def feed(self, frame: WeightFrame, seen_at_ns: int, epoch: int) -> Reading:
        """Take the next frame.

        Args:
            frame: as parsed.
            seen_at_ns: steady count when it was received; never below the one before.
            epoch: number of the connection; a new one forgets all frames.
        """
        if epoch != self._epoch:
            self.reset()
            self._epoch = epoch
        value = frame.value
        fault = _fault(frame, self._rules)
        self._agree(frame, fault, seen_at_ns)
        if value is None:
            self._spread.clear()
        spread = Decimal(0) if value is None else self._spread.add(seen_at_ns, value)
        return Reading(
            digits=frame.digits or "",
            value=Decimal(0) if value is None else value,
            unit=frame.unit,
            kind=frame.kind,
            steady=self._agreeing >= self._rules.agree_frames,
            at_zero=fault is None and _at_zero(frame, self._rules),
            over=frame.condition is Condition.OVER_CAPACITY,
            under=frame.condition is Condition.UNDER_CAPACITY,
            fault=fault,
            spread=spread,
            agreeing=self._agreeing,
            seen_at_ns=seen_at_ns,
            epoch=epoch,
            raw=frame.raw,
            motion=frame.motion,
        )

    def _agree(self, frame: WeightFrame, fault: str | None, seen_at_ns: int) -> None:
        last, gap_ns = self._last, seen_at_ns - self._last_ns
        if last is not None and not _same_scale(frame, last):
            self._spread.clear()
        if frame.motion or fault is not None:
            self._agreeing = 0
        elif (
            last is not None
            and _same_scale(frame, last)
            and frame.digits == last.digits
            and not last.motion
            and gap_ns <= self._rules.stale_after_ns
        ):
            self._agreeing += 1
        else:
            self._agreeing = 1
        self._last, self._last_ns = frame, seen_at_ns


def is_stale(reading: Reading, now_ns: int, rules: SteadyRules) -> bool:
    """Whether a reading is too old to exist at the steady count ``now_ns``."""
    return now_ns - reading.seen_at_ns > rules.stale_after_ns


def _same_scale(one: WeightFrame, other: WeightFrame) -> bool:
    """Whether two frames speak of the same weight in the same unit, range and fineness."""
    return (one.unit, one.kind, one.range_no, one.high_resolution) == (
        other.unit,
        other.kind,
        other.range_no,
        other.high_resolution,
    )


def _fault(frame: WeightFrame, rules: SteadyRules) -> str | None:
    """Why a frame may not be used, in words; None when it may."""
    if frame.condition in _CONDITION_FAULTS:
        return _CONDITION_FAULTS[frame.condition]
    if rules.unit is not None and frame.unit != rules.unit:
        return f"other unit {frame.unit}, the line runs in {rules.unit}: set the scale back"
    if frame.high_resolution:
        return f"{frame.digits} {frame.unit} is in high resolution, which is not the indication"
    if frame.kind is Kind.TARE:
        return f"{frame.digits} {frame.unit} is the tare, not the load"
    value = frame.value
    if value is None and frame.condition is Condition.UNDER_CAPACITY:
        return (
            "the scale shows less than zero: see that the pan lies right and nothing lifts it,"
            " empty it and set the scale to zero"
        )
    if value is None:
        return "the scale sent dashes instead of a weight"
    if rules.interval is not None and value % rules.interval:
        return f"{frame.digits} {frame.unit} is not a multiple of {rules.interval} {frame.unit}"
    most = rules.capacity
    if most is not None and abs(value) > most + 9 * (rules.interval or Decimal(0)):
        return f"{frame.digits} {frame.unit} is more than the scale weighs, {most} {frame.unit}"
    if frame.condition is Condition.UNDER_CAPACITY and not frame.motion:
        return (
            f"{frame.digits} {frame.unit} is below what the scale weighs: see that the pan lies"
            " right and nothing lifts it, empty it and set the scale to zero"
        )
    at_centre = frame.condition is Condition.CENTRE_OF_ZERO
    if at_centre and frame.kind is Kind.GROSS and value and not frame.motion:
        return f"the scale says centre of zero and shows {frame.digits} {frame.unit}"
    return None


def _at_zero(frame: WeightFrame, rules: SteadyRules) -> bool:
    """Whether the pan is empty; a net of zero says nothing about the pan."""
    if frame.condition is Condition.CENTRE_OF_ZERO:
        return True
    if frame.value is None or frame.kind is not Kind.GROSS:
        return False
    band = rules.zero_band if rules.zero_band is not None else rules.interval
    return abs(frame.value) <= (band or 0)
