"""Keeps a zero shut out that may hide a load. Pure.

A scale that was switched off and on takes what lies on its pan for zero. Where a load was on the
pan before a gap in the stream and the scale shows zero after it, either the bag was lifted
meanwhile or it is still there, and no reading tells which. Readings are then faulted until the
pan proved empty: something is put on and comes off again (a hand pressing the pan will do), or the
indication falls below zero, as it does when a hidden load is lifted, and is set to zero after that.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from drivers.steady import ZERO_FAULT, Reading, SteadyRules

PRESS_PAN = (
    "the scale came back at zero and a load lay on the pan before: take everything off, then press"
    " the pan once with a hand"
)
ZERO_IT = (
    "a load was taken for zero when the scale came back: with the pan empty set the scale to zero,"
    " or switch it off and on"
)
_PRESSED = 20
"""Intervals that count as a hand on the pan."""
_LIFTED = 3
"""Intervals below zero that count as a hidden load lifted."""


def asks_for_zero(reading: Reading) -> bool:
    """Whether a reading that may not be used tells to set the scale to zero, and stands still."""
    told = reading.fault in (ZERO_IT, ZERO_FAULT) or (reading.under and reading.fault is not None)
    return told and not reading.motion


class ZeroGate:
    """Judges the readings of one scale over all its connections.

    Args:
        rules: the scale's; a gap is longer than ``stale_after_ns``.
    """

    def __init__(self, rules: SteadyRules) -> None:
        self._rules = rules
        self._step = rules.interval or Decimal(0)
        self._last: Reading | None = None
        self._asks = False
        """The first steady reading after a gap will tell."""
        self._shut = ""
        self._pressed = False

    def judge(self, reading: Reading) -> Reading:
        """Return the reading, with a fault while a zero may hide a load."""
        last = self._last
        if last is not None and self._is_gap(last, reading) and self._is_load(last):
            self._asks = True
        if reading.fault is None or reading.under:
            self._last = reading
            self._look(reading)
        if not self._shut or reading.fault is not None:
            return reading
        return replace(reading, fault=self._shut, steady=False, at_zero=False)

    def _is_gap(self, last: Reading, reading: Reading) -> bool:
        apart_ns = reading.seen_at_ns - last.seen_at_ns
        return reading.epoch != last.epoch or apart_ns > self._rules.stale_after_ns

    def _is_load(self, reading: Reading) -> bool:
        return not reading.at_zero and reading.value > self._step * 2

    def _look(self, reading: Reading) -> None:
        if self._shut:
            self._try_to_open(reading)
        elif self._asks and reading.steady:
            self._asks = False
            if reading.at_zero:
                self._shut, self._pressed = PRESS_PAN, False

    def _try_to_open(self, reading: Reading) -> None:
        unsaid = reading.under and not reading.digits  # below zero, and by how much it keeps back
        if unsaid or reading.value < -self._step * _LIFTED:
            self._shut, self._pressed = ZERO_IT, True
        elif reading.value > self._step * _PRESSED:
            self._pressed = True
        elif self._pressed and reading.steady and reading.at_zero:
            self._shut = ""
