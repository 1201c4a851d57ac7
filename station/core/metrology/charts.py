"""Control charts of fills and of the empty scale: mean and s, EWMA, CUSUM.

Factors are computed from the gamma function (ISO 7870-2; NIST/SEMATECH e-Handbook 6.3.2), not from
a rounded table. Only the lower side of a fill chart is legal, the upper side is giveaway. Floats:
a chart warns, it does not judge.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, lgamma, sqrt

WARNING_SIGMAS = 1.96
ACTION_SIGMAS = 3.09
_THREE = 3.0


@dataclass(frozen=True, slots=True)
class ChartFactors:
    """Factors of mean and s charts for subgroups of ``n`` (ISO 7870-2 Table 2).

    Args:
        n: packs in a subgroup.
        c4: expected s over sigma.
        a: 3 / sqrt(n), mean chart from a known sigma.
        a3: 3 / (c4 sqrt(n)), mean chart from the mean of s.
        b3: lower factor of the s chart from the mean of s.
        b4: upper factor of the s chart from the mean of s.
        b5: lower factor of the s chart from a known sigma.
        b6: upper factor of the s chart from a known sigma.
    """

    n: int
    c4: float
    a: float
    a3: float
    b3: float
    b4: float
    b5: float
    b6: float


def chart_factors(n: int) -> ChartFactors:
    """Compute the factors for subgroups of ``n`` packs, two or more."""
    if n < 2:
        raise ValueError(f"a subgroup needs at least 2 packs, not {n}")
    c4 = sqrt(2.0 / (n - 1)) * exp(lgamma(n / 2.0) - lgamma((n - 1) / 2.0))
    width = _THREE * sqrt(1.0 - c4 * c4)
    return ChartFactors(
        n=n,
        c4=c4,
        a=_THREE / sqrt(n),
        a3=_THREE / (c4 * sqrt(n)),
        b3=max(0.0, 1.0 - width / c4),
        b4=1.0 + width / c4,
        b5=max(0.0, c4 - width),
        b6=c4 + width,
    )


@dataclass(frozen=True, slots=True)
class ChartLimits:
    """Centre, warning and action limits of a chart."""

    centre: float
    lower_warning: float
    upper_warning: float
    lower_action: float
    upper_action: float


def mean_limits(target: float, sigma: float, n: int) -> ChartLimits:
    """Limits of a chart of means: target +/- 1.96 and 3.09 sigma / sqrt(n)."""
    error = sigma / sqrt(n)
    return ChartLimits(
        target,
        target - WARNING_SIGMAS * error,
        target + WARNING_SIGMAS * error,
        target - ACTION_SIGMAS * error,
        target + ACTION_SIGMAS * error,
    )


@dataclass(frozen=True, slots=True)
class Ewma:
    """One point of an exponentially weighted moving average chart."""

    value: float
    lower: float
    upper: float

    @property
    def signal(self) -> bool:
        """The average lies outside its limits."""
        return not self.lower <= self.value <= self.upper


def ewma(
    values: Sequence[float],
    target: float,
    sigma: float,
    weight: float = 0.2,
    width: float = 3.0,
    *,
    settled: bool = False,
) -> tuple[Ewma, ...]:
    """Average each value with those before it (ISO 7870-6).

    Args:
        values: values in order.
        target: level the average starts from.
        sigma: standard deviation of one value.
        weight: weight of the newest value, above 0 and at most 1.
        width: limits at this many standard deviations of the average.
        settled: use the limits of a long run from the first value on.
    """
    if not 0.0 < weight <= 1.0:
        raise ValueError(f"the weight of an EWMA lies above 0 and at most 1, not {weight}")
    points = []
    average = target
    long_run = width * sigma * sqrt(weight / (2.0 - weight))
    for count, value in enumerate(values, start=1):
        average += weight * (value - average)
        growth = 1.0 if settled else sqrt(1.0 - (1.0 - weight) ** (2 * count))
        points.append(Ewma(average, target - long_run * growth, target + long_run * growth))
    return tuple(points)


@dataclass(frozen=True, slots=True)
class Cusum:
    """One point of a tabular cumulative sum chart.

    Args:
        high: sum of rises beyond the slack.
        low: sum of falls beyond the slack.
        limit: decision limit.
    """

    high: float
    low: float
    limit: float

    @property
    def signal(self) -> bool:
        """One of the sums is beyond the limit."""
        return self.high > self.limit or self.low > self.limit


def cusum(values: Sequence[float], target: float, slack: float, limit: float) -> tuple[Cusum, ...]:
    """Cumulate deviations beyond a slack on either side (ISO 7870-4).

    Args:
        values: values in order.
        target: level to hold.
        slack: K, usually half a standard deviation.
        limit: H, usually four or five standard deviations.
    """
    if slack < 0.0 or limit <= 0.0:
        raise ValueError(f"slack {slack} is not negative and limit {limit} is positive")
    points = []
    high = low = 0.0
    for value in values:
        high = max(0.0, high + value - target - slack)
        low = max(0.0, low + target - slack - value)
        points.append(Cusum(high, low, limit))
    return tuple(points)
