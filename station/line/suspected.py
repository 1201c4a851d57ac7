"""The bags a failed check makes suspect, by run, with both bounds of each."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime

from station.core.checks.scale import CheckMade
from station.core.checks.suspect import FiledWindow
from station.core.facts import FactRecord
from station.core.mass import Mass
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.scale_check import CheckResult, CheckStage, ScaleCheck
from station.core.metrology.suspect import SuspectPack, SuspectWindow, open_window
from station.core.pack import PackId, Quality, Residue
from station.core.run import Run

SUSPECTED = (Quality.GOOD, Quality.HELD, Quality.RELEASED)
"""Bags that are or may be sold."""
_CLOCK = "the clock was set between the checks: the bags have no sure order in time"


@dataclass(frozen=True, slots=True)
class PackSince:
    """A bag of the record, as far as a suspect window asks.

    Args:
        id: its name.
        at: when it was judged, in UTC.
        gross, net: as recorded, in the scale's unit.
        quality: its present quality.
        residue: the empty pan before it, or None.
    """

    id: PackId
    at: datetime
    gross: Mass
    net: Mass
    quality: Quality
    residue: Residue | None


@dataclass(frozen=True, slots=True)
class RunSince:
    """A run and its bags since a moment, in order."""

    run: Run
    packs: tuple[PackSince, ...]


@dataclass(frozen=True, slots=True)
class JudgedRun:
    """The suspect bags of one run with their window.

    Args:
        run: the run.
        packs: its suspect bags; the window's serials are places in here.
        window: both bounds; None where the run cannot be judged.
        refused: why not; empty where it can.
    """

    run: Run
    packs: tuple[PackSince, ...]
    window: SuspectWindow | None
    refused: str = ""


@dataclass(frozen=True, slots=True)
class Suspected:
    """A window with its check, its bags and what was decided.

    Args:
        window: as filed.
        made: the failed check.
        runs: its bags by run, with both bounds.
        decision: the entry that decided about it, or None.
    """

    window: FiledWindow
    made: CheckMade
    runs: tuple[JudgedRun, ...]
    decision: FactRecord | None


def judge_runs(
    failed: ScaleCheck, opened: datetime, groups: Iterable[RunSince], step_at: datetime | None
) -> tuple[JudgedRun, ...]:
    """Work both bounds out for the bags of each run.

    A run whose rules this station does not know is not judged, nor one whose bags the clock puts
    elsewhere; its bags are suspect all the same.

    Args:
        failed: the failed check.
        opened: time of the last good check.
        groups: bags since then, by run.
        step_at: bags from this moment on carry the whole error, where a step is dated.
    """
    true = tuple(replace(load, result=CheckResult.GOOD) for load in failed.loads)
    good = ScaleCheck(opened, CheckStage.AS_FOUND, true)
    found = []
    for group in groups:
        packs = tuple(pack for pack in group.packs if pack.quality in SUSPECTED)
        if not packs:
            continue
        limits = group.run.window.limits
        suspect = [
            SuspectPack(place, pack.at, pack.gross, pack.net) for place, pack in enumerate(packs)
        ]
        if not all(opened < pack.at <= failed.at for pack in packs):
            found.append(JudgedRun(group.run, packs, None, _CLOCK))
            continue
        try:
            rules = rule_set(limits.rule_set)
            window = open_window(good, failed, suspect, rules, limits, step_at)
        except ValueError as refused:
            found.append(JudgedRun(group.run, packs, None, str(refused)))
        else:
            found.append(JudgedRun(group.run, packs, window))
    return tuple(found)
