"""Suspect windows on record, with both bounds of every bag worked out again from the record."""

from __future__ import annotations

from collections.abc import Collection
from pathlib import Path

from station.core.checks.scale import check_of
from station.core.checks.suspect import FiledWindow, decided_window, window_of
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.pack import Quality
from station.line.suspected import PackSince, RunSince, Suspected, judge_runs
from station.store.facts import fact_named, facts
from station.store.since import RecordPast
from station.store.standing import standing_facts


def suspect_windows(
    home: Path, uid: str | None = None, serials: Collection[str] | None = None
) -> tuple[Suspected, ...]:
    """Return the windows that failed checks of the scale opened, oldest first.

    Args:
        home: folder of the record.
        uid: only this one.
        serials: only those that hold one of these bags.
    """
    wanted = None if serials is None else frozenset(serials)
    return _suspected(home, facts(home, (EntryKind.SUSPECT,)), uid, wanted)


def _suspected(
    home: Path,
    records: Collection[FactRecord],
    uid: str | None = None,
    wanted: frozenset[str] | None = None,
) -> tuple[Suspected, ...]:
    decisions = {decided: one for one in records if (decided := decided_window(one))}
    found = []
    for record in records:
        window = window_of(record)
        if window is None or window.cause or uid not in (None, window.uid):
            continue
        if wanted is None or window.reaches(wanted):
            found.append(_whole(home, window, decisions.get(window.uid)))
    return tuple(found)


def filed_windows(home: Path) -> tuple[tuple[FiledWindow, FactRecord | None], ...]:
    """Return every window as filed, of the scale and of QA, with its decision, oldest first."""
    records = facts(home, (EntryKind.SUSPECT,))
    decisions = {decided: one for one in records if (decided := decided_window(one))}
    windows = (window_of(record) for record in records)
    return tuple((one, decisions.get(one.uid)) for one in windows if one is not None)


def undecided_windows(home: Path) -> tuple[FiledWindow, ...]:
    """Return the windows as filed that nobody decided about yet, oldest first; reads no others."""
    windows = (window_of(record) for record in standing_facts(home, EntryKind.SUSPECT))
    return tuple(one for one in windows if one is not None)


def open_windows(home: Path) -> tuple[Suspected, ...]:
    """Return the windows nobody decided about yet, oldest first."""
    return _suspected(home, standing_facts(home, EntryKind.SUSPECT))


def _whole(home: Path, window: FiledWindow, decision: FactRecord | None) -> Suspected:
    failed = fact_named(home, window.check)
    assert failed is not None, "a window is recorded with its check, in one commit"
    made = check_of(failed)
    good = fact_named(home, window.good) if window.good else None
    step_at = None if window.step is None else window.step.last_before
    named = {serial for run in window.runs for serial in run.reweigh}
    groups = tuple(
        RunSince(group.run, tuple(_as_then(pack) for pack in group.packs if _is(pack, named)))
        for group in RecordPast(home).packs_after(good, failed)
    )
    return Suspected(window, made, judge_runs(made.check, window.opened, groups, step_at), decision)


def _is(pack: PackSince, named: set[str]) -> bool:
    return pack.id.serial in named


def _as_then(pack: PackSince) -> PackSince:
    """The bag as it was when the window opened, whatever became of it since."""
    return PackSince(pack.id, pack.at, pack.gross, pack.net, Quality.HELD, pack.residue)
