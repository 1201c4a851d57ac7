"""Rehearse the official sample on the real packs of a batch: seeded Monte-Carlo, exact verdicts.

Each rehearsed sample is judged as exactly as a real one (integers only); the share that passes is
an estimate and no official test.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import sqrt
from random import Random

from station.core.long_work import steps
from station.core.mass import Mass
from station.core.metrology.plans import Plan
from station.core.metrology.rule_set import Limits


@dataclass(frozen=True, slots=True)
class Rehearsal:
    """How many rehearsed samples passed.

    Args:
        draws: samples rehearsed.
        passed: samples that passed every clause.
        mean_failed: samples that failed the mean clause.
        t1_failed: samples that failed the T1 clause.
        t2_failed: samples that failed the T2 clause.
        seed: seed of the random draws; the same seed gives the same result.
    """

    draws: int
    passed: int
    mean_failed: int
    t1_failed: int
    t2_failed: int
    seed: int

    @property
    def share(self) -> float:
        """Share that passed."""
        return self.passed / self.draws

    @property
    def standard_error(self) -> float:
        """Standard error of the share."""
        return sqrt(self.share * (1.0 - self.share) / self.draws)


def rehearse(
    nets: Sequence[Mass], limits: Limits, plan: Plan, *, draws: int = 2000, seed: int = 1
) -> Rehearsal:
    """Draw samples from the packs without putting back and judge each of them.

    Raises:
        ValueError: the plan takes more packs than there are, or no draw is asked for.
        GivenUp: nobody wants it any more.
    """
    second = plan.second
    needed = plan.n + (second.n if second else 0)
    if needed > len(nets) or draws < 1:
        raise ValueError(f"{draws} samples of {needed} packs cannot be drawn from {len(nets)}")
    deviations, at_t1, at_t2 = _whole_numbers(nets, limits)
    random = Random(seed)
    passed = mean_failed = t1_failed = t2_failed = 0
    for _ in steps(range(draws), draws):
        drawn = random.sample(deviations, needed)
        first = drawn[: plan.n]
        below_t1 = sum(value < at_t1 for value in first)
        accept, taken = plan.accept, first
        if second is not None and plan.accept < below_t1 < second.reject_first:
            accept, taken = second.accept, drawn
            below_t1 = sum(value < at_t1 for value in drawn)
        mean_ok = _mean_holds(drawn[: plan.mean_size], plan.factor_squared)
        t1_ok = below_t1 <= accept
        t2_ok = plan.t2_accept is None or sum(v < at_t2 for v in taken) <= plan.t2_accept
        mean_failed += not mean_ok
        t1_failed += not t1_ok
        t2_failed += not t2_ok
        passed += mean_ok and t1_ok and t2_ok
    return Rehearsal(draws, passed, mean_failed, t1_failed, t2_failed, seed)


def _whole_numbers(nets: Sequence[Mass], limits: Limits) -> tuple[list[int], int, int]:
    """Deviations from the nominal quantity and both limits as whole numbers of one tiny step."""
    masses = [limits.nominal, limits.t1, limits.t2, *nets]
    places = max(0, *(-int(mass.amount.as_tuple().exponent) for mass in masses))
    nominal, at_t1, at_t2, *values = (int(mass.amount.scaleb(places)) for mass in masses)
    return [value - nominal for value in values], at_t1 - nominal, at_t2 - nominal


def _mean_holds(deviations: Sequence[int], factor_squared: Fraction) -> bool:
    n, total = len(deviations), sum(deviations)
    if total >= 0:
        return True
    if n < 2:
        return False
    squares = sum(value * value for value in deviations)
    scatter = n * squares - total * total  # n (n - 1) times the variance
    return (
        total * total * (n - 1) * factor_squared.denominator
        <= factor_squared.numerator * n * scatter
    )
