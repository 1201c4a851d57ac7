"""What a failed check of the scale brings with it: the suspect window and the hold of its bags.

Every bag since the last good check is held, of all runs, in the commit of the check itself. Where
the readings of the empty pan date one step of zero that explains the error at every load, the hold
is laid in two parts, so that the bags before the step can be released alone.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime
from itertools import chain
from typing import Protocol

from station.core.checks.scale import CheckMade, check_of, held_true
from station.core.checks.suspect import FiledStep, FiledWindow, RunWindow, window_fact
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.mass import Mass
from station.core.metrology.scale_check import CheckStage, ScaleCheck
from station.core.metrology.suspect import (
    CaseVerdict,
    ErrorSign,
)
from station.core.metrology.zero_trace import ZeroStep, find_step
from station.core.pack import Moment
from station.line.suspect_hold import suspect_hold, window_opens
from station.line.suspected import SUSPECTED, JudgedRun, PackSince, RunSince, judge_runs


class Past(Protocol):
    """What the record knows of the time before a check."""

    def last_good_check(self, scale: str) -> FactRecord | None:
        """The last check of a scale that did not fail, or None."""
        ...

    def packs_after(self, check: FactRecord | None) -> Sequence[RunSince]:
        """Bags recorded after a check (None for all), by run; whatever the clock said."""
        ...


class FailedChecks:
    """Adds to a failed check what it brings with it; used on the line's thread.

    Args:
        past: the record.
        new_id: makes a UUID version 7 as text for a moment.
    """

    def __init__(self, past: Past, new_id: Callable[[Moment], str]) -> None:
        self._past, self._new_id = past, new_id

    def follow(self, facts: Sequence[Fact], at: Moment, who: str) -> tuple[Fact, ...]:
        """Return the facts to record together with ``facts``: windows and holds, or none."""
        found = []
        for fact in facts:
            if fact.kind is EntryKind.SCALE_CHECK:
                record = FactRecord(fact, at, who, 0)
                made = check_of(record)
                if made.check.stage is CheckStage.AS_FOUND and not held_true(made):
                    found.append(self._window(record, made, at))
        return tuple(chain.from_iterable(found))

    def _window(self, failed: FactRecord, made: CheckMade, at: Moment) -> tuple[Fact, ...]:
        good = self._past.last_good_check(made.scale)
        groups = self._past.packs_after(good)
        packs = tuple(pack for group in groups for pack in group.packs)
        if not any(pack.quality in SUSPECTED for pack in packs):
            return ()
        opened = window_opens(good, packs)
        step = explaining_step(made.check, made.plate.interval, packs)
        step_at = None if step is None else step.last_before
        judged = tuple(judge_runs(made.check, opened, groups, step_at))
        parts = _parts(packs, step_at)
        holds = tuple(
            suspect_hold(self._new_id(at), failed.fact.uid, part, "the scale failed its check")
            for part in parts
        )
        window = FiledWindow(
            uid=self._new_id(at),
            scale=made.scale,
            check=failed.fact.uid,
            good="" if good is None else good.fact.uid,
            opened=opened,
            closed=at.utc,
            sign=sign_of(made.check),
            step=None if step is None else _filed(step, made),
            holds=tuple(hold.uid for hold in holds),
            runs=tuple(_filed_run(one) for one in judged),
        )
        return (window_fact(window), *holds)


def explaining_step(
    check: ScaleCheck, interval: Mass, packs: Sequence[PackSince]
) -> ZeroStep | None:
    """The step of zero that explains the error of a check at every load, or None.

    It does when no load's error differs from the step by more than one interval: the scale then
    weighs true beside its zero.

    Args:
        check: the failed check.
        interval: the scale interval.
        packs: bags since the last good check, with their readings of the empty pan.
    """
    trace = sorted(
        (
            pack.residue
            for pack in packs
            if pack.residue is not None and pack.residue.reading.unit is interval.unit
        ),
        key=lambda residue: residue.at,
    )
    step = find_step(trace, interval)
    if step is None:
        return None
    most, errors = float(interval.amount), [float(load.error.amount) for load in check.loads]
    return step if all(abs(error - step.size) <= most for error in errors) else None


def sign_of(check: ScaleCheck) -> ErrorSign:
    """Which way the scale was wrong at the loads checked."""
    high = any(load.error.amount > 0 for load in check.loads)
    low = any(load.error.amount < 0 for load in check.loads)
    return {
        (True, True): ErrorSign.MIXED,
        (True, False): ErrorSign.HIGH,
        (False, True): ErrorSign.LOW,
        (False, False): ErrorSign.NONE,
    }[high, low]


def _parts(
    packs: Sequence[PackSince], step_at: datetime | None
) -> tuple[tuple[PackSince, ...], ...]:
    """All bags, or those before a step and those from it on; none is empty."""
    if step_at is None:
        return (tuple(packs),)
    before = tuple(pack for pack in packs if pack.at < step_at)
    since = tuple(pack for pack in packs if pack.at >= step_at)
    return tuple(part for part in (before, since) if part)


def _filed(step: ZeroStep, made: CheckMade) -> FiledStep:
    return FiledStep(
        step.last_before, step.first_after, f"{step.size:+.3g} {made.plate.interval.unit}"
    )


def _filed_run(judged: JudgedRun) -> RunWindow:
    window = judged.window
    cases: tuple[CaseVerdict, ...] = ()
    order = list(range(len(judged.packs)))
    if window is not None:
        cases = tuple(
            case
            for case in (window.as_weighed, window.worst, window.drift, window.stepped)
            if case is not None
        )
        order = [one.pack.serial for one in window.reweigh]
    return RunWindow(
        run=judged.run.id,
        product=judged.run.product.code,
        unit=str(judged.run.window.limits.nominal.unit),
        cases=cases,
        refused=judged.refused,
        reweigh=tuple(judged.packs[place].id.serial for place in order),
    )
