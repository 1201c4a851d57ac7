"""Chance that a batch would pass the official sample: finished, or while it is still packed.

Estimates in floats; no verdict rests on them. For a finished batch the counts of T1 and T2 packs
are known, so their clauses are exact hypergeometric probabilities; the mean clause is the normal
approximation with the finite-lot correction. For a running batch the packs still to come are taken
as normal with the mean and spread so far, which is slightly optimistic. Seeded simulation agrees
within 0.015 for each part.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from math import sqrt

from station.core.metrology.plans import Plan
from station.core.metrology.probability import (
    binomial_pmf,
    binomial_range,
    hypergeometric_cdf,
    hypergeometric_pmf,
    normal_cdf,
)
from station.core.metrology.running import RunningBatch

SAFE_FROM = 0.99
THIN_FROM = 0.90


class Outlook(StrEnum):
    """A forecast in one word, for the line."""

    SAFE = "safe"
    THIN = "thin"
    FAILING = "failing"


@dataclass(frozen=True, slots=True)
class Forecast:
    """Chance of passing, whole and by clause, each from 0 to 1.

    Args:
        mean: chance that the mean clause holds.
        t1: chance that the T1 clause holds.
        t2: chance that the T2 clause holds.
        plan: plan the official sample would follow.
        expected: size of the finished batch.
    """

    mean: float
    t1: float
    t2: float
    plan: Plan
    expected: int

    @property
    def passing(self) -> float:
        """Chance that all clauses hold, taken as independent."""
        return self.mean * self.t1 * self.t2

    @property
    def outlook(self) -> Outlook:
        """Safe from 0.99, thin from 0.90, failing below."""
        if self.passing >= SAFE_FROM:
            return Outlook.SAFE
        return Outlook.THIN if self.passing >= THIN_FROM else Outlook.FAILING


def forecast(packs: RunningBatch, plan: Plan, expected: int | None = None) -> Forecast:
    """Forecast the official test of a batch.

    Args:
        packs: packs weighed so far, at least two; all of the batch when it is finished.
        plan: plan for the finished batch; a full plan is allowed.
        expected: size of the finished batch; ``None`` means it is finished.

    Raises:
        ValueError: fewer than two packs, fewer expected than packed, or a plan that takes more
            packs than the batch will have.
    """
    lot = packs.n if expected is None else expected
    needed = plan.n if plan.second is None else plan.n + plan.second.n
    if packs.n < 2:
        raise ValueError("a forecast needs at least two packs")
    if lot < packs.n:
        raise ValueError(f"{packs.n} packs are weighed already, more than the {lot} expected")
    if needed > lot:
        raise ValueError(f"the plan takes {needed} packs, the batch will have only {lot}")
    rest = lot - packs.n
    mean_error, spread = float(packs.mean_error), float(packs.spread())
    first, second = packs.limits.t1 - packs.limits.nominal, packs.limits.t2 - packs.limits.nominal
    share_1 = _share_below(float(first.amount), mean_error, spread)
    share_2 = _share_below(float(second.amount), mean_error, spread)
    return Forecast(
        mean=_mean_clause(mean_error, spread, packs.n, lot, plan),
        t1=_mixed(packs.t1_count, rest, share_1, lot, plan, t2=False),
        t2=1.0
        if plan.t2_accept is None
        else _mixed(packs.t2_count, rest, share_2, lot, plan, t2=True),
        plan=plan,
        expected=lot,
    )


def _share_below(limit: float, mean: float, spread: float) -> float:
    if spread == 0.0:
        return float(mean < limit)
    return normal_cdf((limit - mean) / spread)


def _mean_clause(mean_error: float, spread: float, n: int, lot: int, plan: Plan) -> float:
    drawn, factor = plan.mean_size, sqrt(plan.factor_squared)
    rest = lot - n
    variance = 0.0
    if rest:
        variance += (rest / lot) ** 2 * (1.0 / rest + 1.0 / n)
    if drawn < lot and drawn > 1:
        variance += (1.0 - drawn / lot) * (1.0 / drawn + factor**2 / (2.0 * (drawn - 1)))
    elif drawn < lot:
        variance += 1.0 - drawn / lot
    margin = mean_error + factor * spread
    if variance == 0.0 or spread == 0.0:
        return float(margin >= 0.0)
    return normal_cdf(margin / (spread * sqrt(variance)))


def _mixed(known: int, rest: int, share: float, lot: int, plan: Plan, *, t2: bool) -> float:
    """Average the clause over the number of short packs still to come."""
    if rest == 0 or share == 0.0:
        return _clause(known, lot, plan, t2=t2)
    total = 0.0
    for more in binomial_range(rest, share):
        weight = binomial_pmf(more, rest, share)
        if weight > 1e-15:
            total += weight * _clause(known + more, lot, plan, t2=t2)
    return min(1.0, total)


def _clause(short: int, lot: int, plan: Plan, *, t2: bool) -> float:
    if t2:
        assert plan.t2_accept is not None
        return hypergeometric_cdf(plan.t2_accept, lot, short, plan.n)
    if plan.second is None:
        return hypergeometric_cdf(plan.accept, lot, short, plan.n)
    chance = hypergeometric_cdf(plan.accept, lot, short, plan.n)
    for found in range(plan.accept + 1, plan.second.reject_first):
        chance += hypergeometric_pmf(found, lot, short, plan.n) * hypergeometric_cdf(
            plan.second.accept - found, lot - plan.n, short - found, plan.second.n
        )
    return min(1.0, chance)
