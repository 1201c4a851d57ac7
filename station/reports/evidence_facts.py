"""Which entries belong to the evidence of a run: made in it, or naming it, its bags or its lots."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from datetime import UTC, datetime
from typing import Any

from station.core.facts import FactRecord, texts_of
from station.core.journal import EntryKind
from station.reports.batch import BatchRecord
from station.store.bag_sums import RunSpan
from station.store.facts_from import FactsFrom

_ABOUT_LOTS = frozenset({EntryKind.DELIVERY, EntryKind.HOLD, EntryKind.RELEASE})
"""Kinds that belong to a run because they name one of its lots, whenever they were entered."""
_END = datetime.max.replace(tzinfo=UTC)


def touching(
    record: BatchRecord, span: RunSpan, every: Sequence[FactRecord], lots: Collection[str]
) -> tuple[FactRecord, ...]:
    """Return the facts of a run, in the order of the journal.

    A fact belongs when it was entered for the run or while it was open, when it names the run, one
    of its bags or an entry that belongs, when its ranges of bags meet the run's, or when it is a
    delivery, hold or release of one of its lots.

    Args:
        record: of the run.
        span: when it was open.
        every: facts on record, in order: all, or all that may belong.
        lots: codes of every lot that could be in its bags.
    """
    names = {record.run.id, *(bag.serial for bag in record.bags)}
    ends, closed = _ends(record), span.closed or _END
    said = {one.fact.uid: set(texts_of(one.fact.details)) for one in every}
    chosen: set[str] = set()
    named: set[str] = set()
    grown = True
    while grown:
        before = len(chosen)
        for one in every:
            fact = one.fact
            if fact.uid in chosen:
                continue
            inside = fact.run in ("", record.run.id) and span.opened <= one.at.utc <= closed
            if (
                inside
                or fact.run == record.run.id
                or fact.uid in named
                or fact.subject in names
                or (fact.kind in _ABOUT_LOTS and fact.subject in lots)
                or not names.isdisjoint(said[fact.uid])
                or _meets(fact.details, ends)
            ):
                chosen.add(fact.uid)
                names.add(fact.uid)
                named |= said[fact.uid]
        grown = len(chosen) > before
    return tuple(one for one in every if one.fact.uid in chosen)


def entered_for(
    record: BatchRecord, span: RunSpan, source: FactsFrom, lots: Collection[str]
) -> tuple[FactRecord, ...]:
    """Return the facts of a run as :func:`touching` does, without reading all there are.

    What names a run, its bags or an entry was entered after it. So facts are read from the run's
    start on, or from the earliest one that belongs; earlier ones only where something that belongs
    names them, where they are about its lots, or by the clock of its time.

    Args:
        record: of the run.
        span: when it was open.
        source: gives facts.
        lots: codes of every lot that could be in its bags.
    """
    first = source.start_of(record.run.id)
    named: frozenset[str] = frozenset()
    while True:
        found = source.touched(first, span, lots, _ABOUT_LOTS, named)
        belong = touching(record, span, tuple(found.values()), lots)
        uids = {one.fact.uid for one in belong}
        earliest = min((at for at, one in found.items() if one.fact.uid in uids), default=first)
        names = frozenset(text for one in belong for text in texts_of(one.fact.details))
        if earliest >= first and names == named:
            return belong
        first, named = min(first, earliest), names


def _ends(record: BatchRecord) -> tuple[str, int, int] | None:
    """Epoch as text, first and last number of the run's bags; None without a bag."""
    if not record.bags:
        return None
    numbers = [int(bag.serial.rsplit("-", 1)[1]) for bag in record.bags]
    return str(record.evidence.epoch), min(numbers), max(numbers)


def _meets(details: Any, ends: tuple[str, int, int] | None) -> bool:  # noqa: ANN401 - a body
    ranges = details.get("ranges")
    if ends is None or not isinstance(ranges, list):
        return False
    epoch, first, last = ends
    return any(
        isinstance(one, list)
        and len(one) == 3
        and str(one[0]) == epoch
        and int(one[1]) <= last
        and int(one[2]) >= first
        for one in ranges
    )
