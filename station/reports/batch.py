"""Everything a batch record says of one run: gathered once, written as PDF, CSV and JSON."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from station.core.facts import FACT_KINDS, FactRecord
from station.core.mass import Mass
from station.core.metrology.batch import Judgement, judge_running
from station.core.metrology.clause import RuleRefused
from station.core.metrology.forecast import Forecast, forecast
from station.core.metrology.plans import PlanKind
from station.core.metrology.rehearsal import Rehearsal, rehearse
from station.core.metrology.rule_set import RuleSet
from station.core.metrology.running import RunningBatch
from station.core.pack import IN_THE_BATCH
from station.core.run import Run
from station.line.fill_target import Advice, advise
from station.line.hours import by_hour
from station.line.numbers import Bag, RunFigures, RunNumbers, Span, rules_of
from station.store.answers import RunBlend, RunPacks, WeighedPack
from station.store.facts import facts
from station.store.run_evidence import RunEvidence, run_evidence
from station.store.weighed import bags_of

SEED = 1
DRAWS = 2000
_ANY_TIME = datetime(1970, 1, 1, tzinfo=UTC)
"""The figures of a whole run do not depend on the time."""
_POINTS = 24
"""Counts of bags at which the chance of passing is worked out for its chart."""


@dataclass(frozen=True, slots=True)
class Verdict:
    """A batch judged from every bag of it, with the outlook of the official test.

    Args:
        name: which bags, in words.
        judged: the verdict on all bags; None where the rules have none, or without a bag.
        outlook: chance that it passes the official test; None where there is none.
        why: why one of the two is missing; empty where both are there.
    """

    name: str
    judged: Judgement | None
    outlook: Forecast | None
    why: str


@dataclass(frozen=True, slots=True)
class Growth:
    """The chance of passing as the batch grew: bags and chance of the batch as it stood."""

    bags: tuple[int, ...]
    passing: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class BatchRecord:
    """One run with all its figures.

    Args:
        run: the frozen run.
        still_open: bags are still packed.
        rules: rule set it was packed under.
        bags: every bag, in order.
        blends: its blends, in order; one until its lots were changed.
        figures: sums, giveaway and charts of the whole run.
        whole: verdict on the whole run.
        hours: verdict on each hourly batch, where the rules judge hourly output.
        growth: chance of passing over the bags.
        rehearsal: the official sample drawn from the real bags; None where it cannot be.
        advice: what the bags say about the target; None before the first bag.
        facts: checks, holds and all else people entered in the run.
        evidence: its place in the journal, its labels.
    """

    run: Run
    still_open: bool
    rules: RuleSet
    bags: tuple[WeighedPack, ...]
    blends: tuple[RunBlend, ...]
    figures: RunFigures
    whole: Verdict
    hours: tuple[Verdict, ...]
    growth: Growth
    rehearsal: Rehearsal | None
    advice: Advice | None
    facts: tuple[FactRecord, ...]
    evidence: RunEvidence

    @property
    def left(self) -> tuple[WeighedPack, ...]:
        """Bags that are not in the batch: set aside, taken back, dumped, sampled, reworked."""
        return tuple(bag for bag in self.bags if bag.quality not in IN_THE_BATCH)

    @property
    def accepted(self) -> bool:
        """Whether the batch passes: every hourly batch where the rules judge these, else all."""
        judged = [one.judged for one in self.hours or (self.whole,)]
        return all(one is not None and one.accepted for one in judged)


def batch_record(home: Path, packs: RunPacks) -> BatchRecord:
    """Gather the record of a run.

    Args:
        home: folder of the record.
        packs: the run with every bag of it.

    Raises:
        RuleRefused: the rules of the run are not known here.
    """
    run = packs.run
    rules = rules_of(run)
    numbers = RunNumbers(run, bags=bags_of(packs))
    good = [bag for bag in numbers.bags if bag.in_batch]
    nets = [bag.net for bag in good]
    return BatchRecord(
        run=run,
        still_open=packs.open,
        rules=rules,
        bags=packs.packs,
        blends=packs.blends,
        figures=numbers.figures(Span.RUN, _ANY_TIME, still_open=packs.open),
        whole=_verdict("whole run", nets, run, rules),
        hours=_hours(good, run, rules) if rules.batch_rule.hourly else (),
        growth=_growth(nets, run, rules),
        rehearsal=_rehearsal(nets, run, rules),
        advice=advise(run, numbers.bags),
        facts=facts(home, FACT_KINDS, run=run.id),
        evidence=run_evidence(home, run.id),
    )


def _hours(good: list[Bag], run: Run, rules: RuleSet) -> tuple[Verdict, ...]:
    hours = by_hour(good)
    twice = Counter(f"{hour:%Y-%m-%d %H:00}" for hour, _ in hours)
    verdicts = []
    for hour, bags in hours:
        name = f"{hour:%Y-%m-%d %H:00}"
        if twice[name] > 1:  # summer time ended in it
            name = f"{name} UTC{hour:%z}"
        verdicts.append(_verdict(name, [bag.net for bag in bags], run, rules))
    return tuple(verdicts)


def _verdict(name: str, nets: list[Mass], run: Run, rules: RuleSet) -> Verdict:
    packs = RunningBatch(run.window.limits).add_all(nets)
    if packs.n == 0:
        return Verdict(name, None, None, "no bag in the batch")
    try:
        judged = judge_running(rules, packs)
    except RuleRefused as refused:
        return Verdict(name, None, None, str(refused))
    try:
        return Verdict(name, judged, forecast(packs, rules.official_plan(packs.n)), "")
    except ValueError as refused:
        return Verdict(name, judged, None, str(refused))


def _growth(nets: list[Mass], run: Run, rules: RuleSet) -> Growth:
    counts = sorted({max(2, len(nets) * step // _POINTS) for step in range(1, _POINTS + 1)})
    packs, before, bags, passing = RunningBatch(run.window.limits), 0, [], []
    for count in counts:
        if count > len(nets):
            break
        packs, before = packs.add_all(nets[before:count]), count
        try:
            chance = forecast(packs, rules.official_plan(count)).passing
        except ValueError:
            continue
        bags.append(count)
        passing.append(chance)
    return Growth(tuple(bags), tuple(passing))


def _rehearsal(nets: list[Mass], run: Run, rules: RuleSet) -> Rehearsal | None:
    if not nets:
        return None
    plan = rules.official_plan(len(nets))
    if plan.kind is PlanKind.FULL:
        return None
    return rehearse(nets, run.window.limits, plan, draws=DRAWS, seed=SEED)
