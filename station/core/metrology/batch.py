"""Judge a batch: by a reference-test sample, in two stages, or from every pack weighed.

Verdicts are exact. Counts are integers; the mean criterion ``mean + k s >= Qn`` is compared on
squares of rationals (see `exact.at_least_minus_root`), so it cannot flip by rounding, however close
the batch lies to the limit. ``mean`` and ``s`` are also given rounded, for showing only.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from station.core.mass import Mass
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import at_least_minus_root, decimal_of
from station.core.metrology.plans import Plan, PlanKind
from station.core.metrology.rule_set import RuleSet
from station.core.metrology.running import RunningBatch

_SHOWN_PLACES = 9


@dataclass(frozen=True, slots=True)
class Judgement:
    """The verdict on a batch, clause by clause.

    Args:
        plan: plan used.
        packs: exact sums of every pack judged.
        mean_packs: exact sums of the packs of the mean check (the first ones taken).
        mean_ok: mean + k s of those packs is at least the nominal quantity.
        t1_accept: most T1 packs that still pass.
        t1_ok: no more T1 packs than that.
        t2_ok: no more T2 packs than the plan allows.
        second_needed: the first stage of a double plan left the T1 clause open.
    """

    plan: Plan
    packs: RunningBatch
    mean_packs: RunningBatch
    mean_ok: bool
    t1_accept: int
    t1_ok: bool
    t2_ok: bool
    second_needed: bool = False

    @property
    def accepted(self) -> bool:
        """Every clause holds; an open first stage is not accepted yet."""
        return self.mean_ok and self.t1_ok and self.t2_ok

    @property
    def n(self) -> int:
        """Packs judged."""
        return self.packs.n

    @property
    def mean(self) -> Fraction:
        """Exact mean net of all packs judged, in the unit of the nominal quantity."""
        return self.packs.mean

    @property
    def s(self) -> Decimal:
        """Standard deviation of all packs judged, divisor n - 1, for showing."""
        return self.packs.spread(_SHOWN_PLACES)

    @property
    def t1_count(self) -> int:
        """Packs strictly below T1, the T2 packs among them."""
        return self.packs.t1_count

    @property
    def t2_count(self) -> int:
        """Packs strictly below T2."""
        return self.packs.t2_count

    @property
    def mean_shown(self) -> Decimal:
        """Mean net rounded for showing."""
        return decimal_of(self.mean, _SHOWN_PLACES)


def judge_sample(
    rules: RuleSet,
    nominal: Mass,
    nets: Sequence[Mass],
    lot_size: int,
    kind: PlanKind = PlanKind.SAMPLE,
) -> Judgement:
    """Judge a batch of ``lot_size`` packs by the packs drawn from it, in the order drawn.

    For a double plan give the first stage alone, or both stages one after the other.

    Raises:
        RuleRefused: no such plan for such a batch, or another number of packs than it takes.
    """
    if kind is PlanKind.FULL:
        if len(nets) != lot_size:
            raise RuleRefused(
                f"a fully weighed batch of {lot_size} packs needs {lot_size} net weights, "
                f"{len(nets)} were given"
            )
        return judge_full(rules, nominal, nets)
    plan = rules.plan(lot_size, kind)
    start = RunningBatch(rules.limits(nominal))
    mean_packs = start.add_all(nets[: plan.mean_size])
    packs = mean_packs.add_all(nets[plan.mean_size :])
    if plan.second is not None:
        return _judge_double(plan, start, nets, mean_packs)
    if len(nets) != plan.n:
        raise RuleRefused(
            f"the {kind} plan of {rules.id} for a batch of {lot_size} takes {plan.n} packs, "
            f"{len(nets)} were given: draw exactly {plan.n} at random"
        )
    return judge_sums(packs, plan, mean_packs)


def judge_full(rules: RuleSet, nominal: Mass, nets: Sequence[Mass]) -> Judgement:
    """Judge a batch of which every pack was weighed.

    Raises:
        RuleRefused: no pack, or the set has no rule for such a batch.
    """
    return judge_running(rules, RunningBatch(rules.limits(nominal)).add_all(nets))


def judge_running(rules: RuleSet, packs: RunningBatch) -> Judgement:
    """Judge all packs so far as a finished, fully weighed batch, from their exact sums."""
    return judge_sums(packs, rules.plan(packs.n, PlanKind.FULL))


def t1_left(rules: RuleSet, packs: RunningBatch, expected: int) -> int:
    """T1 packs a fully weighed batch of ``expected`` packs may still take; negative when too many.

    Args:
        rules: rule set of the run.
        packs: packs so far.
        expected: size of the finished batch; ``packs.n`` asks about the batch as it stands.
    """
    return rules.plan(expected, PlanKind.FULL).accept - packs.t1_count


def judge_sums(
    packs: RunningBatch, plan: Plan, mean_packs: RunningBatch | None = None
) -> Judgement:
    """Judge exact sums by one plan; ``mean_packs`` default to all packs."""
    mean_packs = packs if mean_packs is None else mean_packs
    return Judgement(
        plan=plan,
        packs=packs,
        mean_packs=mean_packs,
        mean_ok=mean_holds(mean_packs, plan.factor_squared),
        t1_accept=plan.accept,
        t1_ok=packs.t1_count <= plan.accept,
        t2_ok=plan.t2_accept is None or packs.t2_count <= plan.t2_accept,
    )


def mean_holds(packs: RunningBatch, factor_squared: Fraction) -> bool:
    """Tell exactly whether ``mean + k s >= Qn``, from the square of k."""
    return at_least_minus_root(packs.mean_error, Fraction(1), factor_squared * packs.variance)


def _judge_double(
    plan: Plan, start: RunningBatch, nets: Sequence[Mass], mean_packs: RunningBatch
) -> Judgement:
    second = plan.second
    assert second is not None
    both = plan.n + second.n
    if len(nets) not in (plan.n, both):
        raise RuleRefused(
            f"the double plan takes {plan.n} packs, or {both} with the second stage, "
            f"{len(nets)} were given"
        )
    first = start.add_all(nets[: plan.n])
    settled = first.t1_count <= plan.accept or first.t1_count >= second.reject_first
    all_packs = first.add_all(nets[plan.n :])
    packs, accept = (first, plan.accept) if settled else (all_packs, second.accept)
    open_still = not settled and len(nets) == plan.n
    return Judgement(
        plan=plan,
        packs=packs,
        mean_packs=mean_packs,
        mean_ok=mean_holds(mean_packs, plan.factor_squared),
        t1_accept=accept,
        t1_ok=not open_still and packs.t1_count <= accept,
        t2_ok=plan.t2_accept is None or all_packs.t2_count <= plan.t2_accept,
        second_needed=open_still,
    )
