"""What some production days say to a manager: runs, yields of lots, stops, rejects, checks."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, time, timedelta
from decimal import Decimal
from fractions import Fraction
from itertools import groupby
from pathlib import Path
from zoneinfo import ZoneInfo

from station.core.balance import Balance, Water, balance
from station.core.dating import MIDNIGHT, span_of_days
from station.core.facts import FACT_KINDS, FactRecord
from station.core.journal import EntryKind
from station.core.line_lots import line_of, move_of
from station.core.long_work import step
from station.core.pauses import Pause
from station.core.run import Run
from station.reports.giveaway import Given, PeriodSums, period_sums
from station.store.bag_sums import RunSpan, run_spans
from station.store.facts import facts
from station.store.lot_usage import moves_of, packed_with
from station.store.open_holds import OpenHold, open_holds
from station.store.purged import lots_of_gone
from station.store.recall import frozen_runs
from station.store.run_evidence import Place, run_evidence
from station.store.stops import stops_begun
from station.store.weighed import plant_zone

_HOUR = timedelta(hours=1)


@dataclass(frozen=True, slots=True)
class RunFigures:
    """One run.

    Args:
        run: as frozen.
        span: its first and last bag.
        given: its bags.
        stood: how long the line stood between these two.
    """

    run: Run
    span: RunSpan
    given: Given
    stood: timedelta

    @property
    def packing(self) -> timedelta:
        """From its first bag to its last, less what the line stood between them."""
        return self.span.ended - self.span.began - self.stood

    @property
    def an_hour(self) -> Decimal | None:
        """Bags an hour while the line did not stand, one decimal; None of too short a run."""
        rate = rate_of((self,))
        return None if rate is None else round(rate, 1)


@dataclass(frozen=True, slots=True)
class LotYield:
    """One input lot: what went on the line, and how much of it is in bags.

    Args:
        component: code of its component.
        balance: what was loaded less what came back, and what bags took, an estimate by recipe.
        purged: bags that could hold it were purged; what they took is in no figure.
    """

    component: str
    balance: Balance
    purged: bool = False

    @property
    def share(self) -> Fraction | None:
        """Likely share of the lot that is in bags; None where nobody can say."""
        loaded = self.balance.loaded
        return self.balance.used.likely / loaded if loaded and not self.purged else None


@dataclass(frozen=True, slots=True)
class Stops:
    """Stops for one reason: how many, and how long in all."""

    reason: str
    count: int
    took: timedelta


@dataclass(frozen=True, slots=True)
class Period:
    """Some production days.

    Args:
        sums: their bags.
        zone: of the plant.
        runs: their runs, in order.
        yields: lots that their bags may hold, by component and code.
        stops: every stop that began on their days, in order, each with its end.
        entered: facts of their calendar days, in order.
        holds: holds that are open now; of any day.
        head: last entry of the record.
    """

    sums: PeriodSums
    zone: ZoneInfo
    runs: tuple[RunFigures, ...]
    yields: tuple[LotYield, ...]
    stops: tuple[Pause, ...]
    entered: tuple[FactRecord, ...]
    holds: tuple[OpenHold, ...]
    head: Place

    @property
    def stops_by_reason(self) -> tuple[Stops, ...]:
        """Stops put together, the longest first; one that goes on counts without its time."""
        ordered = sorted(self.stops, key=lambda one: str(one.reason))
        found = [
            Stops(str(reason), len(group), sum(map(_took, group), timedelta()))
            for reason, members in groupby(ordered, key=lambda one: one.reason)
            if (group := list(members))
        ]
        return tuple(sorted(found, key=lambda one: (-one.took, one.reason)))

    def of_kinds(self, *kinds: EntryKind) -> tuple[FactRecord, ...]:
        """Its facts of some kinds."""
        return tuple(one for one in self.entered if one.fact.kind in kinds)


def period(
    home: Path,
    first: date | None,
    last: date | None,
    prices: Mapping[str, Decimal],
    water: Water | None = None,
    cut_off: time = MIDNIGHT,
) -> Period:
    """Gather some production days.

    Args:
        home: folder of the record.
        first: first production day; None for the first on record.
        last: last one, counted in; None for the last on record.
        prices: of a kilogram, by article code.
        water: uptake between weighing a lot and weighing the bags.
        cut_off: when a day changes at the plant, for entries and stops.

    Raises:
        BadInput: nothing was packed then.
        GivenUp: nobody wants it any more.
    """
    step(0)
    sums, zone = period_sums(home, first, last, prices), plant_zone(home)
    step(50)
    begin, end = span_of_days(sums.first, sums.last, zone, cut_off)
    entered = facts(home, FACT_KINDS, since=begin, until=end)
    stops = stops_begun(home, begin, end)
    step(65)
    spans = run_spans(home, sums.runs)
    step(80)
    yields = yields_of(home, tuple(sums.runs.values()), water or Water())
    step(95)
    return Period(
        sums=sums,
        zone=zone,
        runs=tuple(_run(span, sums, stops) for span in spans),
        yields=yields,
        stops=stops,
        entered=entered,
        holds=open_holds(home),
        head=run_evidence(home, spans[-1].run).head,
    )


def yields_of(home: Path, runs: Sequence[Run], water: Water) -> tuple[LotYield, ...]:
    """What became of every lot that was loaded while or before runs were packed.

    Args:
        home: folder of the record.
        runs: as frozen; their lines count.
        water: uptake between weighing a lot and weighing the bags.
    """
    lines, ids = {run.line for run in runs}, {run.id for run in runs}
    chosen = {use.lot for run in runs for use in run.lot_set.uses}
    entries = [one for one in moves_of(home, ids, chosen) if line_of(one.fact) in lines]
    moves = tuple(move_of(one.fact) for one in entries)
    named = chosen | {one.fact.subject for one in entries if one.fact.run in ids}
    components = {one.lot: one.component for one in moves if one.component}
    packed, gone = packed_with(home, named), lots_of_gone(home)
    return tuple(
        LotYield(components[lot], balance(lot, components[lot], moves, packed, water), lot in gone)
        for lot in sorted(named & components.keys(), key=lambda code: (components[code], code))
    )


def runs_named(home: Path, uids: Sequence[str]) -> tuple[Run, ...]:
    """Runs as frozen, in the order given."""
    found = frozen_runs(home, uids)
    return tuple(found[uid] for uid in uids)


def rate_of(runs: Iterable[RunFigures]) -> Decimal | None:
    """Bags an hour of runs together; None where none is long enough to say."""
    long = [one for one in runs if one.packing >= timedelta(minutes=1)]
    if not long:
        return None
    seconds = sum((one.packing for one in long), timedelta()).total_seconds()
    return Decimal(sum(one.given.packs for one in long)) * 3600 / Decimal(seconds)


def _run(span: RunSpan, sums: PeriodSums, stops: Sequence[Pause]) -> RunFigures:
    mine = [one for one in sums.sums if one.run == span.run]
    run = sums.runs[span.run]
    stood = sum(
        (
            _took(stop)
            for stop in stops
            if stop.ended is not None and span.began <= stop.began and stop.ended <= span.ended
        ),
        timedelta(),
    )
    return RunFigures(run, span, sums.of(mine, run.blend_lot), stood)


def _took(stop: Pause) -> timedelta:
    return timedelta() if stop.ended is None else stop.took(stop.ended)
