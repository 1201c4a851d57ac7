"""The free drift sensor: readings of the empty scale after every unload.

A step of zero shows as a change of level in the trace. The change point that explains most of the
scatter is found by least squares (the cumulative-sum statistic of Pettitt and Page's family), and
accepted when the scaled cumulative sum passes the Kolmogorov limit. Estimates in floats.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from itertools import accumulate
from math import sqrt
from statistics import fmean

from station.core.mass import Mass
from station.core.pack import Residue

_KOLMOGOROV_1_PERCENT = 1.628
_LEAST_READINGS = 8


@dataclass(frozen=True, slots=True)
class ZeroStep:
    """A dated step of zero.

    Args:
        last_before: time of the last reading at the old level.
        first_after: time of the first reading at the new level.
        size: new level less old level, in the unit of the readings.
        strength: scaled cumulative sum; above 1.628 by chance in less than 1 % of steady traces.
    """

    last_before: datetime
    first_after: datetime
    size: float
    strength: float


def find_step(trace: Sequence[Residue], interval: Mass) -> ZeroStep | None:
    """Find the one moment at which the level of zero changed most, if it changed at all.

    Args:
        trace: readings in order of time, in the unit of ``interval``.
        interval: scale interval; its rounding is the least scatter assumed.

    Returns:
        The step, or ``None`` when the trace is steady or shorter than 8 readings.
    """
    n = len(trace)
    if n < _LEAST_READINGS:
        return None
    values = [float(one.reading.amount) for one in trace]
    mean = fmean(values)
    sums = list(accumulate(value - mean for value in values))
    best = max(range(n - 1), key=lambda index: sums[index] ** 2 / ((index + 1) * (n - index - 1)))
    before, after = values[: best + 1], values[best + 1 :]
    level_before, level_after = fmean(before), fmean(after)
    scatter = sum((value - level_before) ** 2 for value in before)
    scatter += sum((value - level_after) ** 2 for value in after)
    rounding = float(interval.amount) / sqrt(12.0)
    spread = max(sqrt(scatter / (n - 2)), rounding)
    strength = max(abs(one) for one in sums) / (spread * sqrt(n))
    if strength <= _KOLMOGOROV_1_PERCENT:
        return None
    return ZeroStep(trace[best].at, trace[best + 1].at, level_after - level_before, strength)
