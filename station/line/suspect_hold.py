"""The hold that a failed check lays on bags, and when its window opens."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, timedelta
from itertools import groupby

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.pack import PackId
from station.line.suspected import PackSince

_BEFORE_ALL = timedelta(microseconds=1)


def window_opens(good: FactRecord | None, packs: Iterable[PackSince]) -> datetime:
    """The time of the last good check; without one, just before the first of some bags."""
    return min(pack.at for pack in packs) - _BEFORE_ALL if good is None else good.at.utc


def suspect_hold(uid: str, check: str, packs: Iterable[PackSince], reason: str) -> Fact:
    """The hold of some bags.

    Args:
        uid: of the hold.
        check: uid of the failed check.
        packs: the bags.
        reason: why they are held.
    """
    ranges: list[Value] = [list(one) for one in number_ranges(pack.id for pack in packs)]
    return Fact(
        kind=EntryKind.HOLD,
        uid=uid,
        subject=check,
        result="held",
        details={"ranges": ranges, "reason": reason},
    )


def number_ranges(ids: Iterable[PackId]) -> tuple[tuple[str, int, int], ...]:
    """Bag numbers as few ranges: epoch as text, first and last number."""
    named = sorted({(one.epoch, one.number) for one in ids})
    found = []
    places = enumerate(named)
    for _, together in groupby(places, key=lambda item: (item[1][0], item[1][1] - item[0])):
        numbers = [name for _, name in together]
        found.append((str(numbers[0][0]), numbers[0][1], numbers[-1][1]))
    return tuple(found)
