"""The figures of a run while it is packed: outlook of its batch, mean, short bags, a question.

Sums are exact; outlook, charts and question are estimates. Nothing here runs while a bag is judged:
bags are handed in, in order, and the figures are worked out when somebody asks for them.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction
from statistics import fmean, stdev

from station.core.mass import Mass
from station.core.metrology.batch import t1_left
from station.core.metrology.changeover import Habit, Question, Trait, ask
from station.core.metrology.charts import Cusum, Ewma, cusum, ewma
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import EXACT
from station.core.metrology.forecast import Forecast, forecast
from station.core.metrology.rule_set import Limits, RuleSet
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.running import RunningBatch
from station.core.run import Run
from station.line.hours import hour_of

_HOUR = timedelta(hours=1)
_KG_PER_G = Decimal("0.001")
_LEAST_FOR_PACE = timedelta(minutes=5)
"""Before this much of an hour is over, its bags say little about all of it."""
HABIT_BAGS = 100
"""Bags from which a habit is learned: few enough to be the run's start, enough for its spread."""
_EWMA_WEIGHT = 0.05
"""Light, because every bag is a point: about 40 bags count."""


class Span(StrEnum):
    """Which bags are looked at together."""

    HOUR = "this hour"
    RUN = "whole run"


@dataclass(frozen=True, slots=True)
class Bag:
    """One recorded bag.

    Args:
        serial: its name.
        at: when it was judged, aware, in the plant's time.
        net: in the unit of its scale, or of the nominal quantity.
        in_batch: it is, or may yet be, sold.
    """

    serial: str
    at: datetime
    net: Mass
    in_batch: bool


@dataclass(frozen=True, slots=True)
class BatchFigures:
    """A batch as it stands.

    Args:
        span: which bags.
        packs: exact sums of its bags.
        expected: bags it is expected to have when it is finished.
        outlook: chance to pass the official test, or None where there is none yet.
        why_none: why there is no outlook; empty where there is one.
        t1_left: bags below T1 it may still take; None where the rules do not say.
    """

    span: Span
    packs: RunningBatch
    expected: int
    outlook: Forecast | None
    why_none: str
    t1_left: int | None

    @property
    def finished(self) -> bool:
        """No bag is expected any more."""
        return self.expected == self.packs.n

    @property
    def mean_needed(self) -> Fraction | None:
        """Mean the bags to come need for a mean of Qn; None when none is to come."""
        return self.packs.mean_needed(self.expected)


@dataclass(frozen=True, slots=True)
class GivenAway:
    """What a run gives away above the nominal quantity; below it, less than nothing.

    Args:
        per_bag_g: mean net less nominal, in grams.
        run_kg: over all good bags, in kilograms, exact.
        money: the same in the currency of the price, or None without a price.
    """

    per_bag_g: Fraction
    run_kg: Decimal
    money: Decimal | None


@dataclass(frozen=True, slots=True)
class FillCharts:
    """The good bags of a run in order, as charts need them; in the unit of the nominal quantity.

    Args:
        at: when each was judged.
        nets: net of each.
        running_mean: mean of each bag and all before it.
        habit: usual level and spread the averages are held against; None while it is not known.
        averages: exponentially weighted averages with their limits; empty without a habit.
        sums: cumulative sums in spreads of the habit; empty without a habit.
    """

    at: tuple[datetime, ...] = ()
    nets: tuple[float, ...] = ()
    running_mean: tuple[float, ...] = ()
    habit: Habit | None = None
    averages: tuple[Ewma, ...] = ()
    sums: tuple[Cusum, ...] = ()


@dataclass(frozen=True, slots=True)
class RunFigures:
    """Everything a page shows of a run.

    Args:
        run: the frozen run.
        open: bags are still packed.
        batch: the batch looked at.
        given_away: None before the first good bag.
        charts: its fills in order.
        questions: what a lead is asked about a lasting change.
    """

    run: Run
    open: bool
    batch: BatchFigures
    given_away: GivenAway | None
    charts: FillCharts
    questions: tuple[Question, ...]

    @property
    def limits(self) -> Limits:
        """Limits frozen with the run."""
        return self.run.window.limits


def rules_of(run: Run) -> RuleSet:
    """Return the rules a run was opened under.

    Raises:
        RuleRefused: this station does not know them, or another edition of them.
    """
    limits = run.window.limits
    rules = rule_set(limits.rule_set)
    if rules.version != limits.version:
        raise RuleRefused(
            f"the run was packed under {rules.id}, {limits.version}; this station knows "
            f"{rules.version}: judge it on the command line with --rules"
        )
    return rules


def habit_of(nets: Sequence[Mass]) -> Habit | None:
    """What the fill usually is, from bags of a run; None from fewer than are needed."""
    if len(nets) < HABIT_BAGS:
        return None
    fills = [float(net.amount) for net in nets]
    return Habit(fmean(fills), stdev(fills))


@dataclass(slots=True)
class RunNumbers:
    """Keeps the bags of one run; used from one thread at a time.

    Args:
        run: the frozen run.
        habit: usual fill of its product from an earlier run; learned from the run's own first
            bags where None.
        price_per_kg: of the product, or None.

    Raises:
        RuleRefused: its rules are not known here.
    """

    run: Run
    habit: Habit | None = None
    price_per_kg: Decimal | None = None
    bags: tuple[Bag, ...] = ()
    _rules: RuleSet = field(init=False)
    _whole: RunningBatch = field(init=False)

    def __post_init__(self) -> None:
        self._rules = rules_of(self.run)
        bags, self.bags = self.bags, ()
        self._whole = RunningBatch(self.run.window.limits)
        self.add(bags)

    def add(self, bags: Iterable[Bag]) -> None:
        """Take in bags in the order they were judged; one that is known already is left out."""
        known = {bag.serial for bag in self.bags}
        unit = self.run.product.nominal.unit
        new = tuple(
            replace(bag, net=bag.net.in_unit(unit)) for bag in bags if bag.serial not in known
        )
        self.bags += new
        self._whole = self._whole.add_all(bag.net for bag in new if bag.in_batch)

    def figures(self, span: Span | None, now: datetime, *, still_open: bool) -> RunFigures:
        """Work the figures out.

        Args:
            span: the batch to look at; an hour is the one of the last bag. None takes the hour of
                an open run where the rules judge hourly output, else the run.
            now: aware time.
            still_open: bags are still packed.
        """
        if span is None:
            hourly = still_open and self._rules.batch_rule.hourly
            span = Span.HOUR if hourly else Span.RUN
        batch = self._hour(now, still_open) if span is Span.HOUR else self._run(still_open)
        charts = self._charts()
        questions = () if charts.habit is None else self._ask(charts, charts.habit)
        return RunFigures(self.run, still_open, batch, self._given_away(), charts, questions)

    # --- batches ------------------------------------------------------------------------------

    def _run(self, still_open: bool) -> BatchFigures:
        ordered = (self.run.order_size or 0) if still_open else 0
        return self._batch(Span.RUN, self._whole, max(self._whole.n, ordered))

    def _hour(self, now: datetime, still_open: bool) -> BatchFigures:
        good = [bag for bag in self.bags if bag.in_batch]
        if not good:
            return self._batch(Span.HOUR, RunningBatch(self._whole.limits), 0)
        start = hour_of(good[-1].at)
        mine = [bag for bag in good if hour_of(bag.at) == start]
        packs = RunningBatch(self._whole.limits).add_all(bag.net for bag in mine)
        expected = packs.n
        if still_open and now < start + _HOUR:
            expected = self._by_pace(mine, start, now)
            if self.run.order_size is not None:
                still = max(0, self.run.order_size - self._whole.n)
                expected = min(expected, packs.n + still)
        return self._batch(Span.HOUR, packs, expected)

    def _by_pace(self, mine: list[Bag], start: datetime, now: datetime) -> int:
        """Bags of the whole hour, if it goes on as it did so far."""
        since = mine[0].at if len(mine) == len(self.bags) else start
        took = now - since
        if took < _LEAST_FOR_PACE:
            return len(mine)
        return len(mine) + int(len(mine) * max(timedelta(), start + _HOUR - now) / took)

    def _batch(self, span: Span, packs: RunningBatch, expected: int) -> BatchFigures:
        blank = BatchFigures(span, packs, expected, None, "no good bag yet", None)
        if packs.n == 0:
            return blank
        try:
            left = t1_left(self._rules, packs, expected)
            blank = replace(blank, t1_left=left)
            chance = forecast(packs, self._rules.official_plan(expected), expected)
        except ValueError as refused:
            return replace(blank, why_none=str(refused))
        return replace(blank, outlook=chance, why_none="")

    # --- the run ------------------------------------------------------------------------------

    def _given_away(self) -> GivenAway | None:
        packs = self._whole
        if packs.n == 0:
            return None
        grams = packs.limits.nominal.unit.grams
        kilograms = EXACT.multiply(EXACT.multiply(packs.deviation, grams), _KG_PER_G)
        price = self.price_per_kg
        return GivenAway(
            per_bag_g=packs.mean_error * Fraction(grams),
            run_kg=kilograms,
            money=None if price is None else EXACT.multiply(kilograms, price),
        )

    def _charts(self) -> FillCharts:
        good = [bag for bag in self.bags if bag.in_batch]
        nets = tuple(float(bag.net.amount) for bag in good)
        habit = self.habit or habit_of([bag.net for bag in good[:HABIT_BAGS]])
        at = tuple(bag.at for bag in good)
        if habit is None or habit.spread <= 0.0:
            return FillCharts(at, nets, _means(nets))
        scaled = [(net - habit.mean) / habit.spread for net in nets]
        return FillCharts(
            at=at,
            nets=nets,
            running_mean=_means(nets),
            habit=habit,
            averages=ewma(nets, habit.mean, habit.spread, _EWMA_WEIGHT, settled=True),
            sums=cusum(scaled, 0.0, 0.5, 5.0),
        )

    def _ask(self, charts: FillCharts, habit: Habit) -> tuple[Question, ...]:
        grams = float(self._whole.limits.nominal.unit.grams)
        usual = Habit(habit.mean * grams, habit.spread * grams)
        return ask({Trait.FILL: usual}, {Trait.FILL: [net * grams for net in charts.nets]})


def _means(values: tuple[float, ...]) -> tuple[float, ...]:
    means, total = [], 0.0
    for count, value in enumerate(values, start=1):
        total += value
        means.append(total / count)
    return tuple(means)
