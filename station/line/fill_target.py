"""A fill target proposed from a run's own bags, with the knee it lies at, and its fact.

The optimiser is that of ``station target --run``; here it can be watched and stopped. A proposal
changes nothing: a run is frozen, and a manager approves a target as a new version of the product.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from decimal import Decimal
from statistics import fmean, pstdev

from station.core.facts import Fact
from station.core.journal import EntryKind, Value
from station.core.metrology.plans import find_full_rule
from station.core.metrology.rule_set import Limits
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.target import (
    ClauseChance,
    KneePoint,
    Proposal,
    Shares,
    TargetModel,
    Wanted,
    knee_curve,
    knee_spread,
)
from station.core.product import PackMode
from station.core.run import Run
from station.line.numbers import Bag, BatchFigures, rules_of

ASSURANCE = 0.99
SEED = 1
_CURVE = 48
"""Steps of the knee curve."""


@dataclass(frozen=True, slots=True)
class Knee:
    """The lowest mean over the spread of a normal process.

    Args:
        curve: from no spread at all to the tolerable deficiency.
        spread: from here on the mean rule alone does not do.
    """

    curve: tuple[KneePoint, ...]
    spread: float


@dataclass(frozen=True, slots=True)
class Advice:
    """What the bags of a run say about its target, in the unit of the nominal quantity.

    Args:
        fills: how many bags it rests on.
        lot_size: bags of the batch it must hold for.
        target: filled to now.
        mean: mean net now.
        spread: standard deviation now.
        interval: step of a target.
        proposal: the lowest target that meets every clause, or None.
        why_none: why there is no proposal; empty where there is one.
    """

    fills: int
    lot_size: int
    target: float
    mean: float
    spread: float
    interval: float
    proposal: Proposal | None
    why_none: str


class _Watched(TargetModel):
    """Tells how many targets were tried; whoever is told may stop it by raising."""

    tried: Callable[[int], None] = staticmethod(lambda _: None)
    _count = 0

    def chances(self, target: float) -> tuple[ClauseChance, ...]:
        self._count += 1
        self.tried(self._count)
        return super().chances(target)


def knee_of(limits: Limits) -> Knee:
    """The knee of a nominal quantity under its rules."""
    tolerable, shares = float(limits.tolerable.amount), Shares.of(rule_set(limits.rule_set))
    spread = knee_spread(limits, shares)
    steps = {tolerable * step / _CURVE for step in range(_CURVE + 1)} | {spread}
    return Knee(knee_curve(limits, sorted(steps), shares), spread)


def advise(
    run: Run, bags: Sequence[Bag], tried: Callable[[int], None] = lambda _: None
) -> Advice | None:
    """Work out a target from the bags of a run; None before its first bag.

    Args:
        run: the frozen run.
        bags: all its bags.
        tried: told how many targets were tried; what it raises stops the work.

    Raises:
        RuleRefused: the rules are not known here, or have none for such a batch.
    """
    checked = run.product.mode is PackMode.CHECK
    # Sealed bags are weighed as filled, short ones too; open ones only once accepted.
    nets = [bag.net for bag in bags if checked or bag.in_batch]
    lot_size = sum(bag.in_batch for bag in bags)
    if not nets or not lot_size:
        return None
    rules, limits = rules_of(run), run.window.limits
    places = min(int(net.amount.as_tuple().exponent) for net in nets)
    interval = float(Decimal(1).scaleb(places))
    window = run.window
    target = window.target.in_unit(limits.nominal.unit)
    residuals = [float((net - target).amount) for net in nets]
    fills = [float(net.amount) for net in nets]
    proposal, why = None, ""
    try:
        model = _Watched(
            residuals,
            limits,
            rules.official_plan(lot_size),
            find_full_rule(rules.full_rules, lot_size, rules.id),
            lot_size,
            None if checked else float(window.floor.amount),
            Wanted(assurance=ASSURANCE, seed=SEED),
        )
        model.tried = tried
        proposal = model.propose(interval)
    except ValueError as refused:
        why = str(refused)
    return Advice(
        fills=len(nets),
        lot_size=lot_size,
        target=float(target.amount),
        mean=fmean(fills),
        spread=pstdev(fills),
        interval=interval,
        proposal=proposal,
        why_none=why,
    )


def proposal_fact(uid: str, run: Run, advice: Advice, batch: BatchFigures) -> Fact:
    """The entry that keeps a proposal, with the chance, the knee and what it rests on.

    Raises:
        ValueError: there is no proposal to keep.
    """
    proposal = advice.proposal
    if proposal is None:
        raise ValueError(f"there is no target to propose: {advice.why_none}")
    limits, chance = run.window.limits, batch.outlook
    clauses: list[Value] = [
        {"clause": one.clause, "chance": _digits(one.chance), "wanted": _digits(one.wanted)}
        for one in proposal.clauses
    ]
    return Fact(
        kind=EntryKind.PROPOSAL,
        uid=uid,
        subject=run.product.code,
        result="proposed",
        run=run.id,
        details={
            "version": run.product.version,
            "rule_set": limits.rule_set,
            "rules_version": limits.version,
            "unit": str(limits.nominal.unit),
            "nominal": limits.nominal.digits,
            "target_now": _digits(advice.target),
            "mean_now": _digits(advice.mean),
            "spread_now": _digits(advice.spread),
            "target": _digits(proposal.target),
            "mean": _digits(proposal.mean),
            "spread": _digits(proposal.spread),
            "giveaway": _digits(proposal.giveaway),
            "governing": proposal.governing,
            "clauses": clauses,
            "knee_spread": _digits(knee_of(limits).spread),
            "fills": advice.fills,
            "lot_size": advice.lot_size,
            "assurance": _digits(ASSURANCE),
            "seed": SEED,
            "batch": str(batch.span),
            "batch_bags": batch.packs.n,
            "batch_expected": batch.expected,
            "passing": None if chance is None else _digits(chance.passing),
            "outlook": None if chance is None else str(chance.outlook),
        },
    )


def _digits(estimate: float) -> str:
    """An estimate for the journal, which keeps no floats: six decimals."""
    return f"{estimate:.6f}"
