"""Chance that a batch would pass the official sample: finished, or while it is still packed.

Estimates in floats; no verdict rests on them. For a finished batch the counts of T1 and T2 packs
are known, so their clauses are exact hypergeometric probabilities; the mean clause is the normal
approximation with the finite-lot correction, in which skewness and kurtosis of the packs count:
fills topped up to a floor are far from normal. For a running batch the mean and spread so far stand
for the packs still to come, which is slightly optimistic, and a normal tail for the short ones
among them. The clauses depend on each other (a light sample has a light mean), so the whole chance
is summed over the T1 packs the sample may hold, each with the mean it brings along. Seeded
simulation agrees within 0.015.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from math import exp, pi, sqrt

from station.core.metrology.plans import Plan
from station.core.metrology.probability import (
    binomial_cdf,
    binomial_pmf,
    binomial_range,
    hypergeometric_cdf,
    hypergeometric_start,
    normal_cdf,
)
from station.core.metrology.running import RunningBatch

SAFE_FROM = 0.99
THIN_FROM = 0.90
_NEGLIGIBLE = 1e-8
_SHAPE_FROM = 50.0
"""From about so many packs on their shape counts more than that of a normal process."""


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
        passing: chance that all three hold together.
        plan: plan the official sample would follow.
        expected: size of the finished batch.
    """

    mean: float
    t1: float
    t2: float
    passing: float
    plan: Plan
    expected: int

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
    state = _State(packs, plan, lot)
    t1, together = state.t1_and_together()
    return Forecast(
        mean=state.mean_clause(),
        t1=t1,
        t2=state.t2_clause(),
        passing=together,
        plan=plan,
        expected=lot,
    )


class _State:
    """What is known of a batch, in the unit of the nominal quantity, as deviations from it."""

    def __init__(self, packs: RunningBatch, plan: Plan, lot: int) -> None:
        self.packs, self.plan, self.lot = packs, plan, lot
        self.rest = lot - packs.n
        self.mean, self.spread = float(packs.mean_error), float(packs.spread())
        self.factor = sqrt(plan.factor_squared)
        nominal = packs.limits.nominal
        self.share_1 = self._share_below(float((packs.limits.t1 - nominal).amount))
        self.share_2 = self._share_below(float((packs.limits.t2 - nominal).amount))
        skewness, kurtosis = packs.shape()
        sure = packs.n / (packs.n + _SHAPE_FROM) if self.rest else 1.0
        self.skewness, self.kurtosis = sure * skewness, 3.0 + sure * (kurtosis - 3.0)
        self.variance = self.spread**2 * self._relative_variance()
        # a sample's s is on average a little below the spread it is drawn from
        drawn = plan.mean_size
        bent = (self.kurtosis - 1.0) / 8.0
        lag = bent * (1.0 - drawn / lot) / (drawn - 1) if drawn > 1 else 1.0
        self.expected_s = self.spread * (1.0 - lag)

    def _share_below(self, limit: float) -> float:
        if self.spread == 0.0:
            return float(self.mean < limit)
        return normal_cdf((limit - self.mean) / self.spread)

    def _relative_variance(self) -> float:
        """Variance of mean + k s in the sample, in squares of the spread.

        For large samples s varies as (kurtosis - 1) / 4n and with the mean as skewness / 2n, in
        squares of the spread (H. Cramer, Mathematical Methods of Statistics, ch. 27, from memory).
        """
        drawn, lot = self.plan.mean_size, self.lot
        variance = 0.0
        if self.rest:
            variance += (self.rest / lot) ** 2 * (1.0 / self.rest + 1.0 / self.packs.n)
        if drawn < lot:
            of_spread = 0.0
            if drawn > 1:
                of_spread = self.factor**2 * (self.kurtosis - 1.0) / (4.0 * (drawn - 1))
                of_spread += self.factor * self.skewness / drawn
            variance += (1.0 - drawn / lot) * (1.0 / drawn + of_spread)
        return variance

    def mean_clause(self, shift: float = 0.0, less: float = 0.0) -> float:
        """Chance of the mean clause, its statistic moved by ``shift`` and its variance lessened."""
        margin = self.mean + self.factor * self.expected_s + shift
        left = self.variance - less
        if left <= 1e-12 * self.spread**2:
            return float(margin >= 0.0)
        return normal_cdf(margin / sqrt(left))

    def t1_and_together(self) -> tuple[float, float]:
        """Chance of the T1 clause, and of all clauses together, over the T1 packs still to come."""
        t1 = together = 0.0
        for more, weight in self._still_to_come(self.share_1):
            accepted = list(self._accepted(self.packs.t1_count + more))
            t1 += weight * sum(chance for _, chance in accepted)
            together += weight * self._together(more, accepted)
        return min(1.0, t1), min(1.0, together)

    def _still_to_come(self, share: float) -> Iterator[tuple[int, float]]:
        """Numbers of short packs still to come, each with its chance."""
        if self.rest == 0 or share == 0.0:
            yield 0, 1.0
            return
        for more in binomial_range(self.rest, share):
            weight = binomial_pmf(more, self.rest, share)
            if weight > _NEGLIGIBLE:
                yield more, weight

    def t2_clause(self) -> float:
        """Chance of the T2 clause, over the T2 packs still to come."""
        accept, known = self.plan.t2_accept, self.packs.t2_count
        if accept is None:
            return 1.0
        return min(
            1.0,
            sum(
                weight * hypergeometric_cdf(accept, self.lot, known + more, self.plan.n)
                for more, weight in self._still_to_come(self.share_2)
            ),
        )

    def _together(self, more: int, accepted: list[tuple[int, float]]) -> float:
        """Chance of all clauses together with ``more`` T1 packs still to come."""
        short, drawn, lot = self.packs.t1_count + more, self.plan.n, self.lot
        share = short / lot
        pull = self._pull(short, more)
        less = pull**2 * share * (1.0 - share) / drawn * (lot - drawn) / (lot - 1)
        return sum(
            chance
            * self._t2_among(found, short, more)
            * self.mean_clause((found / drawn - share) * pull, less)
            for found, chance in accepted
            if chance > _NEGLIGIBLE
        )

    def _accepted(self, short: int) -> Iterator[tuple[int, float]]:
        """T1 packs a passing sample may hold, each with its chance."""
        plan, lot = self.plan, self.lot
        most = plan.accept if plan.second is None else plan.second.reject_first - 1
        for found, chance in enumerate(hypergeometric_start(most, lot, short, plan.n)):
            if found > plan.accept and plan.second is not None:
                left = plan.second.accept - found
                chance *= hypergeometric_cdf(left, lot - plan.n, short - found, plan.second.n)
            yield found, chance

    def _t2_among(self, found: int, short: int, more: int) -> float:
        """Chance of the T2 clause when the sample holds ``found`` T1 packs."""
        accept = self.plan.t2_accept
        if accept is None or short == 0:
            return 1.0
        if more == 0:
            return hypergeometric_cdf(accept, short, self.packs.t2_count, found)
        gross = self.packs.t2_count + more * self.share_2 / self.share_1
        return binomial_cdf(accept, found, min(1.0, gross / short))

    def _pull(self, short: int, more: int) -> float:
        """How much a T1 pack moves mean + k s more than another pack does, times the sample."""
        if short in (0, self.lot) or self.spread == 0.0:
            return 0.0
        known = self.packs.t1_count
        light, squares = float(self.packs.t1_deviation), float(self.packs.t1_squares)
        curve = self.factor / (2.0 * self.spread)
        total = light - known * self.mean
        around = squares - 2.0 * self.mean * light + known * self.mean**2
        total += curve * (around - known * self.spread**2)
        if more:
            at = (float((self.packs.limits.t1 - self.packs.limits.nominal).amount) - self.mean) / (
                self.spread
            )
            ratio = exp(-0.5 * at * at) / sqrt(2.0 * pi) / self.share_1
            total -= more * self.spread * ratio * (1.0 + 0.5 * self.factor * at)
        return total / short + total / (self.lot - short)
