"""Distributions the forecasts need, in floats: estimates only, no verdict rests on them.

Sources: NIST/SEMATECH e-Handbook 1.3.6 (normal, t, binomial); ISO 2859-1 and ISO 3951 use the
hypergeometric and noncentral t distribution in the same way.
"""

from __future__ import annotations

from collections.abc import Callable
from math import erfc, exp, lgamma, log, log1p, sqrt

_ROOT_2 = sqrt(2.0)
_WIDTH = 9.0  # standard deviations beyond which a tail is below 1e-18


def normal_cdf(x: float) -> float:
    """P(Z <= x) for a standard normal Z."""
    return 0.5 * erfc(-x / _ROOT_2)


def normal_quantile(p: float) -> float:
    """Return x with ``normal_cdf(x) == p``, by bisection to machine precision.

    Args:
        p: probability strictly between 0 and 1.
    """
    if not 0.0 < p < 1.0:
        raise ValueError(f"a probability strictly between 0 and 1 is needed, not {p}")
    return bisect(lambda x: normal_cdf(x) - p, -40.0, 40.0)


def bisect(rising: Callable[[float], float], low: float, high: float) -> float:
    """Root of a rising function between ``low`` and ``high``."""
    for _ in range(200):
        middle = 0.5 * (low + high)
        if middle in (low, high):
            break
        if rising(middle) < 0.0:
            low = middle
        else:
            high = middle
    return 0.5 * (low + high)


def log_choose(n: int, k: int) -> float:
    """Natural logarithm of the number of ways to choose ``k`` of ``n``."""
    return lgamma(n + 1) - lgamma(k + 1) - lgamma(n - k + 1)


def binomial_pmf(k: int, n: int, p: float) -> float:
    """P(k of n), each with probability ``p``."""
    if k < 0 or k > n:
        return 0.0
    if p <= 0.0 or p >= 1.0:
        return float(k == (0 if p <= 0.0 else n))
    return exp(log_choose(n, k) + k * log(p) + (n - k) * log1p(-p))


def binomial_cdf(k: int, n: int, p: float) -> float:
    """P(at most k of n), summed upwards."""
    return min(1.0, sum(binomial_pmf(i, n, p) for i in range(min(k, n) + 1)))


def binomial_range(n: int, p: float) -> range:
    """Counts that carry all but about 1e-15 of a binomial distribution."""
    spread = _WIDTH * sqrt(n * p * (1.0 - p)) + 25.0
    return range(max(0, int(n * p - spread)), min(n, int(n * p + spread) + 1) + 1)


def hypergeometric_pmf(k: int, lot: int, marked: int, drawn: int) -> float:
    """P(k marked among ``drawn`` packs of a lot with ``marked`` ones), without putting back."""
    if k < max(0, drawn - (lot - marked)) or k > min(drawn, marked):
        return 0.0
    return exp(log_choose(marked, k) + log_choose(lot - marked, drawn - k) - log_choose(lot, drawn))


def hypergeometric_start(k: int, lot: int, marked: int, drawn: int) -> list[float]:
    """Chances of 0, 1 ... k marked packs among those drawn, each from the one before."""
    fewest = max(0, drawn - (lot - marked))
    chances = [0.0] * min(fewest, k + 1)
    if fewest > k:
        return chances
    chance = hypergeometric_pmf(fewest, lot, marked, drawn)
    for found in range(fewest, k + 1):
        chances.append(chance)
        free = lot - marked - drawn + found + 1
        chance *= (marked - found) * (drawn - found) / ((found + 1) * free) if free else 0.0
    return chances


def hypergeometric_cdf(k: int, lot: int, marked: int, drawn: int) -> float:
    """P(at most k marked among the packs drawn)."""
    if k >= min(drawn, marked):
        return 1.0
    return min(1.0, sum(hypergeometric_start(k, lot, marked, drawn)))


def mean_check_probability(shift: float, n: int, factor: float, steps: int = 400) -> float:
    """P(mean + factor * s >= Qn) for a sample of a normal process.

    This is the noncentral t distribution, integrated over the spread of the sample with Simpson's
    rule.

    Args:
        shift: (true mean - Qn) / true standard deviation.
        n: packs in the sample.
        factor: multiplier of s, at most 10 for full accuracy; 0 makes it a plain mean.
        steps: even number of steps of the integration.
    """
    root_n = sqrt(n)
    if n < 2 or factor == 0.0:
        return normal_cdf(shift * root_n)
    freedom = n - 1
    centre = sqrt(1.0 - 1.0 / (2.0 * freedom)) if freedom > 1 else 0.7
    half = _WIDTH / sqrt(2.0 * freedom)
    low, high = max(0.0, centre - half), centre + half
    # density of s/sigma: 2 (f/2)^(f/2) / Gamma(f/2) * x^(f-1) * exp(-f x^2 / 2)
    constant = log(2.0) + 0.5 * freedom * log(0.5 * freedom) - lgamma(0.5 * freedom)
    width = (high - low) / steps
    total = 0.0
    for index in range(steps + 1):
        x = low + index * width
        if x <= 0.0:
            density = exp(constant) if freedom == 1 else 0.0
        else:
            density = exp(constant + (freedom - 1) * log(x) - 0.5 * freedom * x * x)
        weight = 1.0 if index in (0, steps) else (4.0 if index % 2 else 2.0)
        total += weight * density * normal_cdf(root_n * (shift + factor * x))
    return min(1.0, total * width / 3.0)
