"""Lowest fill target that keeps every clause of the law with the chosen assurance.

Estimates in floats: a proposal a manager approves, no verdict. The spread is not assumed normal:
the product's own measured fills are resampled (bootstrap), and a floor cuts them the way top-up
does, because a bag below the floor is topped up and weighed again. Where no floor cuts the fills,
a tail is never taken lighter than the normal tail of the same mean and spread.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, sqrt
from random import Random
from statistics import fmean, pstdev

from station.core.metrology.plans import FullRule, Plan, find_full_rule
from station.core.metrology.probability import binomial_cdf, normal_cdf, normal_quantile
from station.core.metrology.rule_set import Limits, RuleSet

_LEAST_FILLS = 50
_ANY_LOT = 100_000
RARE = 1e-4
"""What stands for none in the long run: 1 in 10 000 (common practice)."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """What the proposal must reach.

    Args:
        assurance: wanted chance for each clause, strictly between 0 and 1.
        t2_share: largest share of packs below T2 in the long run.
        draws: bootstrap samples.
        seed: seed of the bootstrap; the same seed gives the same proposal.
    """

    assurance: float = 0.99
    t2_share: float = RARE
    draws: int = 1000
    seed: int = 1

    def __post_init__(self) -> None:
        if not 0.0 < self.assurance < 1.0 or not 0.0 < self.t2_share < 1.0 or self.draws < 100:
            raise ValueError(
                "assurance and T2 share lie strictly between 0 and 1, and at least 100 draws are "
                f"needed: {self}"
            )


@dataclass(frozen=True, slots=True)
class ClauseChance:
    """Chance that one clause holds at a target, and the wanted one."""

    clause: str
    chance: float
    wanted: float

    @property
    def met(self) -> bool:
        """The chance reaches the wanted one."""
        return self.chance >= self.wanted


@dataclass(frozen=True, slots=True)
class Proposal:
    """A proposed fill target, in the unit of the nominal quantity.

    Args:
        target: proposed target, a multiple of the scale interval.
        mean: mean net expected at it.
        spread: standard deviation expected at it.
        giveaway: mean net less the nominal quantity, per bag.
        governing: first clause that forbids a lower target, or ``the floor``.
        clauses: chance of every clause at the proposed target.
    """

    target: float
    mean: float
    spread: float
    giveaway: float
    governing: str
    clauses: tuple[ClauseChance, ...]


@dataclass(frozen=True, slots=True)
class Giveaway:
    """What the proposed target gives away.

    Args:
        per_bag_g: grams per bag.
        per_shift_kg: kilograms per shift.
        money_per_shift: in the currency of the price.
    """

    per_bag_g: float
    per_shift_kg: float
    money_per_shift: float


class TargetModel:
    """The fills of one product around their target, against one law and one size of batch.

    Args:
        residuals: net less target of this product's packs as accepted, in the unit of the nominal
            quantity; at least 50.
        limits: limits of the nominal quantity.
        plan: plan of the official sample.
        full_rule: what the whole batch must show.
        lot_size: packs of one batch.
        floor: lowest accepted net, or ``None`` where sealed bags are only checked.
        wanted: chances to reach.
    """

    def __init__(
        self,
        residuals: Sequence[float],
        limits: Limits,
        plan: Plan,
        full_rule: FullRule,
        lot_size: int,
        floor: float | None,
        wanted: Wanted,
    ) -> None:
        if len(residuals) < _LEAST_FILLS:
            raise ValueError(
                f"{len(residuals)} fills are too few for a proposal: weigh {_LEAST_FILLS} or more"
            )
        self._residuals = sorted(residuals)
        self._plan, self._full_rule, self._lot_size = plan, full_rule, lot_size
        self._nominal = float(limits.nominal.amount)
        self._t1, self._t2 = float(limits.t1.amount), float(limits.t2.amount)
        self._floor, self._wanted = floor, wanted
        draws = Random(wanted.seed)
        self._ranks = [[draws.random() for _ in range(plan.mean_size)] for _ in range(wanted.draws)]

    def fills(self, target: float) -> list[float]:
        """Net fills at a target, those below the floor left out, in rising order."""
        fills = [target + residual for residual in self._residuals]
        if self._floor is None:
            return fills
        kept = [fill for fill in fills if fill >= self._floor]
        return kept or [self._floor]

    def chances(self, target: float) -> tuple[ClauseChance, ...]:
        """Chance of every clause the rules have, at a target."""
        fills = self.fills(target)
        mean, spread = fmean(fills), pstdev(fills)
        below_t1 = self._share_below(self._t1, fills, mean, spread)
        below_t2 = self._share_below(self._t2, fills, mean, spread)
        wanted, plan, lot = self._wanted.assurance, self._plan, self._lot_size
        batch_error = spread / sqrt(lot)
        margin = mean - self._nominal
        whole_mean = normal_cdf(margin / batch_error) if batch_error else float(margin >= 0.0)
        t1_whole = binomial_cdf(self._full_rule.accept(lot), lot, below_t1)
        t1_sample = binomial_cdf(plan.accept, plan.n, below_t1)
        chances = [
            ClauseChance("mean of the whole batch", whole_mean, wanted),
            ClauseChance("T1 packs of the whole batch", t1_whole, wanted),
            ClauseChance("mean in the official sample", self._mean_in_sample(fills), wanted),
            ClauseChance("T1 packs in the official sample", t1_sample, wanted),
        ]
        if self._full_rule.t2_accept is not None:
            least = 1.0 - self._wanted.t2_share
            chances.append(ClauseChance("T2 packs in the long run", 1.0 - below_t2, least))
        if plan.t2_accept is not None:
            t2_sample = binomial_cdf(plan.t2_accept, plan.n, below_t2)
            chances.append(ClauseChance("T2 packs in the official sample", t2_sample, wanted))
        return tuple(chances)

    def propose(self, interval: float) -> Proposal:
        """Find the lowest target, in steps of the scale interval, that meets every clause.

        A target is never below the floor.

        Raises:
            ValueError: no target up to twice the nominal quantity does.
        """
        start = self._nominal - self._residuals[-1] if self._floor is None else self._floor
        below = ceil(start / interval - 1e-9) - 1
        above = below + 1
        while not self._all_met(above * interval):
            below, above = above, above + 2 * (above - below)
            if above * interval > 2.0 * self._nominal:
                raise ValueError("no target meets every clause: the fills scatter too much")
        while above - below > 1:
            middle = (above + below) // 2
            if self._all_met(middle * interval):
                above = middle
            else:
                below = middle
        target = above * interval
        fills = self.fills(target)
        lower = () if below * interval < start else self.chances(below * interval)
        return Proposal(
            target=round(target, 9),
            mean=fmean(fills),
            spread=pstdev(fills),
            giveaway=fmean(fills) - self._nominal,
            governing=next((one.clause for one in lower if not one.met), "the floor"),
            clauses=self.chances(target),
        )

    def _all_met(self, target: float) -> bool:
        return all(one.met for one in self.chances(target))

    def _share_below(self, limit: float, fills: list[float], mean: float, spread: float) -> float:
        if self._floor is not None and limit <= self._floor:
            return 0.0
        counted = sum(fill < limit for fill in fills) / len(fills)
        normal = normal_cdf((limit - mean) / spread) if spread else float(mean < limit)
        return max(counted, normal)

    def _mean_in_sample(self, fills: list[float]) -> float:
        count, factor = len(fills), sqrt(self._plan.factor_squared)
        passed = 0
        for ranks in self._ranks:
            sample = [fills[int(rank * count)] for rank in ranks]
            mean = fmean(sample)
            short = self._nominal - mean
            if short <= 0.0:
                passed += 1
                continue
            scatter = sum((one - mean) ** 2 for one in sample) / (len(sample) - 1)
            passed += short * short <= factor * factor * scatter
        return passed / len(self._ranks)


def giveaway(per_bag_g: float, bags_per_shift: int, price_per_kg: float) -> Giveaway:
    """Price the mean overfill of one bag over a shift."""
    kilograms = per_bag_g * bags_per_shift / 1000.0
    return Giveaway(per_bag_g, kilograms, kilograms * price_per_kg)


def step_towards(current: float, proposed: float, most: float) -> float:
    """Next target on the way to a proposal, at most ``most`` away from the current one."""
    return min(max(proposed, current - most), current + most)


@dataclass(frozen=True, slots=True)
class KneePoint:
    """Lowest long-run mean for one spread of a normal process.

    Args:
        spread: standard deviation of the fills.
        mean: lowest mean net.
        governing: ``mean``, ``T1`` or ``T2``: the clause that forbids a lower one.
    """

    spread: float
    mean: float
    governing: str


@dataclass(frozen=True, slots=True)
class Shares:
    """Shares of a normal process that may lie beyond a limit in the long run.

    Args:
        t1: below T1.
        t2: below T2; ``None`` where the rule set has no such clause.
    """

    t1: float = 0.025
    t2: float | None = RARE

    @classmethod
    def of(cls, rules: RuleSet) -> Shares:
        """The shares of a rule set: those of its fully weighed batch, and 1 in 10 000 for none."""
        full = find_full_rule(rules.full_rules, _ANY_LOT, rules.id)
        return cls(float(full.share) or RARE, None if full.t2_accept is None else RARE)


def knee_point(limits: Limits, spread: float, shares: Shares | None = None) -> KneePoint:
    """Lowest mean that keeps the clauses of the rules for a normal process of this spread.

    The mean is the largest of Qn, T1 + z(t1) s and T2 + z(t2) s (guidance to packers in the United
    Kingdom, from memory, with 1.96 s and 3.72 s); without a T2 clause it is the larger of the first
    two.
    """
    if spread < 0.0:
        raise ValueError(f"a spread cannot be negative: {spread}")
    shares = shares or Shares()
    rules = {
        "mean": float(limits.nominal.amount),
        "T1": float(limits.t1.amount) - normal_quantile(shares.t1) * spread,
    }
    if shares.t2 is not None:
        rules["T2"] = float(limits.t2.amount) - normal_quantile(shares.t2) * spread
    governing = max(rules, key=lambda rule: rules[rule])
    return KneePoint(spread, rules[governing], governing)


def knee_curve(
    limits: Limits, spreads: Sequence[float], shares: Shares | None = None
) -> tuple[KneePoint, ...]:
    """Knee points over spreads: flat while the mean rule governs, steep beyond the knee."""
    return tuple(knee_point(limits, spread, shares) for spread in spreads)


def knee_spread(limits: Limits, shares: Shares) -> float:
    """Spread from which on the mean rule alone does not do."""
    bounds = [(limits.t1, shares.t1)]
    if shares.t2 is not None:
        bounds.append((limits.t2, shares.t2))
    nominal = limits.nominal.amount
    return min(float(nominal - limit.amount) / -normal_quantile(share) for limit, share in bounds)
